package lungfish.desktop;

import java.awt.Component;
import java.awt.event.HierarchyEvent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import lungfish.desk.Desk;
import lungfish.desk.Listener;
import lungfish.desk.Trouble;
import lungfish.drawing.GrowthLaid;
import lungfish.drawing.Hit;
import lungfish.drawing.Look;
import lungfish.drawing.Marked;
import lungfish.drawing.OxygenLaid;
import lungfish.drawing.Shown;
import lungfish.edit.Attempt;
import lungfish.edit.Clip;
import lungfish.edit.Edit;
import lungfish.edit.Part;
import lungfish.edit.Reader;
import lungfish.edit.Selecting;
import lungfish.edit.Selection;
import lungfish.everyday.Named;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.reason.PartId;
import lungfish.report.Names;
import lungfish.report.Sentences;
import lungfish.room.OutletId;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/**
 * What one window looks at: its desk, what is chosen and under the pointer, which trial the outlets show, and the look of
 * everything. Parts of the window ask it, and hear when it changes. Touched only on the event thread.
 */
final class View {
    /** Width of the column beside the room, at 100 %. */
    private static final int SIDE = 360;
    /** And in a wide window. */
    private static final int WIDEST_SIDE = 460;

    /** Of a table in it. */
    private static final int WIDE_SHEET = 680;

    private static final double WIDE_OF_WINDOW = 0.48;

    /** Until the window is shown. */
    private static final int UNKNOWN_PX = 1480;

    /** A window this wide, at 100 %, has room for everything side by side. */
    private static final int ROOMY = 1150;

    private static final double SHARE_OF_WINDOW = 0.2;
    private static final double MOST_OF_WINDOW = 0.42;

    private final Desk desk;
    private final Themes themes;
    private final List<Runnable> listeners = new ArrayList<>();
    private final List<Runnable> markListeners = new ArrayList<>();
    private Marked marked = Marked.NOTHING;
    private Selection selection = Selection.NONE;
    private Optional<Part> pointed = Optional.empty();
    private Optional<String> said = Optional.empty();
    private String textThen = "";
    private Optional<GrowthLaid> growing = Optional.empty();
    private Optional<OxygenLaid> breathing = Optional.empty();
    private Shown shown = Shown.AS_IT_SHOULD_BE_SET;
    private Look look;
    private int windowPx = UNKNOWN_PX;
    private final Led led;
    private @Nullable Room namedRoom;
    private Names names = new Names();

    View(Desk desk, Themes themes) {
        this.desk = desk;
        this.themes = themes;
        this.look = newLook();
        this.led = new Led(this);
        desk.addListener(new Listener() {
            @Override
            public void changed() {
                keepWhatIsStillThere();
                refresh();
            }

            @Override
            public void troubled(Trouble trouble) {} // the window shows it
        });
    }

    Desk desk() {
        return desk;
    }

    Themes themes() {
        return themes;
    }

    /** Heard at once, and after every change. */
    void onChange(Runnable listener) {
        listeners.add(listener);
        listener.run();
    }

    /** Heard at once, and after every change while the component is in a window: what comes and goes is not kept. */
    void follow(Component component, Runnable listener) {
        listener.run();
        component.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.DISPLAYABILITY_CHANGED) != 0) {
                listeners.remove(listener);
                if (component.isDisplayable()) {
                    onChange(listener);
                }
            }
        });
    }

    /** Heard after what is chosen or under the pointer has changed. */
    void onMark(Runnable listener) {
        markListeners.add(listener);
    }

    /** The same, while the component is in a window. */
    void followMarks(Component component, Runnable listener) {
        component.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.DISPLAYABILITY_CHANGED) != 0) {
                markListeners.remove(listener);
                if (component.isDisplayable()) {
                    markListeners.add(listener);
                }
            }
        });
    }

    /** Everything asks again. */
    void refresh() {
        look = newLook();
        List.copyOf(listeners).forEach(Runnable::run);
    }

    private Look newLook() {
        return new Look(themes.palette(), themes.type(), quantities());
    }

    Look look() {
        return look;
    }

    /** So many pixels at 100 %, here. */
    int px(double atNormal) {
        return (int) Math.round(look.type().px(atNormal));
    }

    /** Large text never takes the room's share of a small window; in a wide one the panels take their part of the width. */
    int sidePx() {
        int wide = Math.min(px(WIDEST_SIDE), (int) (SHARE_OF_WINDOW * windowPx));
        return Math.min(Math.max(px(SIDE), wide), (int) (MOST_OF_WINDOW * windowPx));
    }

    /** Whether text is so large for the window that lines get a row of their own. */
    boolean isTight() {
        return windowPx < px(ROOMY);
    }

    /** For a sheet that holds a table: as wide as it can be while the room is still seen. */
    int wideSidePx() {
        return Math.max(sidePx(), Math.min(px(WIDE_SHEET), (int) (WIDE_OF_WINDOW * windowPx)));
    }

    /** How wide the window is now. */
    void inWindowOf(int px) {
        int before = sidePx();
        boolean wasTight = isTight();
        windowPx = px;
        if (sidePx() != before || isTight() != wasTight) {
            refresh();
        }
    }

    /** The outlets of what is chosen, by their names. */
    List<OutletId> chosenOutlets() {
        return selection().parts().stream()
                .flatMap(part -> Named.outlets(desk.room(), part.id()).stream())
                .flatMap(Set::stream)
                .distinct()
                .sorted(Comparator.comparing(OutletId::text))
                .toList();
    }

    /** Which day it is. */
    LocalDate today() {
        return desk.shared().today().get();
    }

    Quantities quantities() {
        return new Quantities(desk.units(), desk.room().supply().currency().orElse(""));
    }

    /** In whose units cells of tables are read and shown, and which classes they may name. */
    Reader reader() {
        return new Reader(quantities(), desk.room().ownClasses(), desk.shared().catalogue());
    }

    Optional<Plan> plan() {
        return desk.plan();
    }

    /** What the parts of the room are called; those of the newest plan. Every cell of a list asks. */
    @SuppressWarnings("ReferenceEquality") // an equal room that is another object is only named once more
    Names names() {
        Room room = plan().map(Plan::room).orElseGet(desk::room);
        if (room != namedRoom) {
            namedRoom = room;
            names = new Names(room);
        }
        return names;
    }

    Sentences sentences() {
        return new Sentences(quantities(), names());
    }

    Marked marked() {
        return marked;
    }

    Optional<PartId> chosen() {
        return marked.chosen().stream().findFirst();
    }

    /** The outlet that is chosen, if one is. */
    Optional<OutletId> chosenOutlet() {
        return chosen().filter(part -> part.kind() == PartId.Kind.OUTLET).map(part -> new OutletId(part.id()));
    }

    void choose(PartId part) {
        selection = Handles.of(part).map(Selection::of).orElse(Selection.NONE);
        mark(new Marked(Set.of(part), marked.hovered()), false);
    }

    void chooseNothing() {
        select(Selection.NONE);
    }

    /** What is chosen, in the order in which it was. */
    Selection selection() {
        return selection;
    }

    void select(Selection those) {
        boolean isOther = !selection.equals(those);
        selection = those;
        mark(new Marked(Handles.named(those), marked.hovered()), isOther);
    }

    /** Does something to what is chosen, and chooses what is new; or tells why it cannot be done. */
    void attempt(BiFunction<Room, Selection, Attempt> doing) {
        Attempt attempt = doing.apply(desk.room(), selection);
        attempt.edit().ifPresent(this::apply);
        say(attempt.refused().map(refused -> refused.sentence(quantities())));
    }

    /** Does it; or says why it cannot be done. */
    String refused(Attempt attempt) {
        attempt.edit().ifPresent(desk::apply);
        return attempt.refused().map(refused -> refused.sentence(quantities())).orElse("");
    }

    /** Does it, and chooses what is new. */
    void apply(Edit edit) {
        Room was = desk.room();
        desk.apply(edit);
        Selection fresh = Selecting.added(was, desk.room());
        if (!fresh.isEmpty()) {
            select(fresh);
        }
    }

    /** Says something until something else is pointed at. */
    void say(Optional<String> that) {
        said = that;
        List.copyOf(markListeners).forEach(Runnable::run);
    }

    /** What was copied last, in any window, to be pasted. */
    Optional<Clip> copied() {
        return desk.shared().copied().clip();
    }

    void copied(Clip that) {
        desk.shared().copied().keep(that);
        textThen = TextClip.text();
    }

    /** Whether the clipboard that all programs share still holds the text that it held when something was copied here. */
    boolean isCopiedLast(String text) {
        return text.equals(textThen);
    }

    /** What there is to say beside what is pointed at: why something could not be done. */
    Optional<String> said() {
        return said;
    }

    private void keepWhatIsStillThere() {
        Selection still = Selecting.still(desk.seen(), selection);
        if (!still.equals(selection)) {
            select(still);
        }
    }

    /** What the pointer is on. */
    void point(Optional<Hit> hit) {
        Optional<Part> before = pointed;
        pointed = hit.flatMap(Handles::of);
        mark(new Marked(marked.chosen(), hit.flatMap(Handles::framed)), !pointed.equals(before));
    }

    /** The thing that the pointer is on. */
    Optional<Part> pointed() {
        return pointed;
    }

    private void mark(Marked those, boolean isOther) {
        if (isOther || !those.equals(marked)) {
            marked = those;
            said = Optional.empty();
            List.copyOf(markListeners).forEach(Runnable::run);
        }
    }

    /** Where the room can grow, while a sheet lays that over the drawing. */
    Optional<GrowthLaid> growing() {
        return growing;
    }

    void grow(Optional<GrowthLaid> that) {
        if (!that.equals(growing)) {
            growing = that;
            refresh();
        }
    }

    /** The finding that led to what is chosen. */
    Led led() {
        return led;
    }

    /** The oxygen of the tanks at a time of an outage, while a sheet lays that over the drawing. */
    Optional<OxygenLaid> breathing() {
        return breathing;
    }

    /** Another time only paints the drawing again; everything asks again when it comes and when it goes. */
    void breathe(Optional<OxygenLaid> that) {
        boolean comesOrGoes = that.isPresent() != breathing.isPresent();
        boolean isOther = !that.equals(breathing);
        breathing = that;
        if (comesOrGoes) {
            refresh();
        }
        if (isOther) {
            List.copyOf(markListeners).forEach(Runnable::run);
        }
    }

    Shown shown() {
        return shown;
    }

    void show(Shown that) {
        shown = that;
        refresh();
    }
}
