package lungfish.network;

/** Where air enters. */
public sealed interface Source {
    /** Unique among the sources. */
    String id();

    /** The node that it feeds. */
    String node();

    /** A pressure held whatever is drawn; it may also take air back. */
    record FixedPressure(String id, String node, double gaugePa) implements Source {
        /** Checks the number. */
        public FixedPressure {
            Part.finite("gaugePa", gaugePa);
        }
    }

    /**
     * One or more equal machines, each behind its own check valve: none ever takes air back.
     *
     * @param curve of one machine
     * @param count how many run side by side, 1 or more
     */
    record Blower(String id, String node, Curve curve, int count) implements Source {
        /** Checks the count. */
        public Blower {
            if (count < 1) {
                throw new IllegalArgumentException("count must be 1 or more, not " + count);
            }
        }

        /** The same with another curve (worn, at another altitude, mains low). */
        public Blower withCurve(Curve newCurve) {
            return new Blower(id, node, newCurve, count);
        }
    }
}
