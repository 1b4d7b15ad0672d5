package lungfish.oxygen;

/**
 * What brings oxygen to a tank for a while.
 *
 * @param bubblesM3PerS how much water the bubbles would bring to their own saturation in a second: oxygen transfer over
 *     the deficit, 0 without air
 * @param stirred whether the surface is moved, by bubbles or by a stirrer
 */
public record Breath(double bubblesM3PerS, boolean stirred) {
    /** No air, and nothing stirs. */
    public static final Breath NONE = new Breath(0, false);

    public Breath {
        if (!(bubblesM3PerS >= 0)) {
            throw new IllegalArgumentException("bubbles bring 0 or more, not " + bubblesM3PerS);
        }
    }
}
