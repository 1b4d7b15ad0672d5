package lungfish.desktop;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.drawing.Hit;
import lungfish.drawing.Viewport;
import lungfish.edit.Attempt;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.Room;
import org.jspecify.annotations.Nullable;

/**
 * A drawing in metres that can be zoomed, panned and pointed at, with a belt of tools. What is drawn, and what the arrows
 * walk along, is its heirs' business.
 */
abstract class Canvas extends Drawn {
    /** One step of the wheel or of a key. */
    static final double ZOOM_STEP = 1.2;

    private static final double REACH = 7;

    private final transient View view;
    private final transient ToolBelt belt;
    private transient Optional<Viewport> zoomed = Optional.empty();
    private transient Selection spoken = Selection.NONE;
    private final transient Aim aim = new Aim(this);
    private boolean isHandHeld;

    Canvas(View view, ToolBelt belt) {
        this.view = view;
        this.belt = belt;
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
                isHandHeld = false; // its release will be heard elsewhere
                repaint();
            }
        });
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                fit(); // what was looked at is no longer where it was: begin with all of it
            }
        });
        Keys.bind(this, "pressed SPACE", this::space);
        Keys.bind(this, "released SPACE", () -> isHandHeld = false);
        CanvasKeys.bindAll(this, belt);
        TypedLength.over(this);
        belt.onTake(this::taken);
        view.onMark(this::marked);
    }

    final View view() {
        return view;
    }

    final ToolBelt belt() {
        return belt;
    }

    /** What the pointer does. */
    final Tool tool() {
        return belt.inHand();
    }

    /** Whether a drag pans, whatever the tool. */
    final boolean isHandHeld() {
        return isHandHeld;
    }

    /** What the drawing is called. */
    abstract String title();

    /** All that there is to see, in metres. */
    abstract Rectangle2D boundsM();

    /** The part of the component in which the drawing lies when all of it is shown. */
    abstract Rectangle2D areaPx();

    abstract void paintDrawing(Viewport viewport, Graphics2D g);

    abstract Optional<Hit> at(double xM, double yM, double reachM);

    /** Where a part lies, if it is in this drawing. */
    abstract Optional<Rectangle2D> whereM(PartId part);

    /** What a double click on a part does. */
    abstract void enter(Hit hit);

    /** What Enter does with the choosing tool. */
    abstract void enterChosen();

    /** What Escape does when nothing is going on. */
    abstract void leave();

    /** Chooses what comes next: to the right or left, or down or up. */
    abstract void walk(int dx, int dy);

    /** What moves everything that is chosen by so many steps of the grid, or by so many fifths of it. */
    abstract Attempt nudged(Room room, Selection chosen, int dx, int dy, boolean finely);

    /** All that can be chosen on it at once. */
    abstract Selection everything();

    private void marked() {
        if (!view.selection().equals(spoken)) {
            spoken = view.selection();
            speak();
        }
        repaint();
    }

    /** What a program that reads the screen aloud calls it: the drawing, and what is chosen on it. */
    final void speak() {
        String chosen = view.selection()
                .lead()
                .flatMap(new SmallTelling(view)::of)
                .or(() -> view.chosen().map(new Telling(view)::of))
                .map(told -> ": " + told)
                .orElse("");
        int more = view.selection().parts().size() - 1;
        getAccessibleContext().setAccessibleName(title() + (more > 0 ? ": " + (more + 1) + " chosen" : chosen));
    }

    /** The aim goes on from where what is drawn has come to. */
    final void follow() {
        if (aim.isThere()) {
            tool().next().ifPresent(next -> aim.go(next.getX(), next.getY()));
        }
        repaint();
    }

    private void taken() {
        aim.letGo();
        repaint();
    }

    /** The hand that the keys move. */
    final Aim aim() {
        return aim;
    }

    /** Where the aim comes to next on its way along one axis, m. */
    double nextStop(double fromM, boolean across, int way) {
        return fromM;
    }

    /** A place on it in words. */
    abstract String words(Point2D placeM);

    /** From what is chosen into what it holds (1), or out of it (-1). */
    void delve(int way) {}

    /** Tells a program that reads the screen aloud. */
    final void say(String words) {
        getAccessibleContext().setAccessibleName(title() + ": " + words);
    }

    private void space() {
        if (aim.isThere()) {
            aim.set();
        } else {
            isHandHeld = true;
        }
    }

    /** What is chosen is meant; with a drawing tool the aim presses, or what is drawn is done. */
    final void finish() {
        if (tool().enters()) {
            enterChosen();
        } else if (aim.isThere()) {
            aim.set();
        } else {
            tool().finished();
        }
        repaint();
    }

    final void escape() {
        if (!belt.putDown()) {
            leave();
        }
        repaint();
    }

    final void nudge(int dx, int dy, boolean finely) {
        if (!tool().enters()) {
            aim.step(dx, dy, finely ? Aim.Step.FINE : Aim.Step.GRID);
            return;
        }
        view.attempt((room, chosen) -> nudged(room, chosen, dx, dy, finely));
    }

    /** A menu opens at the pointer, about what is there; by the key, on what is chosen. */
    @Override
    public final @Nullable Point getPopupLocation(@Nullable MouseEvent event) {
        if (event == null) {
            return view.chosen()
                    .flatMap(this::whereM)
                    .map(place -> viewport().px(place))
                    .map(px -> new Point((int) px.getCenterX(), (int) px.getCenterY()))
                    .orElse(null);
        }
        hit(event.getPoint())
                .flatMap(Handles::of)
                .filter(part -> !view.selection().has(part))
                .ifPresent(part -> view.select(Selection.of(part)));
        return event.getPoint();
    }

    /** How far beside a thing still counts, m. */
    final double reachM() {
        return viewport().lengthM(view.px(REACH));
    }

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
    final void lookAt(Rectangle2D placeM) {
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
        Point2D m = viewport().m(px);
        return at(m.getX(), m.getY(), reachM());
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
