package lungfish.desktop;

import java.awt.Component;
import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.desk.Desk;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.desk.Preference;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;

/** One window without a display: all work is done at once, and nobody is asked. */
final class Bench implements Home {
    private final Desks desks;
    private final Themes themes;
    private final WindowPane pane;
    private final List<Room> opened = new ArrayList<>();
    private final Answers answers = new Answers();

    Bench(Path folder, String demo) {
        this(Desks.in(folder, Hands.ofTheCaller()), demo);
    }

    /** With hands of its own. */
    Bench(Desks desks, String demo) {
        this.desks = desks;
        this.themes = new Themes(desks.preferences());
        this.pane = new WindowPane(this, desks.withDemo(demo), answers, () -> {});
    }

    WindowPane pane() {
        return pane;
    }

    Desk desk() {
        return pane.view().desk();
    }

    Answers answers() {
        return answers;
    }

    void act(Class<? extends Act> kind) {
        pane.acts().the(kind).act();
    }

    void ask(Question question) {
        pane.acts().the(question).act();
    }

    /** The part of this name, wherever it is in the window. */
    <T extends Component> T part(Class<T> kind, String name) {
        return Parts.find(pane, kind, name).orElseThrow(() -> new AssertionError("there is no " + name));
    }

    @Override
    public Themes themes() {
        return themes;
    }

    @Override
    public void openWindow(DisplayUnits units) {}

    @Override
    public void openRoom(String done, Room room) {
        opened.add(room);
    }

    /** The rooms that were opened in other windows. */
    List<Room> opened() {
        return opened;
    }

    @Override
    public void quit() {}

    @Override
    public void wear(Preference.Theme theme) {
        desks.preferences().set(Preference.THEME, theme);
        pane.view().refresh();
    }

    @Override
    public void switchTheme() {
        wear(Preference.Theme.DARK);
    }

    @Override
    public void sizeText(int stepPercent) {}

    /** What the person would say. */
    static final class Answers implements Asking {
        Optional<Path> open = Optional.empty();
        Optional<Path> save = Optional.empty();
        Optional<Path> list = Optional.empty();
        Unsaved unsaved = Unsaved.STAY;
        Elsewhere elsewhere = Elsewhere.STAY;
        int questions;
        /** What the window suggested to call it. */
        String named = "";
        /** Takes the pages; empty: the person thinks better of it. */
        Optional<Printer> printer = Optional.empty();

        /** A printer without paper. */
        interface Printer {
            void print(Pageable pages) throws PrinterException;
        }

        @Override
        public Optional<Path> toOpen() {
            return open;
        }

        @Override
        public Optional<Path> toSave(String name) {
            return save;
        }

        @Override
        public Optional<Path> toOpenList() {
            return list;
        }

        @Override
        public Optional<Path> toSaveTable(String name) {
            return save;
        }

        @Override
        public Optional<Path> toSavePdf(String name) {
            named = name;
            return save;
        }

        @Override
        public Optional<Path> toSaveAs(String name, Map<String, String> kinds) {
            named = name;
            return save;
        }

        @Override
        public Optional<Printing> toPrint(Pageable pages, String title) {
            named = title;
            return printer.map(each -> () -> each.print(pages));
        }

        @Override
        public Unsaved unsaved(String name) {
            questions++;
            return unsaved;
        }

        @Override
        public Elsewhere changedElsewhere(String file) {
            return elsewhere;
        }
    }
}
