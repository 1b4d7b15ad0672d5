package lungfish.plan;

/** Hears how far a long question has come, and may stop it. */
@FunctionalInterface
public interface Progress {
    /** Nobody listens, nobody stops. */
    Progress UNHEARD = (done, of) -> {};

    /**
     * So many steps are done. Told between any two steps, from the thread that takes them.
     *
     * @throws java.util.concurrent.CancellationException when the answer is no longer wanted: whoever answers lets it pass
     */
    void at(int done, int of);
}
