package lungfish.measured;

/** What is made to happen in a trial. */
enum Fault {
    NOTHING(0),
    WEAR(1),
    LEAK(2),
    CLOG(3);

    /** So that no two faults draw the same rooms. */
    final int draw;

    Fault(int draw) {
        this.draw = draw;
    }
}
