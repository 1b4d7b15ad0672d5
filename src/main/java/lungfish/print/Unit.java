package lungfish.print;

/** What is laid on a page or, where it does not fit any more, on the next. */
sealed interface Unit permits Unit.Whole, Unit.Rows, Unit.PageEnd {
    /** Between it and what stands above it. */
    double gapPt();

    /**
     * A block that is never broken.
     *
     * @param staysWithNext whether what follows begins on the same page: a heading
     */
    record Whole(Block block, double gapPt, boolean staysWithNext) implements Unit {}

    /** A table that breaks between rows; its heading stands again on each page. */
    record Rows(Grid grid, double gapPt) implements Unit {}

    /** What follows begins a page. */
    record PageEnd() implements Unit {
        @Override
        public double gapPt() {
            return 0;
        }
    }
}
