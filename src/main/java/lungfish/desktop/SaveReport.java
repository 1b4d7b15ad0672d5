package lungfish.desktop;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import lungfish.desk.Desk;
import lungfish.desk.TextFiles;
import lungfish.desk.Trouble;

/** Writes the build sheet of the room as pages, as a page for a browser, or its lists for a spreadsheet. */
final class SaveReport extends Act {
    private final transient WindowPane window;

    SaveReport(WindowPane window) {
        super("Save the build sheet…", 'U', null);
        this.window = window;
    }

    @Override
    void act() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put(".pdf", "Pages");
        kinds.put(".html", "Page for any browser");
        kinds.put(".csv", "Lists for a spreadsheet");
        ReportOfRoom report = ReportOfRoom.of(window.view());
        Desk desk = window.view().desk();
        window.files()
                .asking()
                .toSaveAs(window.files().named("-build-sheet.pdf"), kinds)
                .ifPresent(file -> new TextFiles(desk)
                        .write(
                                file,
                                () -> report.bytes(ending(file)),
                                trouble -> trouble.ifPresent(
                                        problem -> desk.tell(Trouble.of("The build sheet is not saved", problem)))));
    }

    private static String ending(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.substring(name.lastIndexOf('.'));
    }
}
