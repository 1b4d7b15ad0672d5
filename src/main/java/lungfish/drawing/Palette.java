package lungfish.drawing;

import java.awt.Color;

/**
 * The colours by role, for light, dark and print. Roles, never hues, are asked for; state is never told by colour alone.
 *
 * @param paper the desk that sheets lie on
 * @param sheet what is drawn on
 * @param ink walls, headlines, figures
 * @param softInk reasons, labels, rulers
 * @param line hairlines and edges of sheets
 * @param floor the grid on a sheet, fainter than a hairline
 * @param waterFill inside a tank
 * @param waterEdge its glass
 * @param air the pipe's bubbles, teeth and served outlets
 * @param accent the one thing to look at
 * @param accentSoft ground of a chosen row or of a mark
 * @param good a span that holds
 * @param planned what is thought of
 * @param free what could still be: an open place
 * @param hatched whether areas are told by hatches, because ink is all there is
 */
public record Palette(
        Color paper,
        Color sheet,
        Color ink,
        Color softInk,
        Color line,
        Color floor,
        Color waterFill,
        Color waterEdge,
        Color air,
        Color accent,
        Color accentSoft,
        Color good,
        Color planned,
        Color free,
        boolean hatched) {
    public static final Palette LIGHT = new Palette(
            rgb(0xF6F4EE),
            rgb(0xFFFFFF),
            rgb(0x1E2B33),
            rgb(0x5C6B73),
            rgb(0xD9D5CA),
            rgb(0xF0EDE5),
            rgb(0xCFE3EA),
            rgb(0x7FAEC0),
            rgb(0x2F6F8F),
            rgb(0xC2410C),
            rgb(0xFBEFE9),
            rgb(0x1F7A6D),
            rgb(0x6F63A6), // the sketch's #8A7FB8 is 3.6 : 1 on white, too faint for its labels
            rgb(0x8C9499),
            false);

    public static final Palette DARK = new Palette(
            rgb(0x14191C),
            rgb(0x1C2327),
            rgb(0xE9E6DD),
            rgb(0xA3AFB5),
            rgb(0x3A4449),
            rgb(0x252D32),
            rgb(0x21414F),
            rgb(0x4F8196),
            rgb(0x86C3DE),
            rgb(0xFF9A62),
            rgb(0x3B2A22),
            rgb(0x5FC0B0),
            rgb(0xB5AAE2),
            rgb(0x7C878D),
            false);

    public static final Palette PRINT = new Palette(
            rgb(0xFFFFFF),
            rgb(0xFFFFFF),
            rgb(0x000000),
            rgb(0x333333),
            rgb(0x999999),
            rgb(0xE6E6E6),
            rgb(0xFFFFFF),
            rgb(0x555555),
            rgb(0x000000),
            rgb(0x000000),
            rgb(0xFFFFFF),
            rgb(0x000000),
            rgb(0x333333),
            rgb(0x777777),
            true);

    private static Color rgb(int hex) {
        return new Color(hex);
    }

    /**
     * How far two colours stand apart: 1 (the same) to 21 (black and white). Web Content Accessibility Guidelines 2.1,
     * "contrast ratio" and "relative luminance".
     */
    public static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
