package lungfish.desktop;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import lungfish.drawing.Hit;

/** The mouse on a canvas: hover tells, click chooses, double click enters, drag pans, the wheel zooms. */
final class CanvasMouse extends MouseAdapter {
    private final Canvas canvas;
    private final View view;
    private Point pressed = new Point();

    CanvasMouse(Canvas canvas, View view) {
        this.canvas = canvas;
        this.view = view;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        Optional<Hit> hit = canvas.hit(event.getPoint());
        canvas.setCursor(Cursor.getPredefinedCursor(hit.isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        view.hover(hit.map(Hit::part));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        view.hover(Optional.empty());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        pressed = event.getPoint();
        if (SwingUtilities.isLeftMouseButton(event)) {
            canvas.hit(event.getPoint()).ifPresentOrElse(hit -> chosen(hit, event), view::chooseNothing);
        }
    }

    private void chosen(Hit hit, MouseEvent event) {
        view.choose(hit.part());
        if (event.getClickCount() == 2) {
            canvas.enter(hit);
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        canvas.pan(event.getX() - (double) pressed.x, event.getY() - (double) pressed.y);
        pressed = event.getPoint();
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        double factor = Math.pow(Canvas.ZOOM_STEP, -event.getPreciseWheelRotation());
        canvas.zoom(factor, Optional.of(event.getPoint()));
    }
}
