package lungfish.desktop;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.drawing.Hit;
import lungfish.drawing.Viewport;
import lungfish.reason.PartId;

/** A drawing in metres that can be zoomed, panned and pointed at. What is drawn is its heirs' business. */
abstract class Canvas extends Drawn {
    /** One step of the wheel or of a key. */
    static final double ZOOM_STEP = 1.2;

    private static final double REACH = 7;

    private final transient View view;
    private transient Optional<Viewport> zoomed = Optional.empty();

    Canvas(View view) {
        this.view = view;
        setFocusable(true);
        CanvasMouse mouse = new CanvasMouse(this, view);
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addMouseWheelListener(mouse);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                fit(); // what was looked at is no longer where it was: begin with all of it
            }
        });
        view.onMark(this::repaint);
    }

    final View view() {
        return view;
    }

    /** All that there is to see, in metres. */
    abstract Rectangle2D boundsM();

    /** The part of the component in which the drawing lies when all of it is shown. */
    abstract Rectangle2D areaPx();

    abstract void paintDrawing(Viewport viewport, Graphics2D g);

    abstract Optional<Hit> at(double xM, double yM, double reachM);

    /** Where a part lies, if it is in this drawing. */
    abstract Optional<Rectangle2D> whereM(PartId part);

    /** What the pointer does; empty: click chooses and drag pans. */
    Optional<Tool> tool() {
        return Optional.empty();
    }

    /** Whether a drag pans, whatever the tool. */
    boolean isHandHeld() {
        return false;
    }

    /** How far beside a thing still counts, m. */
    final double reachM() {
        return viewport().lengthM(view.px(REACH));
    }

    /** What a double click, or Enter, on a part does. */
    abstract void enter(Hit hit);

    final Viewport viewport() {
        return zoomed.orElseGet(() -> Viewport.fit(boundsM(), areaPx()));
    }

    final void look(Viewport that) {
        zoomed = Optional.of(that);
        repaint();
    }

    /** Shows all of it. */
    final void fit() {
        zoomed = Optional.empty();
        repaint();
    }

    /** Larger or smaller, about a point or about the middle. */
    final void zoom(double factor, Optional<Point2D> aboutPx) {
        Point2D middle = new Point2D.Double(getWidth() / 2.0, getHeight() / 2.0);
        look(viewport().zoomed(factor, aboutPx.orElse(middle)));
    }

    final void pan(double dxPx, double dyPx) {
        look(viewport().panned(dxPx, dyPx));
    }

    /** Leads to a part: chooses it and brings it into sight. */
    final void leadTo(PartId part) {
        view.choose(part);
        whereM(part).ifPresent(this::lookAt);
    }

    /** Brings a place into the middle where it lies outside what is seen. */
    private void lookAt(Rectangle2D placeM) {
        Viewport now = viewport();
        Rectangle2D place = now.px(placeM);
        boolean isSeen =
                new Rectangle2D.Double(0, 0, getWidth(), getHeight()).contains(place.getCenterX(), place.getCenterY());
        if (!isSeen) {
            look(now.panned(getWidth() / 2.0 - place.getCenterX(), getHeight() / 2.0 - place.getCenterY()));
        }
        repaint();
    }

    final Optional<Hit> hit(Point2D px) {
        Viewport viewport = viewport();
        Point2D m = viewport.m(px);
        return at(m.getX(), m.getY(), viewport.lengthM(view.px(REACH)));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(view.px(120), view.px(80));
    }

    @Override
    protected final void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(view.look().palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        paintDrawing(viewport(), g);
        if (isFocusOwner()) {
            g.setColor(view.look().palette().air());
            g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, view.px(12), view.px(12));
        }
        g.dispose();
    }
}
