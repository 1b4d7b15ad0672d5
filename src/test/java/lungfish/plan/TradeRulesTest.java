package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import lungfish.room.Point;
import lungfish.room.RackBuilder;
import lungfish.room.Room;
import lungfish.room.TankBuilder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What keepers know, held against the whole plan: a loop in a room of racks, sponge filters of about 1 L/min each at rack
 * depths (0.35 to 0.45 m), each on 4/6 mm airline with a check valve, the blower tired and the sponges due.
 */
final class TradeRulesTest {
    private static final double ONE_L_PER_MIN = 1e-3 / 60;

    private static Room roomOf(int airlines, String blower) {
        RackBuilder rack = aRack("A").sized(4, 0.5);
        TankBuilder tank = aTank("A-1").sized(4, 0.5, 0.5).waterDepthM(0.48);
        for (int i = 0; i < airlines; i++) {
            tank.with(anOutlet("a" + i)
                    .device("sponge-small")
                    .targetM3PerS(ONE_L_PER_MIN)
                    .depthM(0.35 + 0.1 * i / airlines)
                    .checkValve("check-disc"));
        }
        return aRoom().with(rack.shelf(0.9, tank))
                .with(aMain(
                        "loop", true, new Point(0, 0, 2), new Point(4, 0, 2), new Point(4, 3, 2), new Point(0, 3, 2)))
                .with(aBlower("central").machine(blower).at(0.2, 0.2, 2.1))
                .build();
    }

    private static double reserve(String blower, int airlines) {
        Plan plan = new Planner(DemoPlans.CATALOGUE).plan(roomOf(airlines, blower));
        return plan.duty().orElseThrow().candidate().reserveShare();
    }

    /** Common practice, no source: an 80 L/min linear piston carries 60 to 80 airlines, a 60 L/min one carries 50. */
    @ParameterizedTest
    @CsvSource({"linear-piston-80, 60", "linear-piston-80, 80", "linear-piston-60, 50"})
    void aLinearPistonCarriesTheAirlinesThatKeepersSay(String blower, int airlines) {
        assertThat(reserve(blower, airlines)).isNotNegative();
    }

    /** The rules are not far on the safe side either: half as many airlines again are too many. */
    @ParameterizedTest
    @CsvSource({"linear-piston-80, 120", "linear-piston-60, 75"})
    void halfAsManyAgainAreTooMany(String blower, int airlines) {
        assertThat(reserve(blower, airlines)).isNegative();
    }
}
