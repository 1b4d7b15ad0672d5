package lungfish.print;

import java.util.stream.Stream;

/**
 * Two blocks side by side, their tops level.
 *
 * @param leftShare of the width without the gap, 0 to 1
 */
record Beside(Block left, Block right, double leftShare, double gapPt) implements Block {
    @Override
    public Laid at(double x, double y, double widthPt) {
        double leftPt = (widthPt - gapPt) * leftShare;
        Laid one = left.at(x, y, leftPt);
        Laid other = right.at(x + leftPt + gapPt, y, widthPt - gapPt - leftPt);
        return new Laid(
                Math.max(one.heightPt(), other.heightPt()),
                Stream.concat(one.marks().stream(), other.marks().stream()).toList());
    }
}
