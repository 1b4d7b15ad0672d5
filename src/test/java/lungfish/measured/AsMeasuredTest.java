package lungfish.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;

/** Facts about the room with what was measured put in. */
final class AsMeasuredTest {
    private static final Plan GARAGE = DemoPlans.plan("garage-killifish");

    private static Fitted fitted(Happening happening, double share, double leakM3PerS, double clog) {
        return new Fitted(
                happening,
                0.05,
                new Fitted.BlowerGives(1, share, 0.05, 1),
                List.of(),
                List.of(),
                leakM3PerS,
                0,
                6400,
                clog);
    }

    private static BlowerClass blower(Room room) {
        return room.ownClasses().blowers().get(room.ownClasses().blowers().size() - 1);
    }

    /** By hand: 0.8 of every point, less a leak of 6 L/min at 6.4 kPa, 3 L/min at a quarter of that pressure. */
    @Test
    void theBlowerGivesWhatItGivesLessWhatLeaks() {
        Room room = AsMeasured.room(GARAGE, fitted(new Happening.Leak(0, 0.2), 0.8, 1e-4, 0));
        BlowerClass sheet = GARAGE.duty().orElseThrow().candidate().kind();

        assertThat(blower(room).points()).hasSameSizeAs(sheet.points());
        for (int i = 0; i < sheet.points().size(); i++) {
            double pa = sheet.points().get(i).gaugePa();
            double left = 0.8 * sheet.points().get(i).freeM3PerS() - 1e-4 * Math.sqrt(pa / 6400);
            assertThat(blower(room).points().get(i).freeM3PerS()).isCloseTo(Math.max(0, left), within(1e-12));
        }
    }

    @Test
    void aWornBlowerHasTheLessLeftToLose() {
        BlowerClass sheet = GARAGE.duty().orElseThrow().candidate().kind();
        BlowerClass worn = blower(AsMeasured.room(GARAGE, fitted(new Happening.Wear(0.05), 0.95, 0, 0)));

        assertThat(worn.tiredShare() * 0.95).isCloseTo(sheet.tiredShare(), within(1e-12));
        assertThat(blower(AsMeasured.room(GARAGE, fitted(new Happening.Wear(0.6), 0.4, 0, 0)))
                        .tiredShare())
                .isEqualTo(1);
    }

    @Test
    void onlyTheCloggedOutletHasAnotherDevice() {
        Seat first = GARAGE.room().seats().get(0);
        Room room = AsMeasured.room(
                GARAGE, fitted(new Happening.Clog(0, first.outlet().id(), 0.4), 1, 0, 5e7));

        assertThat(room.seats().stream()
                        .map(Seat::outlet)
                        .filter(outlet -> outlet.device().endsWith("-as-measured"))
                        .map(Outlet::id))
                .containsExactly(first.outlet().id());
        DeviceClass clogged =
                room.ownClasses().devices().get(room.ownClasses().devices().size() - 1);
        DeviceClass before = DemoPlans.CATALOGUE.device(first.outlet().device()).orElseThrow();
        assertThat(clogged.clean().aPaSPerM3() - before.clean().aPaSPerM3()).isCloseTo(5e7, within(1.0));
    }

    @Test
    void itIsARoomLikeAnyOther() {
        Room room = AsMeasured.room(GARAGE, fitted(new Happening.Wear(0.2), 0.8, 0, 0));
        Room read = new RoomReader(DemoPlans.CATALOGUE)
                .read(RoomWriter.bytes(room))
                .value()
                .orElseThrow();

        assertThat(RoomWriter.text(read)).isEqualTo(RoomWriter.text(room));
        assertThat(new Planner(DemoPlans.CATALOGUE).plan(read).duty()).isPresent();
    }
}
