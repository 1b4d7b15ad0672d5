package lungfish.catalogue;

/** The practical units of the data files. The end of a column's name says which one its numbers are in. */
enum Practical {
    KPA(1e3),
    L_MIN(1, 60e3, 0),
    KPA_PER_L_MIN(1e3 * 60e3),
    KPA_PER_L_MIN2(1e3 * 60e3 * 60e3),
    PA_PER_L_MIN2(60e3 * 60e3),
    MM(1, 1e3, 0),
    M(1),
    PER_M(1),
    W(1),
    DBA(1),
    DB(1),
    V(1),
    HZ(1),
    H(3600),
    D(24 * 3600),
    YEARS(365.25 * 24 * 3600),
    L(1, 1e3, 0),
    KG(1),
    MG_L(1, 1e3, 0),
    PERCENT(1, 1e2, 0),
    PER_KWH(1, 3.6e6, 0),
    MA_PER_AH(1),
    RATIO(1),
    C(1, 1, 273.15);

    private final double times;
    private final double per;
    private final double offset;

    Practical(double times) {
        this(times, 1, 0);
    }

    /** Divides rather than multiplying by a thousandth, so that 25.4 mm is 0.0254 m to the last bit. */
    Practical(double times, double per, double offset) {
        this.times = times;
        this.per = per;
        this.offset = offset;
    }

    double toSi(double practical) {
        return practical * times / per + offset;
    }
}
