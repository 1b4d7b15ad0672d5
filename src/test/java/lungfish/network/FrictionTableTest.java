package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lungfish.air.Friction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pieces of the friction law beside the law itself. */
final class FrictionTableTest {
    /** What the table promises, as a share of the law. */
    private static final double PROMISED = 5e-13;

    /** The slope may be off by the square of the degree more (Markov), over half a piece: Re/256 at the least. */
    private static final double SLOPE = 49 * PROMISED * 256;

    private static final double STEP = 1.0 + 1.0 / 1024.0;

    private static void isTheLaw(FrictionTable table, double re, double relativeRoughness) {
        double[] law = new double[2];
        Friction.darcyTimesRe(re, relativeRoughness, law);
        FrictionPiece piece = table.piece(re);
        double place = piece.place(re);
        assertThat(place).isBetween(-1.0, 1.0);
        assertThat(piece.value(place)).as("f Re at " + re).isCloseTo(law[0], within(PROMISED * law[0]));
        assertThat(piece.slope(place)).as("slope at " + re).isCloseTo(law[1], within(SLOPE * law[0] / re));
    }

    /** Every piece at a dozen places or more, its ends among them. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 1.5e-6 / 0.0261, 1.5e-6 / 0.004, 1e-3, 0.05})
    void everyPieceIsTheLaw(double relativeRoughness) {
        FrictionTable table = FrictionTable.of(relativeRoughness);
        for (double re = FrictionTable.LAMINAR_TO_RE; re < FrictionTable.END_RE; re *= STEP) {
            isTheLaw(table, re, relativeRoughness);
            double border = Math.rint(re / 16.0) * 16.0;
            isTheLaw(table, Math.max(border, FrictionTable.LAMINAR_TO_RE), relativeRoughness);
            isTheLaw(table, Math.max(Math.nextDown(border), FrictionTable.LAMINAR_TO_RE), relativeRoughness);
        }
        isTheLaw(table, Math.nextDown(FrictionTable.END_RE), relativeRoughness);
    }

    @Property
    void anyRoughnessIsTheLaw(
            @ForAll @DoubleRange(min = 800.0, max = 1e6) double re,
            @ForAll @DoubleRange(min = 0.0, max = 0.05) double relativeRoughness) {
        isTheLaw(FrictionTable.of(relativeRoughness), re, relativeRoughness);
    }

    @Test
    void oneRoughnessHasOneTableAndAThousandOthersDoNotDisturbIt() {
        FrictionTable first = FrictionTable.of(3e-4);
        assertThat(FrictionTable.of(3e-4)).isSameAs(first);
        for (int i = 0; i < 1000; i++) {
            double other = i * 1e-5 + 1e-6;
            isTheLaw(FrictionTable.of(other), 3000.0, other);
        }
        isTheLaw(first, 3000.0, 3e-4);
    }
}
