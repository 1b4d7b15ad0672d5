package lungfish.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Blocks below each other.
 *
 * @param gapPt between them
 */
record Column(double gapPt, List<Block> blocks) implements Block {
    Column {
        blocks = List.copyOf(blocks);
    }

    @Override
    public Laid at(double x, double y, double widthPt) {
        List<Mark> marks = new ArrayList<>();
        double height = 0;
        for (Block block : blocks) {
            double gap = height > 0 ? gapPt : 0;
            Laid laid = block.at(x, y + height + gap, widthPt);
            marks.addAll(laid.marks());
            height += laid.heightPt() > 0 ? gap + laid.heightPt() : 0;
        }
        return new Laid(height, marks);
    }
}
