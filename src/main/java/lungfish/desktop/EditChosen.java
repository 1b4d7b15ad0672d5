package lungfish.desktop;

import java.util.function.BiFunction;
import javax.swing.KeyStroke;
import lungfish.edit.Attempt;
import lungfish.edit.Selection;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/** Something that is done to what is chosen. Where it cannot be done, the line above the drawing tells why. */
final class EditChosen extends Act {
    private final transient View view;
    private final transient BiFunction<Room, Selection, Attempt> doing;

    EditChosen(
            WindowPane window,
            String name,
            char letter,
            @Nullable KeyStroke key,
            BiFunction<Room, Selection, Attempt> doing) {
        super(name, letter, key);
        this.view = window.view();
        this.doing = doing;
    }

    @Override
    void act() {
        view.attempt(doing);
    }
}
