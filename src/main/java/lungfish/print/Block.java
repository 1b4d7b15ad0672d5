package lungfish.print;

import java.util.List;

/** Something on a page that is as wide as it is told, and as high as it needs. */
interface Block {
    /** Its marks, with its upper left corner there. */
    Laid at(double x, double y, double widthPt);

    /** What was laid, and how high it is. */
    record Laid(double heightPt, List<Mark> marks) {
        public Laid {
            marks = List.copyOf(marks);
        }
    }
}
