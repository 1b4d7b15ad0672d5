package lungfish.demand;

import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Code;
import lungfish.reason.Origin;
import lungfish.room.OutletBuilder;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

final class DemandsTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final double HOUR_S = 3600;

    private static Room roomWith(OutletBuilder... outlets) {
        var tank = aTank("A-1");
        for (OutletBuilder outlet : outlets) {
            tank.with(outlet);
        }
        return aRoom().with(aRack("A").shelf(0.9, tank)).build();
    }

    private static Demand demand(OutletBuilder... outlets) {
        return Demands.of(roomWith(outlets), CATALOGUE);
    }

    @Test
    void theSumOfTargetsIsTheDemand() {
        Demand demand =
                demand(anOutlet("a").targetM3PerS(2 * L_PER_MIN), anOutlet("b").targetM3PerS(3 * L_PER_MIN));

        assertThat(demand.totalM3PerS()).isEqualTo(5 * L_PER_MIN, within(1e-15));
    }

    @Test
    void anOutletThatRunsSometimesCountsAsOn() {
        assertThat(demand(anOutlet("a").targetM3PerS(2 * L_PER_MIN).sometimes()).totalM3PerS())
                .isEqualTo(2 * L_PER_MIN, within(1e-15));
    }

    @Test
    void plannedRacksStayOutside() {
        Room room = aRoom().with(aRack("P").planned().shelf(0.9, aTank("P-1").with(anOutlet("a"))))
                .build();

        Demand demand = Demands.of(room, CATALOGUE);

        assertThat(demand.needs()).isEmpty();
        assertThat(demand.planned()).hasSize(1);
    }

    @Test
    void withoutATargetTheClassSpeaksAndTheAssumptionIsSeen() {
        Demand demand = demand(anOutlet("a").device("sponge-medium"));

        // devices.csv: a medium sponge is usually given 2 L/min
        assertThat(demand.totalM3PerS()).isEqualTo(2 * L_PER_MIN, within(1e-12));
        assertThat(demand.assumptions()).anyMatch(each -> each.what().equals("target"));
    }

    @Test
    void anUnknownDepthIsTakenJustAboveTheBottomAndSaidToBeAssumed() {
        Need need = demand(anOutlet("a").depthUnknown()).needs().get(0);

        // 0.30 m of water, less 0.03 m above the bottom (assumed.csv)
        assertThat(need.depthM().si()).isEqualTo(0.27, within(1e-12));
        assertThat(need.depthM().origin().kind()).isEqualTo(Origin.Kind.ASSUMED);
    }

    @Test
    void aTurnoverBecomesTheAirThatLiftsThatMuchWater() {
        double turnsPerS = 2 / HOUR_S;
        Need need = demand(anOutlet("a").device("sponge-medium").turnoverPerS(turnsPerS))
                .needs()
                .get(0);

        // 0.6 × 0.3 × 0.3 m of water turned twice an hour: 54 L × 2 / 3600 s = 0.03 L/s
        assertThat(need.lifted().orElseThrow().waterM3PerS()).isEqualTo(3e-5, within(3e-9));
    }

    @Test
    void aTurnoverBeyondTheTubeIsSaidAndNotInvented() {
        Demand demand = demand(anOutlet("a").device("sponge-small").turnoverPerS(200 / HOUR_S));

        assertThat(demand.findings()).anyMatch(each -> each.code() == Code.TURNOVER_NOT_REACHED);
    }

    @Test
    void aTurnoverAskedOfADeviceWithoutATubeIsSaid() {
        Demand demand = demand(anOutlet("a").device("stone-fine").turnoverPerS(2 / HOUR_S));

        assertThat(demand.findings()).extracting(each -> each.code()).containsExactly(Code.TURNOVER_WITHOUT_TUBE);
    }

    @Test
    void aTargetAboveTheMostThatLivesThereBearsIsSaid() {
        Demand demand = demand(anOutlet("a").targetM3PerS(2 * L_PER_MIN).mostM3PerS(L_PER_MIN));

        assertThat(demand.findings()).extracting(each -> each.code()).containsExactly(Code.TARGET_ABOVE_MOST);
    }

    @Test
    void anAirReleaseBelowTheBottomIsSaid() {
        Demand demand = demand(anOutlet("a").depthM(0.5));

        assertThat(demand.findings()).extracting(each -> each.code()).containsExactly(Code.DEEPER_THAN_WATER);
    }
}
