package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.PartId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Climate;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.RackBuilder;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.TankBuilder;
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

    private static List<Amount> floorLoad(RackBuilder rack) {
        Room room = aRoom().with(rack)
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .build();
        return new Planner(DemoPlans.CATALOGUE)
                .plan(room).findings().stream()
                        .filter(finding -> finding.code() == Code.FLOOR_LOAD)
                        .flatMap(finding -> finding.amounts().stream())
                        .toList();
    }

    private static TankBuilder aTankOf100Litres(String id) {
        return aTank(id).sized(0.4, 0.4, 0.7).waterDepthM(0.625);
    }

    /**
     * 100 kg of rack and three times 100 kg of water on 1.2 × 0.4 m: 400 · 9.80665 / 0.48 = 8.172 kPa, 170.7 lb/ft²; water of 25 °C
     * is 0.3 % lighter than that. The floor: 40 lb/ft² = 1.915 kPa, International Residential Code, Table R301.5.
     */
    @Test
    void aRackOfThreeHundredLitresIsHeavierThanAFloorIsBuiltFor() {
        List<Amount> amounts = floorLoad(aRack("A")
                .sized(1.2, 0.4)
                .weighing(100)
                .shelf(0.3, aTankOf100Litres("1"), aTankOf100Litres("2"), aTankOf100Litres("3")));
        assertThat(amounts).extracting(Amount::name).containsExactly("found", "allowed");
        assertThat(amounts.get(0).si()).isCloseTo(8172, withinPercentage(0.5));
        assertThat(amounts.get(1).si()).isCloseTo(1915, within(1.0));
    }

    /** 50 kg of rack on 1.2 × 0.4 m are 1.0 kPa: 50 · 9.80665 / 0.48. */
    @Test
    void aRackThatTheFloorCarriesIsNoCaution() {
        assertThat(floorLoad(aRack("A").sized(1.2, 0.4).weighing(50).shelf(0.3)))
                .isEmpty();
    }
}
