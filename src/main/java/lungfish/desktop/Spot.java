package lungfish.desktop;

/**
 * A place on a drawing that is pointed at.
 *
 * @param xM of the drawing
 * @param yM of the drawing
 * @param reachM how far beside it still counts
 * @param adds whether it adds to what is chosen (Shift)
 * @param isFree whether it keeps off grid and guides (Alt)
 * @param copies whether what is dragged stays and a copy goes along (the menu key)
 * @param clicks how many in a row
 */
record Spot(double xM, double yM, double reachM, boolean adds, boolean isFree, boolean copies, int clicks) {
    static final Spot NOWHERE = new Spot(0, 0, 0, false, false, false, 0);

    /** The same, drawn to a pipe from twice as far, and whether or not it keeps off guides. */
    Spot reachingPipe() {
        return new Spot(xM, yM, 2 * reachM, adds, false, copies, clicks);
    }

    /** The same hand elsewhere. */
    Spot at(double otherXM, double otherYM) {
        return new Spot(otherXM, otherYM, reachM, adds, isFree, copies, clicks);
    }

    boolean isNear(double otherXM, double otherYM) {
        return Math.hypot(xM - otherXM, yM - otherYM) <= reachM;
    }
}
