package lungfish.report;

import java.util.List;
import lungfish.build.BuildPlan;
import lungfish.catalogue.Catalogue;
import lungfish.document.Document;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** Everything about a room that is taken to the workbench and kept in a folder, as one document. */
public final class RoomReport {
    private RoomReport() {}

    /**
     * The document of a plan.
     *
     * @param build that of the plan
     */
    public static Document of(Plan plan, BuildPlan build, Catalogue catalogue, Quantities quantities) {
        return BuildSheet.of(
                plan, build, catalogue, quantities, List.of(FirstStartSheet.of(plan, catalogue, quantities)));
    }
}
