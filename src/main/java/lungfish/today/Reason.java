package lungfish.today;

/**
 * A difference between the two ways, from their figures only.
 *
 * @param by how much, in the SI unit of its kind; what it counts otherwise
 * @param of the figure that it is measured against; 0 where there is none
 */
public record Reason(Kind kind, double by, double of) {
    /** What differs. Each speaks for the central blower or against it. */
    public enum Kind {
        /** Air that the pumps lack, m³/s; of so many outlets. */
        AIR_SHORT(true),
        /** Outlets without a pump. */
        UNFED(true),
        /** Air that the planned racks ask for, m³/s; of what the pumps have to spare. */
        GROWTH(true),
        /** dB(A) less; of what it is today. */
        QUIETER(true),
        /** Machines, and so plugs, fewer; of those today. */
        FEWER_PLUGS(true),
        /** Rebuilds and replacements a year fewer; of those today. */
        FEWER_EVENTS(true),
        /** Watts less; of those today. */
        LESS_POWER(true),
        /** Money a year less over the years; of the years. */
        CHEAPER(true),
        /** Money a year more over the years; of the years. */
        DEARER(false),
        /** dB(A) more; of what it is today. */
        LOUDER(false),
        /** Watts more; of those today. */
        MORE_POWER(false),
        /** Machines more; of those today. */
        MORE_PLUGS(false),
        /** Rebuilds and replacements a year more; of those today. */
        MORE_EVENTS(false),
        /** One failure takes so many outlets; today it takes so many. */
        ONE_FAILURE(false);

        private final boolean speaksFor;

        Kind(boolean speaksFor) {
            this.speaksFor = speaksFor;
        }

        /** Whether it is a reason to have the central blower. */
        public boolean speaksFor() {
            return speaksFor;
        }
    }
}
