package lungfish.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

final class SpacingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static double[] spread(double least, double most, double... wanted) {
        double[] gaps = new double[wanted.length];
        double[] weights = new double[wanted.length];
        Arrays.fill(gaps, 0.05);
        Arrays.fill(weights, 1);
        return Spacing.spread(wanted, gaps, weights, least, most);
    }

    /** Two that are 2 cm apart give way by 1.5 cm each; a third far away stays. */
    @Test
    void neighboursGiveWayAlike() {
        assertThat(spread(0, 2, 1.0, 1.02, 1.5)).containsExactly(new double[] {0.985, 1.035, 1.5}, EXACT);
    }

    /** Three at one place: 5 cm to each side. */
    @Test
    void theMiddleOneStays() {
        assertThat(spread(0, 2, 1.0, 1.0, 1.0)).containsExactly(new double[] {0.95, 1.0, 1.05}, EXACT);
    }

    @Test
    void theLimitsHold() {
        assertThat(spread(0.1, 2, 0.08, 0.1)).containsExactly(new double[] {0.1, 0.15}, EXACT);
        assertThat(spread(0, 1, 0.98, 0.99)).containsExactly(new double[] {0.95, 1.0}, EXACT);
    }

    /** A weight of a million against one: the heavy one stays to a ten-thousandth of a millimetre. */
    @Test
    void whatIsHeavyStays() {
        double[] places = Spacing.spread(new double[] {1.0, 1.02}, new double[] {0, 0.05}, new double[] {1e6, 1}, 0, 2);
        assertThat(places[0]).isEqualTo(1.0, within(1e-7));
        assertThat(places[1]).isEqualTo(1.05, within(1e-7));
    }

    @Property(tries = 200)
    void distancesAreKeptAndNothingMovesThatNeedNot(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.3, max = 9.7) Double> places) {
        double[] wanted = places.stream().mapToDouble(each -> each).sorted().toArray();
        double[] found = spread(0, 10, wanted);
        for (int i = 1; i < found.length; i++) {
            assertThat(found[i] - found[i - 1]).isGreaterThan(0.05 - 1e-9);
        }
        double moved = 0;
        double sum = 0;
        for (int i = 0; i < found.length; i++) {
            moved = Math.max(moved, Math.abs(found[i] - wanted[i]));
            sum += found[i] - wanted[i];
        }
        assertThat(moved).isLessThanOrEqualTo(0.05 * (found.length - 1) + 1e-9);
        assertThat(sum).isEqualTo(0, within(1e-6));
    }
}
