package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import org.junit.jupiter.api.Test;

final class PageTest {
    @Test
    void columnsLineUp() {
        Table table = new Table(Table.Column.words("Outlet"), Table.Column.numbers("Depth"), Table.Column.words("Use"));
        table.row("c4-2", "15 in", "always").row("Größe", "8 1/4 in", "");
        assertThat(table.lines())
                .containsExactly(
                        "Outlet     Depth  Use", //
                        "c4-2       15 in  always",
                        "Größe   8 1/4 in");
    }

    @Test
    void textHangsBesideItsLabel() {
        String longer = "word ".repeat(25).strip();
        assertThat(new Page().hung("Duty      ", longer).text())
                .isEqualTo(
                        """
                Duty      word word word word word word word word word word word word word word word word word
                          word word word word word word word word
                """);
    }

    @Test
    void aHeadingStandsApart() {
        assertThat(new Page().heading("One").paragraph("text").heading("Two").text())
                .isEqualTo("One\ntext\n\nTwo\n");
    }

    @Property
    void wrappingLosesNoWord(@ForAll List<@AlphaChars String> words) {
        String text = String.join(" ", words).strip().replaceAll(" +", " ");
        String page = new Page().hung("Label ", text).text();
        assertThat(page.replaceFirst("Label ?", "").replaceAll("\\s+", " ").strip())
                .isEqualTo(text);
    }

    @Test
    void aWhySheetAddsUp() {
        Why why = new Why(
                "pressure the room needs",
                6600,
                Dimension.PRESSURE,
                Why.Adding.SUM,
                List.of(
                        new Why.Term("water over c4-2", 3700, Origin.computed("")),
                        new Why.Term("its stone, wetted", 2900, Origin.catalogue("stone-fine"))),
                List.of(new Why.Input("depth", 0.38, Dimension.DEPTH, Origin.typed(""))),
                "p = ρ g d + Δp",
                "hydrostatics");
        Quantities metric = Quantities.in(DisplayUnits.METRIC);
        Page page = new Page();
        new WhySheet(metric, new Sentences(metric, new Names())).write(why, page);
        assertThat(page.text())
                .isEqualTo(
                        """
                Why 6.60 kPa? Pressure the room needs
                  Adds up from
                  water over c4-2    3.70 kPa  computed
                  its stone, wetted  2.90 kPa  catalogue: stone-fine
                  together           6.60 kPa
                  Went in
                  depth    38 cm  typed
                  Equation: p = ρ g d + Δp
                  Source: hydrostatics
                """);
    }
}
