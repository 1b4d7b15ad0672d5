package lungfish.network;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Churchill's f·Re at one relative roughness, in pieces ({@link FrictionPiece}) that are made when they are first asked
 * for: a tenth of the time of the law itself, and within 5e-13 of it.
 *
 * <p>A piece is found from the leading bits of the Reynolds number. Through the transition the law rises with the 36th
 * power of Re against the 12th, so that its poles lie 0.09 from the axis of ln Re: 64 pieces an octave there, 16 above.
 * Below Re 800 the product is 64 to the last digit; beyond the last piece the law itself is asked.
 *
 * <p>What a table says depends on the Reynolds number alone, never on what was asked before; so it may be shared
 * between threads, and two that make one piece at a time make the same.
 */
final class FrictionTable {
    /** Up to here f·Re is 64 to the last digit of a double. */
    static final double LAMINAR_TO_RE = 800.0;

    /** From here on there is no piece. */
    static final double END_RE = 1 << 20;

    private static final double COARSE_FROM_RE = 8192.0;
    private static final int FINE_SHIFT = 46;
    private static final int COARSE_SHIFT = 48;
    private static final int FIRST = (int) (Double.doubleToRawLongBits(LAMINAR_TO_RE) >>> FINE_SHIFT);
    private static final int FINE = (int) (Double.doubleToRawLongBits(COARSE_FROM_RE) >>> FINE_SHIFT) - FIRST;
    private static final int COARSE_FIRST = (int) (Double.doubleToRawLongBits(COARSE_FROM_RE) >>> COARSE_SHIFT) - FINE;
    private static final int PIECES = (int) (Double.doubleToRawLongBits(END_RE) >>> COARSE_SHIFT) - COARSE_FIRST;

    /** Tables kept for whoever asks next; a power of two. */
    private static final int KEPT = 128;

    private static final int MIXER = 0x9E3779B9;

    private static final AtomicReferenceArray<FrictionTable> SHARED = new AtomicReferenceArray<>(KEPT);

    private final double relativeRoughness;
    private final FrictionPiece[] pieces = new FrictionPiece[PIECES];

    private FrictionTable(double relativeRoughness) {
        this.relativeRoughness = relativeRoughness;
    }

    /** The table for a relative roughness: one that was made before, where it is still kept. */
    static FrictionTable of(double relativeRoughness) {
        int mixed = Double.hashCode(relativeRoughness) * MIXER;
        int place = (mixed >>> 16) & (KEPT - 1);
        FrictionTable kept = SHARED.get(place);
        if (kept == null || kept.relativeRoughness != relativeRoughness) {
            kept = new FrictionTable(relativeRoughness);
            SHARED.set(place, kept);
        }
        return kept;
    }

    /** The piece for a Reynolds number below {@link #END_RE}. */
    FrictionPiece piece(double re) {
        if (re < LAMINAR_TO_RE) {
            return FrictionPiece.LAMINAR;
        }
        int index = index(re);
        FrictionPiece piece = pieces[index];
        return piece == null ? made(index) : piece;
    }

    private static int index(double re) {
        long bits = Double.doubleToRawLongBits(re);
        return re < COARSE_FROM_RE ? (int) (bits >>> FINE_SHIFT) - FIRST : (int) (bits >>> COARSE_SHIFT) - COARSE_FIRST;
    }

    private FrictionPiece made(int index) {
        FrictionPiece piece = new FrictionPiece(begin(index), begin(index + 1), relativeRoughness);
        pieces[index] = piece;
        return piece;
    }

    private static double begin(int index) {
        long bits = index < FINE ? (long) (index + FIRST) << FINE_SHIFT : (long) (index + COARSE_FIRST) << COARSE_SHIFT;
        return Double.longBitsToDouble(bits);
    }
}
