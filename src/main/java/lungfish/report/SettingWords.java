package lungfish.report;

import static lungfish.document.Part.Column.figures;
import static lungfish.document.Part.Column.words;

import java.util.List;
import lungfish.build.BuildPlan;
import lungfish.build.SettingOrder;
import lungfish.catalogue.Catalogue;
import lungfish.document.Part;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Assumable;

/** In which order the outlets are set, where each valve starts, and how long the jar should take. */
final class SettingWords {
    private final Plan plan;
    private final BuildPlan build;
    private final Catalogue catalogue;
    private final Quantities quantities;

    SettingWords(Plan plan, BuildPlan build, Catalogue catalogue, Quantities quantities) {
        this.plan = plan;
        this.build = build;
        this.catalogue = catalogue;
        this.quantities = quantities;
    }

    List<Part> parts() {
        return List.of(new Part.Paragraph(how()), grid());
    }

    private String how() {
        double jarM3 = plan.room()
                .wishes()
                .jarM3()
                .orElse(catalogue.assumed(Assumable.JAR).si());
        return "Turn every valve to its start first, and hold the pressure with the bleed. Then time an inverted jar of "
                + quantities.show(jarM3, Dimension.VOLUME)
                + " at each outlet, in this order, and turn its valve until the jar fills in the time that is written. The"
                + " worst-served outlet comes first: if its jar is slow with its valve as far open as it goes, close the bleed a"
                + " little. The others follow from the far end of the air's way back to the blower, so that a valve that you"
                + " turn does not undo those behind it. Time the first one again at the end.";
    }

    private Part.Grid grid() {
        Grids grid = new Grids(
                "settings",
                "Order of setting",
                figures("Turn"),
                words("Outlet"),
                words("Tank"),
                words("Device"),
                figures("Valve open"),
                figures("Target"),
                figures("Jar fills in"),
                words(""));
        build.order().forEach(turn -> row(grid, turn));
        return grid.grid();
    }

    private void row(Grids grid, SettingOrder.Turn turn) {
        grid.row(
                Integer.toString(turn.turn()),
                turn.need().id().text(),
                turn.need().seat().tank().name(),
                turn.need().device().name(),
                turn.opening().isPresent() ? quantities.show(turn.opening().getAsDouble(), Dimension.SHARE) : "",
                quantities.show(turn.targetM3PerS(), Dimension.AIR_FLOW),
                quantities.show(turn.jarS(), Dimension.DURATION),
                turn.index() ? "worst-served" : "");
    }
}
