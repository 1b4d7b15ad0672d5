package lungfish.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CuttingTest {
    /** A tenth of a millimetre: finer than any tape. */
    private static final double TENTH_M = 1e-4;

    /**
     * The four sets of the one-dimensional bin packing collection of a university's scientific computing department, often
     * used to try programs. The second is the example of Martello and Toth, Knapsack Problems (1990), chapter 8. That no
     * fewer bins will do: sets 1, 3 and 4 sum to 299, 300 and 3668 = 7 × 524. Set 2 sums to 597, so six bins would waste 3 at
     * most: 99 alone wastes 1; 94 goes with 6, for 94 + 3 wastes 3 more; 79 goes with 18 and 3, or with 19, wasting 2; then 64
     * is left with 36 to fill out of 50, 46, 43, 37, 32, 19 or 18, 7 and perhaps 3, of which no sum comes close enough.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        100 | 3 | 49 41 34 33 29 26 26 22 20 19
        100 | 4 | 70 60 50 33 33 33 11 7 3
        100 | 7 | 99 94 79 64 50 46 43 37 32 19 18 7 6 3
        524 | 7 | 442 252 252 252 252 252 252 252 127 127 127 127 127 106 106 106 106 85 84 46 37 37 12 12 12 10 10 10 10 10 10 9 9
        """)
    void publishedSetsArePackedAsPublished(int stock, int bins, String pieces) {
        List<Double> sizes =
                Arrays.stream(pieces.strip().split(" ")).map(Double::valueOf).toList();
        Cutting cutting = Cutting.of(sizes, stock, 0);
        assertThat(cutting.stocks()).hasSize(bins);
        assertThat(cutting.proved()).isTrue();
    }

    /**
     * The same fourth set without the piece of 46. First fit decreasing then takes 8, though there is less to pack: the known
     * anomaly of that rule (Graham). Seven stay enough.
     */
    @Test
    void whereFirstFitDecreasingErrsFewerAreFound() {
        int[] sizes = {
            442, 252, 252, 252, 252, 252, 252, 252, 127, 127, 127, 127, 127, 106, 106, 106, 106, 85, 84, 37, 37, 12, 12,
            12, 10, 10, 10, 10, 10, 10, 9, 9
        };
        assertThat(Packing.fit(sizes, 524, false)).hasSize(8);
        assertThat(Packing.of(sizes, 524).bins()).hasSize(7);
        assertThat(Packing.of(sizes, 524).proved()).isTrue();
    }

    /** Three pieces of 1 m out of 3 m: two cuts of 3 mm make the third 6 mm short; out of 3.006 m they just fit. */
    @Test
    void theSawTakesItsKerfBetweenPieces() {
        List<Double> three = List.of(1.0, 1.0, 1.0);
        assertThat(Cutting.of(three, 3.0, 0).stocks()).hasSize(1);
        assertThat(Cutting.of(three, 3.0, 0.003).stocks()).hasSize(2);
        assertThat(Cutting.of(three, 3.006, 0.003).stocks()).hasSize(1);
    }

    /** 5 m less 2 m, 1.5 m and two kerfs of 2 mm leave 1.496 m. */
    @Test
    void whatIsLeftOverIsSaid() {
        Cutting cutting = Cutting.of(List.of(1.5, 2.0), 5, 0.002);
        assertThat(cutting.stocks()).singleElement().satisfies(stock -> {
            assertThat(stock.pieces()).containsExactly(1, 0);
            assertThat(stock.leftM()).isEqualTo(1.496, within(1e-12));
        });
    }

    @Test
    void aPieceAsLongAsTheStockNeedsNoCut() {
        assertThat(Cutting.of(List.of(3.048, 3.048), 3.048, 0.003).stocks()).hasSize(2);
    }

    @Test
    void aPieceLongerThanTheStockIsRefused() {
        assertThatThrownBy(() -> Cutting.of(List.of(3.2), 3.0, 0.003)).hasMessageContaining("3.2 m");
    }

    @Property(tries = 300)
    void everyPieceIsCutOnceAndNoStockIsOverfull(
            @ForAll @Size(min = 1, max = 60) List<@IntRange(min = 20, max = 3000) Integer> millimetres) {
        List<Double> pieces = millimetres.stream().map(each -> each / 1000.0).toList();
        double kerfM = 0.002;
        Cutting cutting = Cutting.of(pieces, 3.0, kerfM);
        assertThat(cutting.stocks().stream().flatMap(stock -> stock.pieces().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, pieces.size()).boxed().toList());
        cutting.stocks().forEach(stock -> {
            double sum = stock.pieces().stream().mapToDouble(pieces::get).sum()
                    + kerfM * (stock.pieces().size() - 1);
            assertThat(sum).isLessThanOrEqualTo(3.0 + TENTH_M);
        });
        assertThat(cutting.least()).isLessThanOrEqualTo(cutting.stocks().size());
    }

    @Property(tries = 300)
    void neverMoreStocksThanFirstFitDecreasing(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 100) Integer> sizes) {
        int[] sorted = sorted(sizes);
        assertThat(Packing.of(sorted, 100).bins())
                .hasSizeLessThanOrEqualTo(Packing.fit(sorted, 100, false).size());
    }

    /** All ways to part up to eight pieces into groups are tried here, without any bound. */
    @Property(tries = 300)
    void smallCasesAreProvedAndEqualToTryingAll(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 5, max = 60) Integer> sizes) {
        Packing packing = Packing.of(sorted(sizes), 60);
        assertThat(packing.proved()).isTrue();
        assertThat(packing.bins()).hasSize(tryingAll(sizes, 0, new ArrayList<>(), 60));
        assertThat(packing.least()).isEqualTo(packing.bins().size());
    }

    private static int tryingAll(List<Integer> sizes, int next, List<Integer> left, int bin) {
        if (next == sizes.size()) {
            return left.size();
        }
        int best = Integer.MAX_VALUE;
        int size = sizes.get(next);
        for (int b = 0; b < left.size(); b++) {
            if (left.get(b) >= size) {
                left.set(b, left.get(b) - size);
                best = Math.min(best, tryingAll(sizes, next + 1, left, bin));
                left.set(b, left.get(b) + size);
            }
        }
        left.add(bin - size);
        best = Math.min(best, tryingAll(sizes, next + 1, left, bin));
        left.remove(left.size() - 1);
        return best;
    }

    private static int[] sorted(List<Integer> sizes) {
        List<Integer> largest = new ArrayList<>(sizes);
        largest.sort(Collections.reverseOrder());
        return largest.stream().mapToInt(i -> i).toArray();
    }
}
