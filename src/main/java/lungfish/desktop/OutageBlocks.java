package lungfish.desktop;

import java.util.Optional;
import java.util.function.IntSupplier;
import lungfish.drawing.OutagePlayed;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.report.OutageCautions;

/** What follows the drill on its sheet: where what keeps the fish alive can hurt people. */
final class OutageBlocks extends Stack {
    private final transient View view;
    private final transient IntSupplier widthPx;

    OutageBlocks(View view, IntSupplier widthPx) {
        this.view = view;
        this.widthPx = widthPx;
        setName("outage-blocks");
    }

    /** Tells of an outage; of none there is nothing to say. */
    void tell(Optional<OutagePlayed> played) {
        removeAll();
        if (played.isPresent()) {
            add(Line.title(view, "Take care"), "growx, wmin 0");
            OutageCautions.of(view.desk().room().backup(), view.quantities()).forEach(this::caution);
        }
        revalidate();
    }

    private void caution(String says) {
        Paragraph paragraph = new Paragraph(view, Type::body, Palette::softInk, widthPx);
        paragraph.setText(says);
        add(paragraph, "growx");
    }
}
