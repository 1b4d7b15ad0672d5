package lungfish.rescue;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.oxygen.Balance;
import lungfish.oxygen.Balances;
import lungfish.oxygen.Breath;
import lungfish.oxygen.Case;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.rescue.Second.Outage;
import lungfish.rescue.Second.Stay;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.Supply;
import lungfish.room.TankBuilder;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** Which filter beside the air may go, in rooms of one tank. */
final class SecondLinesTest {
    private static final Catalogue CATALOGUE = DemoPlans.CATALOGUE;
    private static final double DANGER_G_PER_M3 = 2;
    private static final double CENT = 0.005;

    private static Room room(TankBuilder tank, Stirrer... stirrers) {
        var room = aRoom().with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(circuit("air"))
                .with(circuit("wall"))
                .with(Supply.UNKNOWN.withPricePerJ(OptionalDouble.of(0.25 / 3.6e6)))
                .with(aBlower("central")
                        .machine("linear-diaphragm-30")
                        .circuit("air")
                        .at(0.2, 0.2, 2.1))
                .with(aRack("A").at(0.4, 0.6).shelf(0.4, tank));
        for (Stirrer stirrer : stirrers) {
            room.with(stirrer);
        }
        return room.build();
    }

    private static Circuit circuit(String id) {
        return new Circuit(new CircuitId(id), id, Optional.of(true), Optional.of(false));
    }

    private static Stirrer filter(String id, double watts, String circuit) {
        return new Stirrer(
                new StirrerId(id),
                new TankId("a"),
                Stirrer.Kind.HANG_ON_FILTER,
                OptionalDouble.of(watts),
                Optional.of(new CircuitId(circuit)));
    }

    /** The air is tuned so that all the water passes the sponge six times an hour. */
    private static OutletBuilder turning() {
        return anOutlet("a-a").device("sponge-large").depthM(0.12).turnoverPerS(6.0 / 3600);
    }

    /** Shallow, so that its oxygen does not last long. */
    private static TankBuilder crowded() {
        return aTank("a").waterDepthM(0.15).fish(9, 0.002);
    }

    private static SecondLine answer(Room room) {
        return SecondLines.of(new Planner(CATALOGUE).plan(room), CATALOGUE, 24 * 3600, Progress.UNHEARD)
                .orElseThrow();
    }

    private static Second only(Room room) {
        List<Second> all = answer(room).all();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void aFilterMayGoWhereTheAirTurnsTheWaterOverAndTheFishAreFew() {
        SecondLine line =
                answer(room(aTank("a").waterDepthM(0.15).fish(1, 0.001).with(turning()), filter("f", 6, "wall")));

        assertThat(line.mayGo()).isEqualTo(1);
        assertThat(line.savedW()).isEqualTo(6);
        // 6 W · 8766 h = 52.596 kWh, at 0.25 a kWh
        assertThat(line.savedPerYear()).isCloseTo(13.149, within(CENT));
        assertThat(line.all().get(0).air().turnoverPerS() * 3600).isCloseTo(6, within(0.01));
    }

    @Test
    void aFilterStaysWhereNothingElseTurnsTheWaterOver() {
        OutletBuilder stone = anOutlet("a-a").device("stone-fine").depthM(0.25);
        Second second = only(room(aTank("a").fish(1, 0.001).with(stone), filter("f", 6, "wall")));

        assertThat(second.stays()).containsExactly(Stay.TURNOVER);
        assertThat(second.air().turnoverPerS()).isZero();
        assertThat(second.air().wishedPerS() * 3600).isCloseTo(4, within(1e-9)); // common practice, no source
    }

    @Test
    void aFilterStaysWhereNobodyKnowsWhatLivesInTheTank() {
        Second second = only(room(aTank("a").waterDepthM(0.15).with(turning()), filter("f", 6, "wall")));

        assertThat(second.stays()).containsExactly(Stay.UNKNOWN);
    }

    /**
     * So many fish that a surface that is moved keeps them above the danger level, and one at rest does not: what they use,
     * fed, lies between what the two bring at that level.
     */
    @Test
    void aFilterStaysWhereItKeepsTheTankAliveUntilTheBlowerIsMended() {
        TankBuilder tank = crowded().with(turning());
        Room room = room(tank, filter("f", 6, "wall"));
        Balance balance =
                new Balances(room, CATALOGUE).of(tank.build(), Case.CAUTIOUS).orElseThrow();
        assertThat(balance.useGPerS())
                .isBetween(
                        balance.surfaceGPerS(DANGER_G_PER_M3, Breath.NONE),
                        balance.surfaceGPerS(DANGER_G_PER_M3, new Breath(0, true)));

        Second second = only(room);
        assertThat(second.stays()).containsExactly(Stay.KEEPS_ALIVE);
        Second.Effect blower = second.outages().get(1);
        assertThat(blower.outage()).isEqualTo(Outage.BLOWER);
        assertThat(blower.with().cautiousS()).isEmpty();
        assertThat(blower.without().cautiousS()).isPresent();
    }

    @Test
    void withoutTheMainsAFilterKeepsNothingAlive() {
        Second second = only(room(crowded().with(turning()), filter("f", 6, "wall")));

        Second.Effect mains = second.outages().get(0);
        assertThat(mains.outage()).isEqualTo(Outage.MAINS);
        assertThat(mains.with()).isEqualTo(mains.without());
        assertThat(mains.with().cautiousS()).isPresent();
    }

    @Test
    void whereItsCircuitTripsTheAirGoesOnUnlessItHangsThereToo() {
        Second apart = only(room(crowded().with(turning()), filter("f", 6, "wall")));
        Second together = only(room(crowded().with(turning()), filter("f", 6, "air")));

        assertThat(apart.outages().get(2).outage()).isEqualTo(Outage.CIRCUIT);
        assertThat(apart.outages().get(2).with().cautiousS()).isEmpty();
        assertThat(together.outages().get(2).with().cautiousS()).isPresent();
    }

    /** Either could go, but not both: the hungrier goes. */
    @Test
    void ofTwoThatKeepTheTankAliveOneMayGo() {
        SecondLine line =
                answer(room(crowded().with(turning()), filter("small", 3, "wall"), filter("large", 9, "wall")));

        assertThat(line.all())
                .filteredOn(Second::mayGo)
                .extracting(each -> each.stirrer().id().text())
                .containsExactly("large");
        assertThat(line.savedW()).isEqualTo(9);
    }
}
