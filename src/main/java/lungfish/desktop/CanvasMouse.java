package lungfish.desktop;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.SwingUtilities;
import lungfish.drawing.Hit;

/**
 * The mouse on a canvas: hover tells, the left button is the tool's, the middle one pans (as does the left with the space
 * bar), the wheel zooms.
 */
final class CanvasMouse extends MouseAdapter {
    private final Canvas canvas;
    private final View view;
    private Point pressed = new Point();
    private boolean isPanning;

    CanvasMouse(Canvas canvas, View view) {
        this.canvas = canvas;
        this.view = view;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        Optional<Hit> hit = canvas.hit(event.getPoint());
        canvas.setCursor(canvas.tool().cursor(hit));
        view.point(hit);
        canvas.aim().letGo();
        canvas.tool().moved(spot(event));
        canvas.repaint();
    }

    private Spot spot(MouseEvent event) {
        Point2D m = canvas.viewport().m(event.getPoint());
        return new Spot(
                m.getX(),
                m.getY(),
                canvas.reachM(),
                event.isShiftDown(),
                event.isAltDown(),
                (event.getModifiersEx() & Act.menuMask()) != 0,
                event.getClickCount());
    }

    @Override
    public void mouseExited(MouseEvent event) {
        view.point(Optional.empty());
        canvas.tool().left();
        canvas.repaint();
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        pressed = event.getPoint();
        isPanning = SwingUtilities.isMiddleMouseButton(event) || canvas.isHandHeld();
        if (!isPanning && SwingUtilities.isLeftMouseButton(event)) {
            pressed(canvas.tool(), canvas.hit(event.getPoint()), event);
            canvas.repaint();
        }
    }

    private void pressed(Tool tool, Optional<Hit> hit, MouseEvent event) {
        tool.pressed(spot(event), hit);
        if (tool.enters() && event.getClickCount() == 2) {
            hit.ifPresent(canvas::enter);
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (isPanning) {
            canvas.pan(event.getX() - (double) pressed.x, event.getY() - (double) pressed.y);
            pressed = event.getPoint();
        } else if (SwingUtilities.isLeftMouseButton(event)) {
            canvas.tool().dragged(spot(event));
            canvas.repaint();
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (!isPanning && SwingUtilities.isLeftMouseButton(event)) {
            canvas.tool().released(spot(event));
            canvas.repaint();
        }
        isPanning = false;
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        double factor = Math.pow(Canvas.ZOOM_STEP, -event.getPreciseWheelRotation());
        canvas.zoom(factor, Optional.of(event.getPoint()));
    }
}
