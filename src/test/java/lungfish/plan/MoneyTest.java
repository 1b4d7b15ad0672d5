package lungfish.plan;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lungfish.room.Blower;
import lungfish.room.Point;
import org.junit.jupiter.api.Test;

final class MoneyTest {
    private static final Blower.Fittings FITTED = Blower.Fittings.UNKNOWN
            .withInletFilter(Optional.of("inlet-filter-large"))
            .withSilencer(Optional.of("outlet-silencer"));

    /** By hand: a filter of 45 and a silencer of 40 for each of three machines are 255. */
    @Test
    void eachMachineHasItsOwnFilterAndSilencer() {
        double bare = purchase(Blower.Fittings.UNKNOWN);
        assertThat(purchase(FITTED) - bare).isEqualTo(255);
    }

    private static double purchase(Blower.Fittings fittings) {
        Plan plan = new Planner(DemoPlans.CATALOGUE)
                .plan(aRoom().with(
                                aMain("main", true, new Point(0.2, 0.2, 2), new Point(3, 0.2, 2), new Point(3, 3, 2)))
                        .with(aRack("r").at(0.5, 0.5).shelf(0.5, aTank("t").with(anOutlet("o"))))
                        .with(aBlower("b").machine("linear-piston-40").count(3).fitted(fittings))
                        .build());
        return plan.cost().orElseThrow().central().purchase();
    }
}
