package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Code;
import lungfish.reason.PartId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Climate;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import org.junit.jupiter.api.Test;

/** What the plan takes for granted when it warns. */
final class RoomCautionsTest {
    private static RoomBuilder room(OutletBuilder low, OutletBuilder high) {
        return aRoom().with(aRack("A")
                        .shelf(0.3, aTank("low").with(low))
                        .shelf(1.2, aTank("high").with(high)))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.2, 0.2, 2.1));
    }

    @Test
    void aCircuitKnownToHaveNoProtectionIsGraverThanOneOfWhichNothingIsSaid() {
        Room room = room(anOutlet("l"), anOutlet("h"))
                .with(new Circuit(new CircuitId("bare"), "Bare", Optional.of(false), Optional.of(true)))
                .with(new Circuit(new CircuitId("unsaid"), "Unsaid", Optional.empty(), Optional.empty()))
                .build();

        assertThat(new Planner(DemoPlans.CATALOGUE).plan(room).findings())
                .filteredOn(finding -> finding.where().kind() == PartId.Kind.CIRCUIT)
                .extracting(finding -> finding.where().id() + " " + finding.code())
                .containsExactly("bare NO_RESIDUAL_CURRENT", "unsaid RESIDUAL_CURRENT");
    }

    @Test
    void theHumidityThatJudgesAColdPipeIsSeenToBeAssumed() {
        Climate cold = new Climate(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(275));
        Plan plan = new Planner(DemoPlans.CATALOGUE)
                .plan(room(anOutlet("l"), anOutlet("h")).with(cold).build());

        assertThat(plan.findings()).extracting(finding -> finding.code()).contains(Code.CONDENSATION);
        assertThat(plan.assumptions())
                .filteredOn(each -> each.what().contains("humidity"))
                .extracting(each -> each.dimension())
                .containsExactly(Dimension.SHARE);
    }
}
