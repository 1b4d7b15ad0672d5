package lungfish.drawing;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.cost.Central;
import lungfish.cost.Cost;
import lungfish.cost.CostAnswer;
import lungfish.cost.Running;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import lungfish.reason.PartId;
import lungfish.today.Beside;
import org.junit.jupiter.api.Test;

/** The pictures of the pumps of today beside the planned blower, looked at once and kept. */
final class BesidePicturesTest {
    private static final Plan STARTING_OUT = DemoPlans.plan("starting-out");
    private static final Look METRIC = Look.light(DisplayUnits.METRIC);

    private static CostAnswer twelvePumps() {
        Running pumps = machines("small-diaphragm-5", 12, 72);
        Central central = new Central(List.of(machines("linear-piston-40", 1, 35)), 150);
        return Cost.of(STARTING_OUT.room(), DemoPlans.CATALOGUE, central, List.of(pumps));
    }

    private static Running machines(String kind, int count, double watts) {
        PartId part = new PartId(PartId.Kind.BLOWER, kind);
        return new Running(
                kind, part, DemoPlans.CATALOGUE.blower(kind).orElseThrow(), count, watts, OptionalDouble.empty());
    }

    private static void panel(String name, Pictures.Painting painting, int width, int height) {
        Golden.check(name, Pictures.withMargin(painting, 12, width, height, METRIC));
    }

    @Test
    void moneyThatNeverComesBack() {
        CostAnswer cost = STARTING_OUT.cost().orElseThrow();
        panel("money-never", (area, look, g) -> MoneyPicture.paint(cost, area, look, g), 624, 200);
    }

    @Test
    void theYearFromWhichTheBlowerStaysTheCheaper() {
        panel("money-pays", (area, look, g) -> MoneyPicture.paint(twelvePumps(), area, look, g), 624, 200);
    }

    @Test
    void moneyInANarrowColumn() {
        panel("money-narrow", (area, look, g) -> MoneyPicture.paint(twelvePumps(), area, look, g), 324, 200);
    }

    @Test
    void airAgainstWhatIsAsked() {
        Beside beside = Beside.of(STARTING_OUT);
        panel("air", (area, look, g) -> AirPicture.paint(STARTING_OUT, beside, area, look, g), 324, 90);
    }
}
