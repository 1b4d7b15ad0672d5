package lungfish.room;

import lungfish.reason.Assumable;

/**
 * What nobody knows exactly, and by how much it may be off: half the width of the band in which eight of ten lie, "give or
 * take 20 %". A depth is in metres, all others are shares.
 */
public enum Spread {
    /** An air release hangs higher or lower than is said. */
    DEPTH(Assumable.DEPTH_SPREAD),
    /** A device takes more or less pressure than its class. */
    RESISTANCE(Assumable.RESISTANCE_SPREAD),
    /** An outlet is given more or less air than its target. */
    FLOW(Assumable.FLOW_SPREAD),
    /** A device that is due for cleaning is fouled more or less than its class: of what fouling adds. */
    FOULING(Assumable.FOULING_SPREAD),
    /** A machine gives more or less air than its data sheet. */
    CURVE(Assumable.CURVE_SPREAD),
    /** A machine that is due for its rebuild has lost more or less than its class: of what it loses. */
    WEAR(Assumable.WEAR_SPREAD),
    /** Pipe and airline are wider or narrower than their size. */
    BORE(Assumable.BORE_SPREAD),
    /** Pipe and airline are rougher or smoother than their kind. */
    ROUGHNESS(Assumable.ROUGHNESS_SPREAD);

    private final Assumable usual;

    Spread(Assumable usual) {
        this.usual = usual;
    }

    /** Where the width is found that is taken when a room does not say one. */
    public Assumable usual() {
        return usual;
    }
}
