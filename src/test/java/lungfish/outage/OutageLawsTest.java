package lungfish.outage;

import static lungfish.outage.OutageRooms.HOUR_S;
import static lungfish.outage.OutageRooms.aFishRoom;
import static lungfish.outage.OutageRooms.battery;
import static lungfish.outage.OutageRooms.play;
import static lungfish.outage.OutageRooms.unbled;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import lungfish.oxygen.Case;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.Tank;
import lungfish.room.TankId;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold whatever the figures: each approximation, and each help, points the way that it is said to. */
final class OutageLawsTest {
    private static final int TRIES = 25;
    private static final double NEVER = 1e12;

    /** What two integrations of one course may differ by. */
    private static final double INTEGRATED_TWICE_S = 0.5;

    private static Drill mains(Backup backup) {
        return play(aFishRoom(unbled("b")).with(backup).build(), Scene.mains(36));
    }

    /** Each time of each tank in the worse drill is no later than in the better one. */
    private static void noLater(Drill worse, Drill better, Predicate<TankDrill> which) {
        for (int i = 0; i < worse.tanks().size(); i++) {
            if (which.test(worse.tanks().get(i))) {
                for (Case how : Case.values()) {
                    TankDrill bad = worse.tanks().get(i);
                    TankDrill good = better.tanks().get(i);
                    assertThat(bad.dangerS(how).orElse(NEVER))
                            .isLessThanOrEqualTo(good.dangerS(how).orElse(NEVER) + INTEGRATED_TWICE_S);
                    assertThat(bad.alarmS(how).orElse(NEVER))
                            .isLessThanOrEqualTo(good.alarmS(how).orElse(NEVER) + INTEGRATED_TWICE_S);
                }
            }
        }
    }

    private static Backup generator(double fuelS, double readyS) {
        return Backup.NONE.withGenerator(Optional.of(
                new Backup.Generator(OptionalDouble.of(900), OptionalDouble.of(fuelS), OptionalDouble.of(readyS))));
    }

    /** With fuel enough: who starts it later has it longer, and a tank that bore the wait lives on that. */
    @Property(tries = TRIES)
    void whoNoticesLaterSavesNothing(
            @ForAll @DoubleRange(max = 12) double soonerH, @ForAll @DoubleRange(max = 12) double longerH) {
        Backup backup = generator(40 * HOUR_S, 600);

        noLater(
                mains(backup.withNoticeS(OptionalDouble.of((soonerH + longerH) * HOUR_S))),
                mains(backup.withNoticeS(OptionalDouble.of(soonerH * HOUR_S))),
                tank -> true);
    }

    /** Only what is kept going: the others are shed the sooner, the sooner it is noticed. */
    @Property(tries = TRIES)
    void whoShedsLaterHelpsNoTankThatIsKeptGoing(
            @ForAll @DoubleRange(max = 6) double soonerH, @ForAll @DoubleRange(max = 6) double longerH) {
        Backup backup =
                battery(6).withShedding(Optional.of(new Backup.Shedding("the ball valve", "whoever is at home")));

        noLater(
                mains(backup.withNoticeS(OptionalDouble.of((soonerH + longerH) * HOUR_S))),
                mains(backup.withNoticeS(OptionalDouble.of(soonerH * HOUR_S))),
                TankDrill::essential);
    }

    @Property(tries = TRIES)
    void aLargerBatteryNeverHarms(
            @ForAll @DoubleRange(min = 0.5, max = 20) double ah, @ForAll @DoubleRange(max = 20) double moreAh) {
        noLater(mains(battery(ah)), mains(battery(ah + moreAh)), tank -> true);
        noLater(mains(Backup.NONE), mains(battery(ah)), tank -> true);
    }

    @Property(tries = TRIES)
    void moreFuelNeverHarms(
            @ForAll @DoubleRange(min = 0.1, max = 10) double fuelH, @ForAll @DoubleRange(max = 10) double moreH) {
        noLater(
                mains(generator(fuelH * HOUR_S, HOUR_S)),
                mains(generator((fuelH + moreH) * HOUR_S, HOUR_S)),
                tank -> true);
    }

    @Property(tries = TRIES)
    void aQuickerHandNeverHarms(
            @ForAll @DoubleRange(max = 5) double readyH, @ForAll @DoubleRange(max = 5) double slowerH) {
        noLater(
                mains(generator(60 * HOUR_S, (readyH + slowerH) * HOUR_S)),
                mains(generator(60 * HOUR_S, readyH * HOUR_S)),
                tank -> true);
    }

    @Property(tries = TRIES)
    void batteryPumpsNeverHarm(@ForAll @IntRange(min = 1, max = 4) int pumps, @ForAll @IntRange(max = 4) int more) {
        Backup some = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", pumps)));
        Backup many =
                Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", pumps + more)));

        noLater(mains(some), mains(many), tank -> true);
        noLater(mains(Backup.NONE), mains(some), tank -> true);
    }

    private static Room each(Room room, UnaryOperator<Tank> change) {
        List<Rack> racks = room.racks().stream()
                .map(rack -> rack.withShelves(rack.shelves().stream()
                        .map(shelf -> shelf.withTanks(
                                shelf.tanks().stream().map(change).toList()))
                        .toList()))
                .toList();
        return room.withRacks(racks);
    }

    @Property(tries = TRIES)
    void moreFishNeverLiveLonger(@ForAll @IntRange(min = 1, max = 60) int more) {
        Room room = aFishRoom(unbled("b")).build();
        Room crowded = each(
                room,
                tank -> tank.holding(
                        List.of(new Tank.Fish("fish", tank.fish().get(0).count() + more, 0.001)),
                        tank.feeding(),
                        tank.survivalS()));

        noLater(play(crowded, Scene.mains(36)), play(room, Scene.mains(36)), tank -> true);
    }

    @Property(tries = 2)
    void aMealNeverHelps(@ForAll boolean known) {
        Room room = aFishRoom(unbled("b")).build();
        Room fed = each(room, tank -> tank.justFed(Optional.of(true)));
        Room hungry = each(room, tank -> tank.justFed(known ? Optional.of(false) : Optional.empty()));

        noLater(play(fed, Scene.mains(36)), play(hungry, Scene.mains(36)), tank -> true);
    }

    @Property(tries = 3)
    void whatStirsNeverHarms(@ForAll @IntRange(min = 1, max = 3) int tank) {
        Room room = aFishRoom(unbled("b")).build();
        Stirrer stirrer = new Stirrer(
                new StirrerId("s"),
                new TankId("t" + tank),
                Stirrer.Kind.POWERHEAD,
                OptionalDouble.empty(),
                Optional.empty());

        noLater(play(room, Scene.mains(36)), play(room.withStirrers(List.of(stirrer)), Scene.mains(36)), each -> true);
    }

    /** Whatever fails in it: its cautious times are never later than its likely ones, and danger never before the alarm. */
    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void cautiousIsNeverLaterThanLikelyNorDangerBeforeTheAlarm(String demo) {
        Plan plan = DemoPlans.plan(demo);
        Drills drills = Drills.of(plan, DemoPlans.CATALOGUE).orElseThrow();
        List<Failing> some = drills.possible().stream()
                .filter(what -> isOneOfItsKind(drills, what))
                .toList();
        for (Failing what : some) {
            Drill drill = drills.play(OutageRooms.scene(what, 48));
            assertThat(drill.stretches().get(drill.stretches().size() - 1).toS())
                    .isEqualTo(48 * HOUR_S);
            for (TankDrill tank : drill.tanks()) {
                assertThat(tank.dangerS(Case.CAUTIOUS).orElse(NEVER))
                        .isLessThanOrEqualTo(tank.dangerS(Case.LIKELY).orElse(NEVER));
                assertThat(tank.alarmS(Case.CAUTIOUS).orElse(NEVER))
                        .isLessThanOrEqualTo(tank.dangerS(Case.CAUTIOUS).orElse(NEVER));
            }
        }
    }

    /** The first of each kind: the rest of 320 airlines is like it. */
    private static boolean isOneOfItsKind(Drills drills, Failing what) {
        return drills.possible().stream()
                .filter(other -> other.kind() == what.kind())
                .findFirst()
                .filter(what::equals)
                .isPresent();
    }

    /** An outlet that nothing was done to gets no less when the mains come back than before. */
    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void whenAllIsWellAgainEveryOutletHasItsAir(String demo) {
        Drills drills = Drills.of(DemoPlans.plan(demo), DemoPlans.CATALOGUE).orElseThrow();
        OutletId first = drills.play(Scene.mains(1)).needs().get(0).id();
        Drill drill = drills.play(new Scene(new Failing.AirlineOff(first), OptionalDouble.of(HOUR_S), 2 * HOUR_S));

        assertThat(drill.stretches().get(0).airM3PerS().get(0)).isZero();
        assertThat(drill.stretches().get(1).airM3PerS().get(0)).isPositive();
    }
}
