package lungfish.oxygen;

import static lungfish.plan.DemoPlans.CATALOGUE;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Demands;
import lungfish.demand.Need;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Seat;
import lungfish.room.Tank;
import org.junit.jupiter.api.Test;

/** The balances of tanks, each number worked out by hand. */
final class BalancesTest {
    private static final double PER_HOUR_MG = 1e-3 / 3600;

    /** Ten fish of 1 g at 25 °C, half a gram of food a day, in 0.9 by 0.45 by 0.3 m of water. */
    private static final Tank TANK = aTank("t")
            .sized(0.9, 0.45, 0.4)
            .waterDepthM(0.3)
            .temperatureK(298.15)
            .fish(10, 0.001)
            .fed(0.0005)
            .with(anOutlet("o"))
            .build();

    private static final Room ROOM = Rooms.aRoom()
            .with(Rooms.aRack("A").shelf(0.9, aTank("x").with(anOutlet("x1"))))
            .build();
    private static final Balances BALANCES = new Balances(ROOM, CATALOGUE);

    private static Balance balance(Case how) {
        return BALANCES.of(TANK, how).orElseThrow();
    }

    /** Fish 10 · 0.25 mg/h, half of it again, and 0.5 g/d · 0.40 · 0.092 · 4.57 / 24 = 3.504 mg/h. */
    @Test
    void likelyUseIsThatOfFishBacteriaAndFood() {
        assertThat(balance(Case.LIKELY).useGPerS() / PER_HOUR_MG).isCloseTo(2.5 + 1.25 + 3.504, withPercentage(0.01));
    }

    /** Three times the fish's use; and the meal, 2.2 times as much, of which 1.2 come on top. */
    @Test
    void cautiousUseIsThreeTimesTheFishAndAMeal() {
        assertThat(balance(Case.CAUTIOUS).restGPerS() / PER_HOUR_MG)
                .isCloseTo(7.5 + 3.75 + 3.504, withPercentage(0.01));
        assertThat(balance(Case.CAUTIOUS).mealGPerS() / PER_HOUR_MG).isCloseTo(1.2 * 7.5, withPercentage(0.01));
    }

    @Test
    void aTankSaysItselfWhetherItHasJustBeenFed() {
        Tank fed = TANK.justFed(Optional.of(true));
        Tank hungry = TANK.justFed(Optional.of(false));

        assertThat(BALANCES.of(fed, Case.LIKELY).orElseThrow().mealGPerS() / PER_HOUR_MG)
                .isCloseTo(1.2 * 2.5, withPercentage(0.01));
        assertThat(BALANCES.of(hungry, Case.CAUTIOUS).orElseThrow().mealGPerS()).isZero();
    }

    /** 8.263 mg/L at 25 °C (Standard Methods 4500-O); β 0.97 and 0.95; 1.024^5 = 1.1259 times 1 and 0.168 cm/h. */
    @Test
    void waterHoldsWhatTheTableSays() {
        assertThat(balance(Case.LIKELY).saturationGPerM3()).isCloseTo(8.263, withPercentage(0.03));
        assertThat(balance(Case.LIKELY).bubbleSaturationGPerM3()).isCloseTo(0.97 * 8.263, withPercentage(0.03));
        assertThat(balance(Case.CAUTIOUS).bubbleSaturationGPerM3()).isCloseTo(0.95 * 8.263, withPercentage(0.03));
        assertThat(balance(Case.LIKELY).stillMPerS() * 360_000).isCloseTo(1.1259, withPercentage(0.01));
        assertThat(balance(Case.CAUTIOUS).stillMPerS() * 360_000).isCloseTo(0.168 * 1.1259, withPercentage(0.01));
    }

    /**
     * 2 L/min of air at 24 °C, 1.1879 kg/m³, 23.14 % of it oxygen; 2.5 % a metre of it, 0.25 m deep: 5.727e-5 g/s; times
     * 0.85 · 1.1259 / 9.092 for each mg/L of deficit: 6.028e-6 m³/s. At worst two thirds of that, and 0.80 for 0.85.
     */
    @Test
    void bubblesBringWhatTheirDepthLetsThem() {
        List<Need> needs = Demands.of(ROOM, CATALOGUE).needs();
        Need warm = new Need(
                new Seat(
                        needs.get(0).seat().rack(),
                        needs.get(0).seat().shelf(),
                        TANK,
                        TANK.outlets().get(0),
                        0),
                needs.get(0).device(),
                needs.get(0).depthM(),
                needs.get(0).waterDensityKgPerM3(),
                needs.get(0).targetM3PerS(),
                0,
                OptionalDouble.empty(),
                Optional.empty());

        double likely = BALANCES.breath(List.of(warm), List.of(2e-3 / 60), Case.LIKELY, false)
                .bubblesM3PerS();
        double cautious = BALANCES.breath(List.of(warm), List.of(2e-3 / 60), Case.CAUTIOUS, false)
                .bubblesM3PerS();

        assertThat(likely).isCloseTo(6.028e-6, withPercentage(0.1));
        assertThat(cautious / likely).isCloseTo(0.80 / 0.85 / 1.5, withPercentage(0.01));
    }

    @Test
    void airThatIsOffMovesNothing() {
        assertThat(BALANCES.breath(Demands.of(ROOM, CATALOGUE).needs(), List.of(0.0), Case.LIKELY, false))
                .isEqualTo(Breath.NONE);
        assertThat(BALANCES.breath(Demands.of(ROOM, CATALOGUE).needs(), List.of(0.0), Case.LIKELY, true)
                        .stirred())
                .isTrue();
    }

    @Test
    void aTankOfWhichNothingIsKnownIsNotJudged() {
        assertThat(BALANCES.of(aTank("empty").build(), Case.LIKELY)).isEmpty();
    }
}
