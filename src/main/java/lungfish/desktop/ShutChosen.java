package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.everyday.Named;
import lungfish.room.OutletId;

/** Asks what the others do when the outlets of what is chosen are shut; with nothing chosen, those that run only sometimes. */
final class ShutChosen extends Act {
    private final transient WindowPane window;

    ShutChosen(WindowPane window) {
        super("What if these are shut?…", 'H', menuKey(KeyEvent.VK_K));
        this.window = window;
    }

    @Override
    void act() {
        View view = window.view();
        Side side = window.side();
        side.open(new EverydaySheet(view, side, meant(view), window.center()::leadTo));
    }

    private static Set<OutletId> meant(View view) {
        if (view.selection().isEmpty()) {
            return Named.outlets(view.desk().room(), Named.SOMETIMES).orElse(Set.of());
        }
        return view.selection().parts().stream()
                .flatMap(part -> Named.outlets(view.desk().room(), part.id()).stream())
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }
}
