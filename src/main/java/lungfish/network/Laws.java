package lungfish.network;

/** How closely friction is asked for. */
enum Laws {
    /** To judge and to show: Churchill's law as it is written. */
    WRITTEN,

    /** To solve: the same from {@link FrictionTable}, within 5e-13, in a tenth of the time. */
    TABLED
}
