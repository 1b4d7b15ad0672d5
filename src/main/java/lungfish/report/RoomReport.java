package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.build.BuildPlan;
import lungfish.catalogue.Catalogue;
import lungfish.document.Document;
import lungfish.logbook.Logbook;
import lungfish.measured.MeasuredRoom;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** Everything about a room that is taken to the workbench and kept in a folder, as one document. */
public final class RoomReport {
    private RoomReport() {}

    /**
     * The document of a plan.
     *
     * @param build that of the plan
     * @param logbook that of the plan; empty: its log is, and nothing is said of it
     */
    public static Document of(
            Plan plan, BuildPlan build, Optional<Logbook> logbook, Catalogue catalogue, Quantities quantities) {
        List<Document.Section> further = new ArrayList<>();
        further.add(FirstStartSheet.of(plan, catalogue, quantities));
        logbook.ifPresent(read ->
                further.add(LogbookSheet.of(plan, read, MeasuredRoom.of(plan, catalogue, read.today()), quantities)));
        return BuildSheet.of(plan, build, catalogue, quantities, further);
    }
}
