package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** A title in white on black, over the whole width. */
record Band(String text, Lettering lettering, double paddingPt) implements Block {
    @Override
    public Laid at(double x, double y, double widthPt) {
        double high = lettering.capitalsPt() + 2 * paddingPt;
        String shown = lettering.fitting(text, widthPt - 2 * paddingPt);
        return new Laid(
                high,
                List.of(
                        new Mark.Filled(new Rectangle2D.Double(x, y, widthPt, high)),
                        new Mark.Words(shown, lettering, x + paddingPt, y + high - paddingPt, true)));
    }
}
