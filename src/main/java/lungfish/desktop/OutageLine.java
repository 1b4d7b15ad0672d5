package lungfish.desktop;

import java.awt.AlphaComposite;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import lungfish.drawing.OutagePicture;
import lungfish.drawing.OutagePlayed;
import lungfish.drawing.OutageShown;
import lungfish.drawing.Palette;
import lungfish.outage.TankDrill;

/** The time line of an outage, with a cursor that the mouse and the keys move. */
final class OutageLine extends Drawn {
    /** So many steps of a key are the whole time; Page Up and Page Down go six of them. */
    private static final int STEPS = 96;

    private static final int PAGE = 6;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BooleanSupplier isCurrent;
    private final transient DoubleConsumer moved;
    private transient Optional<OutageShown> shown = Optional.empty();

    /**
     * A line without an outage.
     *
     * @param isCurrent whether what is shown is of the room as it is now
     * @param moved hears to which time the cursor is moved, s
     * @param near hears which tank's line is under the pointer
     * @param next hears whether the tank before (-1) or after (1) is looked at
     * @param plays starts or stops
     */
    OutageLine(
            View view,
            IntSupplier widthPx,
            BooleanSupplier isCurrent,
            DoubleConsumer moved,
            Consumer<Optional<TankDrill>> near,
            IntConsumer next,
            Runnable plays) {
        this.view = view;
        this.widthPx = widthPx;
        this.isCurrent = isCurrent;
        this.moved = moved;
        setName("outage-line");
        setFocusable(true);
        Hand hand = new Hand(near);
        addMouseListener(hand);
        addMouseMotionListener(hand);
        Keys.bind(this, "LEFT", () -> step(-1));
        Keys.bind(this, "RIGHT", () -> step(1));
        Keys.bind(this, "PAGE_DOWN", () -> step(PAGE));
        Keys.bind(this, "PAGE_UP", () -> step(-PAGE));
        Keys.bind(this, "HOME", () -> go(0));
        Keys.bind(this, "END", () -> go(Double.POSITIVE_INFINITY));
        Keys.bind(this, "UP", () -> next.accept(-1));
        Keys.bind(this, "DOWN", () -> next.accept(1));
        Keys.bind(this, "SPACE", plays);
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
        getAccessibleContext()
                .setAccessibleDescription(
                        "Left and right move the time, Home and End go to its ends, Space plays it, up and down look at another tank");
    }

    void show(Optional<OutageShown> that) {
        shown = that;
        repaint();
    }

    /** What a program that reads the screen aloud says of the time under the cursor. */
    void say(String words) {
        getAccessibleContext().setAccessibleName("The outage over time. " + words);
    }

    private void step(int steps) {
        shown.ifPresent(
                each -> go(each.atS() + steps * each.played().drill().scene().untilS() / STEPS));
    }

    private void go(double atS) {
        shown.ifPresent(each ->
                moved.accept(Math.max(0, Math.min(each.played().drill().scene().untilS(), atS))));
    }

    private Rectangle2D area() {
        int edge = view.px(2);
        return new Rectangle2D.Double(edge, edge, Math.max(1, getWidth() - 2 * edge), getHeight());
    }

    @Override
    public Dimension getPreferredSize() {
        double high = shown.map(each -> OutagePicture.height(each.played(), view.look()))
                .orElse(0.0);
        return new Dimension(widthPx.getAsInt(), (int) Math.ceil(high) + 2 * view.px(2));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (!isCurrent.getAsBoolean()) {
            g.setComposite(AlphaComposite.SrcOver.derive(Painted.SOFT));
        }
        shown.ifPresent(each -> OutagePicture.paint(each, area(), view.look(), g));
        if (isFocusOwner()) {
            Palette palette = view.look().palette();
            g.setColor(palette.air());
            Rectangle box = new Rectangle(0, 0, getWidth() - 1, getHeight() - 1);
            g.drawRoundRect(box.x, box.y, box.width, box.height, view.px(8), view.px(8));
        }
        g.dispose();
    }

    private final class Hand extends MouseAdapter {
        private final Consumer<Optional<TankDrill>> near;

        Hand(Consumer<Optional<TankDrill>> near) {
            this.near = near;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            mouseDragged(event);
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            shown.ifPresent(each -> moved.accept(OutagePicture.atS(each.played(), area(), view.look(), event.getX())));
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            near.accept(shown.map(OutageShown::played).flatMap(played -> at(played, event)));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            near.accept(Optional.empty());
        }

        private Optional<TankDrill> at(OutagePlayed played, MouseEvent event) {
            return OutagePicture.tankAt(played, area(), view.look(), event.getX(), event.getY());
        }
    }
}
