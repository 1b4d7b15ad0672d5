package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.geom.Arc2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import lungfish.room.Shell;

/** Paints the floor with its grid, the walls and the doors. */
final class FloorPainter {
    private static final double WALL_PX = 3;
    private static final double GRID_PX = 56;

    private final Shell shell;
    private final Ink ink;

    private FloorPainter(Shell shell, Ink ink) {
        this.shell = shell;
        this.ink = ink;
    }

    static void paint(Shell shell, Ink ink) {
        FloorPainter painter = new FloorPainter(shell, ink);
        painter.grid();
        painter.walls();
        shell.doors().forEach(painter::door);
    }

    private void grid() {
        GridSteps steps = GridSteps.apart(ink.px(GRID_PX), ink.view(), ink.look());
        for (int i = 1; i <= steps.last(shell.lengthM()); i++) {
            line(steps.at(i), 0, steps.at(i), shell.widthM());
        }
        for (int i = 1; i <= steps.last(shell.widthM()); i++) {
            line(0, steps.at(i), shell.lengthM(), steps.at(i));
        }
    }

    private void line(double fromXM, double fromYM, double toXM, double toYM) {
        Viewport view = ink.view();
        ink.line(
                view.xPx(fromXM),
                view.yPx(fromYM),
                view.xPx(toXM),
                view.yPx(toYM),
                ink.palette().floor(),
                1);
    }

    private void walls() {
        Rectangle2D outer = ink.view().px(new Rectangle2D.Double(0, 0, shell.lengthM(), shell.widthM()));
        ink.draw(outer, ink.palette().ink(), WALL_PX);
        Viewport view = ink.view();
        for (Shell.Wall wall : shell.walls()) {
            Line2D line = new Line2D.Double(
                    view.xPx(wall.fromXM()), view.yPx(wall.fromYM()), view.xPx(wall.toXM()), view.yPx(wall.toYM()));
            ink.draw(
                    line,
                    ink.palette().ink(),
                    new BasicStroke((float) ink.px(2), BasicStroke.CAP_SQUARE, BasicStroke.JOIN_MITER));
        }
    }

    /** A gap in the wall, the open leaf, and the arc that it swings through, into the room. */
    private void door(Shell.Door door) {
        boolean inSideWall = isInSideWall(door, shell);
        boolean far = inSideWall ? door.xM() > shell.lengthM() / 2 : door.yM() > shell.widthM() / 2;
        double x = ink.view().xPx(door.xM());
        double y = ink.view().yPx(door.yM());
        double wide = ink.view().lengthPx(door.widthM());
        double inwards = far ? -wide : wide;
        double gapX = inSideWall ? 0 : wide;
        double gapY = inSideWall ? wide : 0;
        ink.line(x, y, x + gapX, y + gapY, ink.palette().sheet(), WALL_PX + 2);
        double hingeX = inSideWall ? x : x + wide;
        double hingeY = inSideWall ? y + wide : y;
        double endX = inSideWall ? hingeX + inwards : hingeX;
        double endY = inSideWall ? hingeY : hingeY + inwards;
        ink.line(hingeX, hingeY, endX, endY, ink.palette().waterEdge(), 1);
        ink.draw(
                arc(hingeX, hingeY, wide, startDegrees(inSideWall, far)),
                ink.palette().line(),
                1);
    }

    /** Where the wall is open. */
    static Rectangle2D gapM(Shell.Door door, Shell shell) {
        boolean side = isInSideWall(door, shell);
        return new Rectangle2D.Double(door.xM(), door.yM(), side ? 0 : door.widthM(), side ? door.widthM() : 0);
    }

    private static boolean isInSideWall(Shell.Door door, Shell shell) {
        double toSides = Math.min(Math.abs(door.xM()), Math.abs(door.xM() - shell.lengthM()));
        double toEnds = Math.min(Math.abs(door.yM()), Math.abs(door.yM() - shell.widthM()));
        return toSides < toEnds;
    }

    /** Where the quarter begins, counted against the clock from the right. */
    private static double startDegrees(boolean inSideWall, boolean far) {
        if (inSideWall) {
            return far ? 90 : 0;
        }
        return far ? 90 : 180;
    }

    private static Arc2D arc(double x, double y, double radius, double startDegrees) {
        return new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, startDegrees, 90, Arc2D.OPEN);
    }
}
