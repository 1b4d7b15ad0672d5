package lungfish.print;

import java.util.List;

/** One line of text that ends at the right edge. */
record Ending(String text, Lettering lettering) implements Block {
    @Override
    public Laid at(double x, double y, double widthPt) {
        String shown = lettering.fitting(text, widthPt);
        double high = lettering.capitalsPt();
        return new Laid(
                high, List.of(new Mark.Words(shown, lettering, x + widthPt - lettering.width(shown), y + high, false)));
    }
}
