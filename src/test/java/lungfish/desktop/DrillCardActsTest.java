package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.report.DrillCard;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about printing and saving the drill card in the window. */
final class DrillCardActsTest {
    @TempDir
    private Path folder;

    @Test
    void theCardIsSavedAsPdfUnderTheNameOfTheRoom() throws IOException {
        Bench bench = new Bench(folder, "garage-killifish");
        Path file = folder.resolve("card.pdf");
        bench.answers().save = Optional.of(file);
        bench.act(SaveDrillCard.class);
        assertThat(bench.answers().named).isEqualTo("garage-killifish-drill-card.pdf");
        try (PDDocument read = Loader.loadPDF(file.toFile())) {
            assertThat(new PDFTextStripper().getText(read))
                    .contains("Garage killifish", "As of 2", DrillCard.ESTIMATES);
        }
    }

    /** US units: letter, 8.5 in by 11 in, in points of 1/72 in. */
    @Test
    void aRoomInUsUnitsIsPrintedOnLetter() {
        Bench bench = new Bench(folder, "basement-rainbows");
        List<Pageable> printed = new ArrayList<>();
        bench.answers().printer = Optional.of(printed::add);
        bench.act(PrintDrillCard.class);
        assertThat(printed).hasSize(1);
        assertThat(printed.get(0).getNumberOfPages()).isEqualTo(1);
        assertThat(printed.get(0).getPageFormat(0).getWidth()).isEqualTo(612);
        assertThat(printed.get(0).getPageFormat(0).getHeight()).isEqualTo(792);
        assertThat(bench.answers().named).isEqualTo("Basement rainbows: if the air stops");
    }

    @Test
    void aCardThatCannotBeWrittenSaysWhy() {
        Bench bench = new Bench(folder, "starting-out");
        bench.answers().save = Optional.of(folder.resolve("not there").resolve("card.pdf"));
        bench.act(SaveDrillCard.class);
        assertThat(bench.part(Paragraph.class, "problems").getText())
                .contains("card.pdf cannot be written", "a place that may be written to");
    }

    @Test
    void aPrinterThatRefusesIsTold() {
        Bench bench = new Bench(folder, "starting-out");
        bench.answers().printer = Optional.of(pages -> {
            throw new PrinterException("out of paper");
        });
        bench.act(PrintDrillCard.class);
        assertThat(bench.part(Paragraph.class, "problems").getText()).contains("out of paper");
    }

    @Test
    void whoThinksBetterOfItPrintsAndSavesNothing() {
        Bench bench = new Bench(folder, "starting-out");
        bench.act(PrintDrillCard.class);
        bench.act(SaveDrillCard.class);
        assertThat(folder.toFile().list()).noneMatch(name -> name.endsWith(".pdf"));
    }
}
