package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.document.Part;

/** A step of a checklist: a box to tick, what to do, how, what should be read, and a line to write what was read. */
record CheckRow(int number, int last, Part.Step step, Lettering bold, Lettering body, Lettering fine) implements Block {
    private static final int ANY = 200;
    private static final double GAP_PT = 6;
    private static final double WRITE_PT = 70;
    private static final double LINE_PT = 0.5;
    private static final double BOX_LINE_PT = 1;
    private static final String READ = "read:";

    @Override
    public Laid at(double x, double y, double widthPt) {
        double box = bold.capitalsPt() * 1.25;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Framed(new Rectangle2D.Double(x, y, box, box), BOX_LINE_PT));
        if (step.done().isPresent()) {
            marks.add(new Mark.Rule(x + 1.5, y + box * 0.5, x + box * 0.4, y + box - 1.5, BOX_LINE_PT));
            marks.add(new Mark.Rule(x + box * 0.4, y + box - 1.5, x + box - 1, y + 1.5, BOX_LINE_PT));
        }
        String figure = number + ".";
        double numberEnd = x + box + GAP_PT + bold.width(last + ".");
        marks.add(new Mark.Words(figure, bold, numberEnd - bold.width(figure), y + bold.capitalsPt(), false));
        double begin = numberEnd + GAP_PT;
        double writePt = step.expected().isEmpty() ? 0 : WRITE_PT + GAP_PT;
        Laid words = words().at(begin, y, x + widthPt - begin - writePt);
        marks.addAll(words.marks());
        if (writePt > 0) {
            write(x + widthPt - WRITE_PT, y + body.capitalsPt() + 2, marks);
        }
        return new Laid(Math.max(box, words.heightPt()), marks);
    }

    private Block words() {
        List<Block> lines = new ArrayList<>();
        lines.add(new Text(step.action(), bold, ANY));
        lines.add(new Text(step.detail(), body, ANY));
        if (!step.expected().isEmpty()) {
            lines.add(new Item("→", step.expected(), bold, bold, ANY));
        }
        step.done().ifPresent(day -> lines.add(new Text("done " + day, fine, 1)));
        return new Column(GAP_PT * 0.7, lines);
    }

    private void write(double x, double baseline, List<Mark> marks) {
        marks.add(new Mark.Words(READ, fine, x, baseline, false));
        double from = x + fine.width(READ) + 2;
        marks.add(new Mark.Rule(from, baseline, x + WRITE_PT, baseline, LINE_PT));
    }
}
