package lungfish.report;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.outage.Drill;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Backup;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.TankBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is said of an outage: whole sentences, read by eye. */
final class OutageWordsTest {
    private static final Quantities METRIC = Quantities.in(DisplayUnits.METRIC);

    /** Eggs that live half an hour without air, and a tank of which nothing is said. */
    private static Room room(Backup backup) {
        TankBuilder eggs = aTank("eggs").survivalS(1800).with(outlet("o1").essential());
        TankBuilder silent = aTank("silent").at(0.7).with(outlet("o2"));
        return aRoom().with(aRack("A").at(0.5, 0.5).shelf(0.5, eggs, silent))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.3, 0.2, 2.2))
                .with(backup)
                .build();
    }

    private static lungfish.room.OutletBuilder outlet(String id) {
        return anOutlet(id).device("sponge-small").depthM(0.2).checkValve("check-disc");
    }

    private static Drill play(Room room, Scene scene) {
        return Drills.of(new Planner(DemoPlans.CATALOGUE).plan(room), DemoPlans.CATALOGUE)
                .orElseThrow()
                .play(scene);
    }

    private static OutageWords words(Drill drill) {
        return new OutageWords(drill, METRIC);
    }

    private static List<String> stretches(Drill drill) {
        return drill.stretches().stream().map(words(drill)::says).toList();
    }

    private static Backup generator() {
        return Backup.NONE
                .withNoticeS(OptionalDouble.of(3600))
                .withGenerator(Optional.of(new Backup.Generator(
                        OptionalDouble.empty(), OptionalDouble.of(7200), OptionalDouble.of(1800))));
    }

    @Test
    void stretchesAreTold() {
        assertThat(stretches(play(room(generator()), Scene.mains(24))))
                .containsExactly(
                        "No outlet gets air until 90 min.".replace("90 min", "1 h 30 min"),
                        "The generator carries all 2 outlets from 1 h 30 min until 3 h 30 min.",
                        "No outlet gets air from 3 h 30 min on.");
        assertThat(stretches(play(room(Backup.NONE), Scene.mains(24))))
                .containsExactly("No outlet gets air for all of the 24 h.");
        assertThat(stretches(play(room(Backup.NONE), new Scene(new Failing.Mains(), OptionalDouble.of(7200), 36_000))))
                .containsExactly("No outlet gets air until 2 h.", "All is well from 2 h on.");
    }

    @Test
    void batteryPumpsAreMany() {
        Backup pumps = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 2)));

        assertThat(stretches(play(room(pumps), Scene.mains(24))))
                .containsExactly(
                        "The battery pumps carry 1 of 2 outlets until 20 h.", "No outlet gets air from 20 h on.");
    }

    @Test
    void theFirstInTroubleIsNamed() {
        assertThat(words(play(room(Backup.NONE), Scene.mains(24))).first())
                .isEqualTo("First in trouble: Rack A, Tank eggs: the time typed for it is over after 30 min");
        assertThat(words(play(room(Backup.NONE), Scene.mains(0.25))).first())
                .isEqualTo("No tank comes into danger within 15 min");
    }

    @Test
    void whatCannotBeJudgedIsSaidSo() {
        assertThat(words(play(room(Backup.NONE), Scene.mains(24))).unjudged())
                .isEqualTo(
                        "Not judged, for the room says neither fish, food nor how long they live without air: Rack A,"
                                + " Tank silent.");
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of(new Failing.Mains(), "The mains fail; they do not come back within the 5 h looked at."),
                Arguments.of(
                        new Failing.BlowerStops(new BlowerId("central")),
                        "Blower central stops; it is not mended within the 5 h looked at."),
                Arguments.of(
                        new Failing.BranchShut(new RunId("main")),
                        "Main is shut off; it is not mended within the 5 h looked at."),
                Arguments.of(
                        new Failing.CheckValveStuck(new OutletId("o1")),
                        "The check valve of outlet o1 (Tank eggs) sticks shut; it is not mended within the 5 h looked at."),
                Arguments.of(
                        new Failing.AirlineOff(new OutletId("o1")),
                        "The airline of outlet o1 (Tank eggs) slips off at its valve; it is not mended within the 5 h looked"
                                + " at."),
                Arguments.of(
                        new Failing.HoseOff(new BlowerId("central")),
                        "The hose of Blower central slips off; it is not mended within the 5 h looked at."));
    }

    @ParameterizedTest
    @MethodSource("failures")
    void whatFailsIsToldInASentence(Failing what, String sentence) {
        Room room = room(Backup.NONE);

        assertThat(new FailingWords(METRIC, new Names(room))
                        .scene(play(room, new Scene(what, OptionalDouble.empty(), 5 * 3600))))
                .isEqualTo(sentence);
    }

    /** By hand: nobody is said to notice, so after 8 h, and half an hour later all is put right. */
    @Test
    void whenItIsMendedIsTold() {
        Room room = room(Backup.NONE);
        Failing off = new Failing.HoseOff(new BlowerId("central"));
        FailingWords words = new FailingWords(METRIC, new Names(room));

        assertThat(words.scene(play(room, new Scene(off, OptionalDouble.empty(), 24 * 3600))))
                .isEqualTo("The hose of Blower central slips off; it is noticed and mended after 8 h 30 min.");
        assertThat(words.scene(play(room, new Scene(off, OptionalDouble.of(3600), 24 * 3600))))
                .isEqualTo("The hose of Blower central slips off; all is well again after 1 h.");
    }

    /** Of 20 ft: US Consumer Product Safety Commission. */
    @Test
    void cautionsStandWhereTheyApply() {
        assertThat(String.join(" ", OutageCautions.of(Backup.NONE, METRIC)))
                .contains("Mains power beside water", "licensed practice")
                .doesNotContain("generator", "Batteries");
        assertThat(String.join(" ", OutageCautions.of(generator(), METRIC))).contains("at least 6.1 m from the house");
        assertThat(String.join(" ", OutageCautions.of(generator(), Quantities.in(DisplayUnits.US))))
                .contains("at least 20 ft");
    }
}
