package lungfish.build;

import lungfish.room.RunId;

/**
 * One piece of pipe, cut from stock.
 *
 * @param run that it is part of
 * @param number its place in the run, from 1 along it
 * @param size of pipe
 * @param start what its beginning is in
 * @param end what its end is in
 * @param beginsM where on the run the pipe itself begins: at the bottom of its first socket
 * @param cutM to cut to
 */
public record Piece(RunId run, int number, String size, End start, End end, double beginsM, double cutM) {
    /**
     * What an end of a piece is in.
     *
     * @param fitting class of fitting; empty: the adapter of the blower's hose
     * @param atM where on the run the centre of the fitting is
     * @param takeOffM from that centre to the end of the pipe
     * @param socketM how much of the pipe is in the socket
     */
    public record End(String fitting, double atM, double takeOffM, double socketM) {}

    /** What of its length can be seen between the sockets; negative: they overlap. */
    public double bareM() {
        return cutM - start.socketM() - end.socketM();
    }

    /** The least that it can be cut to. */
    double leastM() {
        return start.socketM() + end.socketM();
    }

    /** Whether the pipe lies at a place of its run; of a closed run's last piece also beyond the run's start. */
    boolean holds(double alongM) {
        return alongM >= start.atM() && alongM < end.atM();
    }
}
