package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How large the parts of a drill card are, and how much of them is shown.
 *
 * @param smallPt size of what is read at arm's length: details, tanks, what is at hand
 * @param gapPt between the parts
 * @param tanks not more rows than these
 * @param lines not more beside a step, of an item or of a caution than these
 * @param blankPt height of a line to write on
 */
record CardSizes(double smallPt, double gapPt, int tanks, int lines, double blankPt) {
    private static final double ACTION_PT = 23;
    private static final double HEADLINE_PT = 34;
    private static final double CLOCK_PT = 42;
    private static final double WIDEST_GAP_PT = 16;
    private static final double GAP_STEP_PT = 0.5;

    /** From the one that shows most. */
    static final List<CardSizes> ROOMIEST_FIRST = roomiestFirst();

    private static List<CardSizes> roomiestFirst() {
        List<CardSizes> all = new ArrayList<>();
        step(all, new CardSizes(10.5, 11, 12, 4, 24), 8);
        step(all, new CardSizes(10, 9, 12, 4, 22), 6);
        step(all, new CardSizes(9.5, 8, 11, 4, 21), 5);
        step(all, new CardSizes(9, 7, 8, 4, 20), 3);
        step(all, new CardSizes(8.5, 6, 8, 4, 18), 3);
        step(all, new CardSizes(8, 5, 6, 3, 17), 2);
        step(all, new CardSizes(8, 5, 8, 1, 16), 0);
        return List.copyOf(all);
    }

    private static void step(List<CardSizes> all, CardSizes from, int fewestTanks) {
        IntStream.rangeClosed(0, from.tanks - fewestTanks)
                .mapToObj(
                        fewer -> new CardSizes(from.smallPt, from.gapPt, from.tanks - fewer, from.lines, from.blankPt))
                .forEach(all::add);
    }

    /** The same with more air between the parts, as far as it looks well. */
    Stream<CardSizes> airier() {
        return Stream.iterate(gapPt, gap -> gap <= WIDEST_GAP_PT, gap -> gap + GAP_STEP_PT)
                .map(gap -> new CardSizes(smallPt, gap, tanks, lines, blankPt));
    }

    Lettering headline() {
        return Lettering.bold(HEADLINE_PT);
    }

    Lettering clock() {
        return Lettering.bold(CLOCK_PT);
    }

    /** What to do, and the name of the room. */
    Lettering action() {
        return Lettering.bold(ACTION_PT);
    }

    /** When the steps below are for. */
    Lettering part() {
        return Lettering.bold(ACTION_PT - 7);
    }

    Lettering small() {
        return Lettering.regular(smallPt);
    }

    Lettering smallBold() {
        return Lettering.bold(smallPt);
    }

    Lettering fine() {
        return Lettering.regular(smallPt - 1.5);
    }
}
