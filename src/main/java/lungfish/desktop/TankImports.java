package lungfish.desktop;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.desk.ListText;
import lungfish.desk.TextFiles;
import lungfish.edit.Edit;
import lungfish.edit.TankDraft;

/** Brings lists of tanks into the room of a window, by a sheet beside it. What was mended in a list is kept while it is not brought in. */
final class TankImports {
    private final View view;
    private final Side side;
    private final Asking asking;
    private Optional<TankDraft> draft = Optional.empty();
    private String source = "";

    TankImports(View view, Side side, Asking asking) {
        this.view = view;
        this.side = side;
        this.asking = asking;
    }

    /** Whether a file of this name is a list, and no room. */
    static boolean isList(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Stream.of(".csv", ".tsv", ".txt").anyMatch(name::endsWith);
    }

    /** Opens the sheet, with the list that was left in it. */
    void open() {
        side.open(new ImportSheet(view, side, this, ""));
    }

    /** Asks for a file. */
    void choose() {
        asking.toOpenList().ifPresent(this::open);
    }

    void open(Path file) {
        String name = String.valueOf(file.getFileName());
        new TextFiles(view.desk()).read(file, (text, trouble) -> opened(name, text, trouble));
    }

    private void opened(String name, Optional<ListText> text, String trouble) {
        show(
                text.map(ListText::text),
                name + text.map(read -> ", " + read.encoding()).orElse(""),
                trouble);
    }

    /** Takes what is on the clipboard. */
    void paste() {
        show(Optional.of(TextClip.text()), "From the clipboard", "");
    }

    /** Takes what is on the clipboard, if its headings speak of tanks. Whether they do. */
    boolean pasteIfTanks() {
        boolean isList =
                TankDraft.of(TextClip.text()).filter(TankDraft::speaksOfTanks).isPresent();
        if (isList) {
            paste();
        }
        return isList;
    }

    /** A list that cannot be read leaves the one that is there. */
    private void show(Optional<String> text, String from, String trouble) {
        Optional<TankDraft> read = text.flatMap(TankDraft::of);
        boolean isEmpty = text.isPresent() && read.isEmpty();
        if (read.isPresent()) {
            draft = read;
            source = from;
        }
        String nothing = from + ": there is no row of a tank in it. Each tank takes one row, under a row of headings.";
        side.open(new ImportSheet(view, side, this, isEmpty ? nothing : trouble));
    }

    Optional<TankDraft> draft() {
        return draft;
    }

    /** Where the list came from, and how it was written. */
    String source() {
        return source;
    }

    void keep(TankDraft that) {
        draft = Optional.of(that);
    }

    /** Brings the tanks in, and leads back to the panels. */
    void take(Edit edit) {
        draft = Optional.empty();
        side.close();
        view.apply(edit);
    }
}
