package lungfish.outage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.oxygen.Case;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import lungfish.room.Backup;
import lungfish.room.Backup.Standby.Start;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is watched is what is played; what is changed in the same drills is what would be planned anew. */
final class WatchTest {
    static Stream<String> demos() {
        return DemoPlans.names().filter(name -> !name.equals("club-hall"));
    }

    private static Drills drills(Room room) {
        return Drills.of(new Planner(DemoPlans.CATALOGUE).plan(room), DemoPlans.CATALOGUE)
                .orElseThrow();
    }

    private static List<Scene> scenes(Drills drills) {
        List<Scene> scenes = new ArrayList<>(List.of(Scene.mains(12)));
        drills.blowers()
                .forEach(blower ->
                        scenes.add(new Scene(new Failing.BlowerStops(blower), OptionalDouble.empty(), 40 * 3600)));
        return scenes;
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aTankThatIsWatchedIsInDangerWhenItIsInTheDrill(String demo) {
        Drills drills = drills(DemoPlans.room(demo));
        for (Scene scene : scenes(drills)) {
            List<TankDrill> played = drills.play(scene).tanks();
            Watch watch = drills.watch(scene);
            for (int i = 0; i < played.size(); i++) {
                assertThat(watch.dangerS(i)).isEqualTo(played.get(i).dangerS(Case.CAUTIOUS));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void anotherBackupAndAStandbyAreDrilledAsIfPlannedAnew(String demo) {
        Room room = DemoPlans.room(demo);
        Room kept = kept(room);
        Drills changed = drills(room).with(kept);
        Drills anew = drills(kept);
        for (Scene scene : scenes(anew)) {
            assertThat(changed.play(scene).stretches())
                    .isEqualTo(anew.play(scene).stretches());
            assertThat(changed.play(scene).inDanger(Case.CAUTIOUS))
                    .extracting(each -> each.tank().id())
                    .isEqualTo(anew.play(scene).inDanger(Case.CAUTIOUS).stream()
                            .map(each -> each.tank().id())
                            .toList());
        }
    }

    private static Room kept(Room room) {
        Blower first = room.blowers().get(0);
        List<Blower> blowers = new ArrayList<>(room.blowers());
        blowers.add(Blower.planned(new BlowerId("spare"))
                .as(Blower.Role.STANDBY)
                .withMachine(first.machine())
                .sited(first.siting()));
        Backup backup = room.backup()
                .withNoticeS(OptionalDouble.of(1800))
                .withStandby(Optional.of(new Backup.Standby(Start.AUTOMATIC, OptionalDouble.empty())))
                .withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-medium", 2)))
                .withGenerator(Optional.of(Backup.Generator.UNKNOWN));
        return room.withBlowers(blowers).withBackup(backup);
    }
}
