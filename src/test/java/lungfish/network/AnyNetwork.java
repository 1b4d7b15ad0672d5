package lungfish.network;

/** Random networks for tests of other packages. */
public final class AnyNetwork {
    private AnyNetwork() {}

    /** Odd seeds are as a keeper builds, even ones as none does. */
    public static Network of(long seed) {
        return seed % 2 == 0 ? RandomNetworks.nasty(seed) : RandomNetworks.roomLike(seed);
    }
}
