package lungfish.print;

import java.util.List;

/** Nothing, so high. */
record Space(double heightPt) implements Block {
    @Override
    public Laid at(double x, double y, double widthPt) {
        return new Laid(heightPt, List.of());
    }
}
