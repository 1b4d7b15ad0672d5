package lungfish.terminal;

import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Mapping;
import lungfish.growth.NewKind;
import lungfish.growth.Stages;
import lungfish.growth.Staging;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.Quantities;
import lungfish.report.GrowthJson;
import lungfish.report.GrowthText;
import picocli.CommandLine;

/** Grows a room. */
@CommandLine.Command(
        name = "stages",
        description =
                "Grow a room step by step: what breaks first, its cheapest mend, and where along the pipe there is room.")
final class StagesCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        Planner planner = new Planner(CatalogueFiles.load());
        Optional<Stages> stages = Staging.of(planner, plan.room(), Progress.UNHEARD);
        Optional<HeadroomMap> map = Mapping.of(planner, plan.room(), NewKind.COMMONEST, Progress.UNHEARD);
        return told(
                plan,
                isJson()
                        ? GrowthJson.text(plan, stages, map, quantities)
                        : new GrowthText(plan.room(), quantities).text(stages, map));
    }
}
