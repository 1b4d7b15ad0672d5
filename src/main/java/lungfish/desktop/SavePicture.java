package lungfish.desktop;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import lungfish.desk.Desk;
import lungfish.desk.TextFiles;
import lungfish.desk.Trouble;

/** Writes a picture of the room, to be shown to others. */
final class SavePicture extends Act {
    private final transient WindowPane window;

    SavePicture(WindowPane window) {
        super("Save a picture of the room…", 'I', null);
        this.window = window;
    }

    @Override
    void act() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put(".png", "Picture of pixels");
        kinds.put(".svg", "Picture of lines");
        ReportOfRoom report = ReportOfRoom.of(window.view());
        Desk desk = window.view().desk();
        window.files().asking().toSaveAs(window.files().named(".png"), kinds).ifPresent(file -> {
            String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
            new TextFiles(desk)
                    .write(
                            file,
                            () -> report.bytes(name.endsWith(".svg") ? ".svg" : ".png"),
                            trouble -> trouble.ifPresent(
                                    problem -> desk.tell(Trouble.of("The picture is not saved", problem))));
        });
    }
}
