package lungfish.siphon;

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
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Demands;
import lungfish.piping.Piping;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.OutletBuilder;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import lungfish.room.Tank;
import org.junit.jupiter.api.Test;

/**
 * Two tanks of 0.6 by 0.3 by 0.36 m with 0.3 m of water, on shelves 1.2 m and 0.3 m high: water lines at 1.50 and 0.60 m,
 * rims at 1.56 and 0.66 m, air releases 0.25 m deep. All figures by hand from these.
 */
final class SiphonsTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final String CHECK = CATALOGUE.checkValves().get(0).id();
    private static final double ROUNDING = 1e-9;

    private static RoomBuilder room(OutletBuilder high, OutletBuilder low) {
        return aRoom().with(aRack("A")
                .shelf(0.3, aTank("low").with(low))
                .shelf(1.2, aTank("high").with(high)));
    }

    private static RoomBuilder room() {
        return room(anOutlet("h").checkValve("none"), anOutlet("l").checkValve("none"));
    }

    private static Run level(double heightM) {
        return aMain("main", false, new Point(0, 0.2, heightM), new Point(4, 0.2, heightM));
    }

    private static Siphons siphons(RoomBuilder built) {
        Room room = built.build();
        List<Blower> blowers = room.blowers(Blower.Role.PLANNED);
        return Siphons.of(
                room,
                Piping.of(room, Demands.of(room, CATALOGUE), blowers, CATALOGUE).orElseThrow(),
                blowers);
    }

    private static Way only(RoomBuilder built) {
        List<Way> ways = siphons(built).ways();
        assertThat(ways).hasSize(1);
        return ways.get(0);
    }

    @Test
    void overAPipeAboveTheWaterItMustBeLifted() {
        Way way = only(room().with(level(2.2)));

        assertThat(way.from().outlet().outlet().id().text()).isEqualTo("h");
        assertThat(way.into().part().id()).isEqualTo("l");
        assertThat(way.start()).isEqualTo(Way.Start.ONCE_LIFTED);
        assertThat(way.crestM()).isEqualTo(2.2, within(ROUNDING));
        assertThat(way.liftM()).isEqualTo(2.2 - 1.5, within(ROUNDING));
    }

    @Test
    void throughAPipeBelowTheWaterItRunsByItself() {
        Way way = only(room().with(level(1.2)));

        assertThat(way.start()).isEqualTo(Way.Start.BY_ITSELF);
        assertThat(way.liftM()).as("over the rim of its own tank alone").isEqualTo(1.56 - 1.5, within(ROUNDING));
    }

    @Test
    void itRunsUntilTheAirReleaseComesToAir() {
        Way way = only(room().with(level(1.2)));

        assertThat(way.waterM3()).isEqualTo(0.6 * 0.3 * 0.25, within(ROUNDING)); // 45 L
        assertThat(way.into().freeM3()).hasValueCloseTo(0.6 * 0.3 * 0.06, within(ROUNDING)); // 10.8 L
        assertThat(way.overM3()).hasValueCloseTo(0.0342, within(ROUNDING)); // the rest
    }

    @Test
    void itRunsNoFurtherThanToTheLevelOfTheLowerTank() {
        Way way = only(aRoom().with(aRack("A")
                        .shelf(1.1, aTank("low").with(anOutlet("l")))
                        .shelf(1.2, aTank("high").with(anOutlet("h"))))
                .with(level(1.2)));

        assertThat(way.waterM3()).isEqualTo(0.6 * 0.3 * 0.1, within(ROUNDING));
    }

    @Test
    void aConeGivesAsItsWidthAllows() {
        Way way = only(aRoom().with(aRack("A")
                        .shelf(0.3, aTank("low").with(anOutlet("l").checkValve(CHECK)))
                        .shelf(
                                1.2,
                                aTank("high")
                                        .kind(Tank.Kind.HATCHING_CONE)
                                        .sized(0.2, 0.2, 0.36)
                                        .with(anOutlet("h").depthM(0.15))))
                .with(level(1.2)));

        double full = 0.2 * 0.2 * 0.3 / 3;
        assertThat(way.waterM3()).as("half as high: an eighth stays").isEqualTo(full * 7 / 8, within(ROUNDING));
    }

    @Test
    void betweenTheLineAndTheRimThePipeStillHoldsIt() {
        Way way = only(room().with(level(1.52)));

        assertThat(way.start()).isEqualTo(Way.Start.ONCE_LIFTED);
        assertThat(way.liftM()).as("the rim is higher than the pipe").isEqualTo(0.06, within(ROUNDING));
    }

    @Test
    void aRimHigherThanTheRushIsACrest() {
        Way way = only(room(anOutlet("h").depthM(0.05), anOutlet("l")).with(level(1.2)));

        assertThat(way.start()).isEqualTo(Way.Start.ONCE_LIFTED);
    }

    @Test
    void theRimOfTheLowerTankIsACrestToo() {
        Way way = only(aRoom().with(aRack("A")
                        .shelf(
                                0.9,
                                aTank("low")
                                        .sized(0.6, 0.3, 0.7)
                                        .waterDepthM(0.3)
                                        .with(anOutlet("l")))
                        .shelf(1.2, aTank("high").with(anOutlet("h"))))
                .with(level(1.0)));

        assertThat(way.crestM()).isEqualTo(1.6, within(ROUNDING));
        assertThat(way.start()).isEqualTo(Way.Start.ONCE_LIFTED);
    }

    @Test
    void theCheckValveOfTheHigherTankHoldsItsWater() {
        RoomBuilder held = room(anOutlet("h").checkValve(CHECK), anOutlet("l").checkValve("none"));

        assertThat(siphons(held.with(level(1.2))).ways()).isEmpty();
    }

    /** It opens towards its device, which is where the water goes. */
    @Test
    void theCheckValveOfTheLowerTankDoesNot() {
        RoomBuilder open = room(anOutlet("h").checkValve("none"), anOutlet("l").checkValve(CHECK));

        assertThat(only(open.with(level(1.2))).start()).isEqualTo(Way.Start.BY_ITSELF);
    }

    @Test
    void whereNothingIsSaidOfACheckValveThatIsSaid() {
        Way way = only(room(anOutlet("h"), anOutlet("l")).with(level(1.2)));

        assertThat(way.from().checkValve()).isEqualTo(Leaving.CheckValve.UNKNOWN);
        assertThat(only(room().with(level(1.2))).from().checkValve()).isEqualTo(Leaving.CheckValve.NONE);
    }

    @Test
    void onlyTheOutletsThatCanLoseWaterWantACheckValve() {
        Siphons siphons = siphons(room().with(level(1.2)));

        assertThat(siphons.leaving())
                .extracting(each -> each.outlet().outlet().id().text())
                .containsExactly("h");
        assertThat(siphons.safeHeightM())
                .hasValueSatisfying(height -> assertThat(height).isEqualTo(1.5, within(ROUNDING)));
    }

    @Test
    void tanksOfOneLevelDoNothingToEachOther() {
        RoomBuilder level = aRoom().with(aRack("A")
                .shelf(1.2, aTank("a").with(anOutlet("a")), aTank("b").at(0.7).with(anOutlet("b"))));

        assertThat(siphons(level.with(level(1.2))).ways()).isEmpty();
    }

    @Test
    void aShutValveHoldsTheWater() {
        RoomBuilder shut = room(anOutlet("h").valve("needle-brass", 0), anOutlet("l"));

        assertThat(siphons(shut.with(level(1.2))).ways()).isEmpty();
    }

    @Test
    void pipeShutByAValveIsNoWay() {
        Run.Fitting ball = new Run.Fitting("ball-valve", 2, OptionalDouble.of(0));
        RoomBuilder apart = room(anOutlet("h").onRun("main", 0.5), anOutlet("l").onRun("main", 3.5));

        assertThat(siphons(apart.with(level(1.2).fitted(List.of(ball)))).ways()).isEmpty();
    }

    @Test
    void aRiseOfThePipeBetweenTheTapsIsACrest() {
        Run hump = aMain(
                "main",
                false,
                new Point(0, 0.2, 1.2),
                new Point(1, 0.2, 1.2),
                new Point(1, 0.2, 2.1),
                new Point(2, 0.2, 2.1),
                new Point(2, 0.2, 1.2),
                new Point(4, 0.2, 1.2));
        RoomBuilder apart = room(anOutlet("h").onRun("main", 0.5), anOutlet("l").onRun("main", 4.5));
        Siphons siphons = siphons(apart.with(hump));
        Way way = siphons.ways().get(0);

        assertThat(way.crestM()).isEqualTo(2.1, within(ROUNDING));
        assertThat(siphons.path(way).points())
                .containsSubsequence(new Point(1, 0.2, 2.1), new Point(2, 0.2, 2.1), new Point(2, 0.2, 1.2));
        assertThat(siphons.path(way).crest().zM()).isEqualTo(2.1, within(ROUNDING));
    }

    /** A loop of 4 by 3 m: one long side 1.2 m high, the three others 2.1 m. */
    @Test
    void ofTwoWaysRoundALoopWaterTakesTheLower() {
        Run loop = aMain(
                "main",
                true,
                new Point(0, 0, 1.2),
                new Point(4, 0, 1.2),
                new Point(4, 0, 2.1),
                new Point(4, 3, 2.1),
                new Point(0, 3, 2.1),
                new Point(0, 0, 2.1));
        Siphons siphons =
                siphons(room(anOutlet("h").onRun("main", 0.5), anOutlet("l").onRun("main", 3.5))
                        .with(loop));

        assertThat(siphons.ways().get(0).crestM()).isEqualTo(1.2, within(ROUNDING));
        assertThat(siphons.path(siphons.ways().get(0)).points()).allMatch(point -> point.zM() < 1.6);
    }

    @Test
    void outletsOnOneGangMeetThereWhereverThePipeIs() {
        Gang gang = new Gang(
                new GangId("g"), Gang.Kind.GANG_VALVE, new Point(1, 0.2, 1.3), Optional.empty(), Optional.empty());
        Way way = only(room(anOutlet("h").onGang("g"), anOutlet("l").onGang("g"))
                .with(level(2.2))
                .with(gang));

        assertThat(way.crestM()).isEqualTo(1.3, within(ROUNDING));
        assertThat(way.start()).isEqualTo(Way.Start.BY_ITSELF);
    }

    @Test
    void waterRunsIntoABlowerThatStandsBelowIt() {
        Siphons siphons = siphons(room().with(level(1.2)).with(aBlower("b").at(0, 0.2, 0.5)));
        Way worst = siphons.ways().get(0);

        assertThat(siphons.ways()).hasSize(2);
        assertThat(worst.reachesMachine()).as("that is the worst of all").isTrue();
        assertThat(worst.start()).isEqualTo(Way.Start.BY_ITSELF);
        assertThat(worst.waterM3()).isEqualTo(0.045, within(ROUNDING));
        assertThat(worst.overM3()).isEmpty();
    }

    @Test
    void theLowerTankTooCanRunIntoABlowerOnTheFloor() {
        Siphons siphons = siphons(room(anOutlet("h").checkValve(CHECK), anOutlet("l"))
                .with(level(2.2))
                .with(aBlower("b").at(0, 0.2, 0.1)));

        assertThat(siphons.ways()).hasSize(1);
        assertThat(siphons.ways().get(0).liftM()).isEqualTo(2.2 - 0.6, within(ROUNDING));
    }

    @Test
    void aBlowerAboveAllWaterIsSafe() {
        assertThat(siphons(room().with(level(1.2)).with(aBlower("b").at(0, 0.2, 1.6)))
                        .ways())
                .noneMatch(Way::reachesMachine);
    }

    @Test
    void tanksOnOneSmallPumpMeetAtIt() {
        Room room = room().with(aBlower("p").today("h", "l").at(1, 0.2, 1.0)).build();
        Siphons siphons = Siphons.of(List.of(new Siphons.Pump(
                room.blowers().get(0), Demands.of(room, CATALOGUE).needs())));

        assertThat(siphons.ways()).hasSize(2).allMatch(way -> way.start() == Way.Start.BY_ITSELF);
        assertThat(siphons.ways()).filteredOn(Way::reachesMachine).hasSize(1);
    }

    @Test
    void thePathBeginsAtTheReleaseAndEndsAtTheOther() {
        Siphons siphons =
                siphons(room(anOutlet("h").onRun("main", 0.5), anOutlet("l").onRun("main", 3.5))
                        .with(level(2.2)));
        List<Point> points = siphons.path(siphons.ways().get(0)).points();

        assertThat(points.get(0).zM()).isEqualTo(1.5 - 0.25, within(ROUNDING));
        assertThat(points.get(1).zM()).isEqualTo(1.56, within(ROUNDING));
        assertThat(points).containsSubsequence(new Point(0.5, 0.2, 2.2), new Point(3.5, 0.2, 2.2));
        assertThat(points.get(points.size() - 1).zM()).isEqualTo(0.6 - 0.25, within(ROUNDING));
    }

    @Test
    void ofSeveralSourcesTheOneThatNeedsLeastLiftingIsTheWorst() {
        RoomBuilder three = aRoom().with(aRack("A")
                .shelf(0.3, aTank("low").with(anOutlet("l")))
                .shelf(0.9, aTank("middle").with(anOutlet("m")))
                .shelf(1.5, aTank("top").with(anOutlet("t"))));
        List<Way> ways = siphons(three.with(level(2.2))).ways();

        assertThat(ways)
                .hasSize(2)
                .allMatch(way -> way.from().outlet().tank().id().text().equals("top"));
    }
}
