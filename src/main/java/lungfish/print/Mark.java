package lungfish.print;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import lungfish.drawing.FigurePainter;
import lungfish.drawing.Palette;

/** One thing at its place on a page, in points from the upper left corner of the sheet; black on white, or hatched. */
sealed interface Mark {
    /** What it covers. */
    Rectangle2D box();

    void paint(Graphics2D g);

    /** Text on a base line. */
    record Words(String text, Lettering lettering, double x, double baseline, boolean isWhite) implements Mark {
        /** What ink covers, not the room that its line has. */
        @Override
        public Rectangle2D box() {
            Rectangle2D ink = lettering.ink(text);
            return new Rectangle2D.Double(x + ink.getX(), baseline + ink.getY(), ink.getWidth(), ink.getHeight());
        }

        @Override
        public void paint(Graphics2D g) {
            g.setColor(isWhite ? Palette.PRINT.sheet() : Palette.PRINT.ink());
            g.setFont(lettering.font(text));
            g.drawString(text, (float) x, (float) baseline);
        }
    }

    /** A line. */
    record Rule(double x1, double y1, double x2, double y2, double widthPt) implements Mark {
        @Override
        public Rectangle2D box() {
            Rectangle2D box = new Rectangle2D.Double(x1, y1, 0, 0);
            box.add(x2, y2);
            return box;
        }

        @Override
        public void paint(Graphics2D g) {
            g.setColor(Palette.PRINT.ink());
            g.setStroke(new BasicStroke((float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            g.draw(new Line2D.Double(x1, y1, x2, y2));
        }
    }

    /** A figure at its scale. */
    record Drawn(FigurePainter.Fitted figure, double x, double y) implements Mark {
        @Override
        public Rectangle2D box() {
            return new Rectangle2D.Double(x, y, figure.widthPt(), figure.heightPt());
        }

        @Override
        public void paint(Graphics2D g) {
            Graphics2D own = (Graphics2D) g.create();
            figure.paint(x, y, own);
            own.dispose();
        }
    }

    /** An area in black. */
    record Filled(Rectangle2D box) implements Mark {
        @Override
        public void paint(Graphics2D g) {
            g.setColor(Palette.PRINT.ink());
            g.fill(box);
        }
    }

    /** The edge of an area; the whole line lies inside. */
    record Framed(Rectangle2D box, double widthPt) implements Mark {
        @Override
        public void paint(Graphics2D g) {
            g.setColor(Palette.PRINT.ink());
            g.setStroke(new BasicStroke((float) widthPt, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            g.draw(new Rectangle2D.Double(
                    box.getX() + widthPt / 2,
                    box.getY() + widthPt / 2,
                    box.getWidth() - widthPt,
                    box.getHeight() - widthPt));
        }
    }

    /** An area under slanting lines. */
    record Hatched(Rectangle2D box, double everyPt) implements Mark {
        private static final double LINE_PT = 0.7;

        @Override
        public void paint(Graphics2D g) {
            g.setColor(Palette.PRINT.ink());
            g.setStroke(new BasicStroke((float) LINE_PT, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            for (double along = everyPt / 2; along < box.getWidth() + box.getHeight(); along += everyPt) {
                g.draw(slanting(along));
            }
        }

        /** From the upper or right edge down to the left or lower one. */
        private Line2D slanting(double along) {
            double right = Math.min(along, box.getWidth());
            double down = Math.min(along, box.getHeight());
            return new Line2D.Double(
                    box.getX() + right, box.getY() + along - right, box.getX() + along - down, box.getY() + down);
        }
    }
}
