package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.report.DrillCard;

/**
 * How long there is: the time in the largest figures of the card, what it is until, and the first tank's time as a bar:
 * white while all is well, hatched thin from the alarm, black from the cautious danger, thick hatch from the likely one.
 */
record ClockBox(DrillCard.Clock clock, Optional<DrillCard.TankRow> first, Lettering figure, Lettering small)
        implements Block {
    private static final double PADDING_PT = 9;
    private static final double FRAME_PT = 2.2;
    private static final int MOST_LINES = 4;

    @Override
    public Laid at(double x, double y, double widthPt) {
        Laid told = told().at(x + PADDING_PT, y + PADDING_PT, widthPt - 2 * PADDING_PT);
        double high = told.heightPt() + 2 * PADDING_PT;
        List<Mark> marks = new ArrayList<>(told.marks());
        marks.add(0, new Mark.Framed(new Rectangle2D.Double(x, y, widthPt, high), FRAME_PT));
        return new Laid(high, marks);
    }

    private Block told() {
        Block words = new Figure(clock, figure, small);
        return first.<Block>map(tank -> new Column(PADDING_PT, List.of(words, new TroubleBar(tank, small))))
                .orElse(words);
    }

    /** The large figure, and the words in the middle beside it. */
    private record Figure(DrillCard.Clock clock, Lettering large, Lettering small) implements Block {
        @Override
        public Laid at(double x, double y, double widthPt) {
            double figurePt = Math.min(widthPt / 2, large.width(clock.figure()));
            Block beside = new Text(clock.saying(), small, MOST_LINES);
            double sayingPt = widthPt - figurePt - 2 * PADDING_PT;
            double spare = (large.capitalsPt() - beside.at(x, y, sayingPt).heightPt()) / 2;
            Laid said = beside.at(x + widthPt - sayingPt, y + Math.max(0, spare), sayingPt);
            List<Mark> marks = new ArrayList<>();
            String shown = large.fitting(clock.figure(), figurePt + 1);
            marks.add(new Mark.Words(shown, large, x, y + Math.max(0, -spare) + large.capitalsPt(), false));
            marks.addAll(said.marks());
            return new Laid(Math.max(large.capitalsPt(), said.heightPt()), marks);
        }
    }
}
