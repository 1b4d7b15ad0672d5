package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import lungfish.edit.WishEdits;
import lungfish.report.BenchWords;
import lungfish.room.Wishes.Wish;

/** The keeper's wishes for a blower in their order: each can be dragged, or moved with the arrow keys. */
final class WishChips extends JPanel {
    private static final int GAP = 4;
    private static final int DRAGGED = 4;

    private final transient View view;
    private final List<JButton> chips = new ArrayList<>();
    private transient List<Wish> shown = List.of();
    private int caret = -1;

    WishChips(View view, IntSupplier widthPx) {
        super(new Wrapping(widthPx, view.px(GAP)));
        this.view = view;
        setOpaque(false);
        setName("wishes");
        getAccessibleContext().setAccessibleName("What matters most, in order");
        for (int i = 0; i < Wish.values().length; i++) {
            JButton chip = chip(i);
            chips.add(chip);
            add(chip);
        }
        view.follow(this, this::tell);
    }

    /** The chip at a place shows whatever wish stands there: so the focus stays in the row when they move. */
    private JButton chip(int place) {
        JButton chip = new JButton();
        chip.setName("wish-" + (place + 1));
        chip.putClientProperty("JButton.buttonType", "roundRect");
        chip.setMargin(new java.awt.Insets(1, view.px(4), 1, view.px(4)));
        Keys.bind(chip, "LEFT", () -> put(place, place - 1));
        Keys.bind(chip, "RIGHT", () -> put(place, place + 1));
        Keys.bind(chip, "HOME", () -> put(place, 0));
        Keys.bind(chip, "END", () -> put(place, chips.size() - 1));
        Dragged dragged = new Dragged(place);
        chip.addMouseListener(dragged);
        chip.addMouseMotionListener(dragged);
        return chip;
    }

    private void tell() {
        shown = WishEdits.order(view.desk().room());
        for (int i = 0; i < chips.size(); i++) {
            tell(chips.get(i), i);
        }
        revalidate();
    }

    private void tell(JButton chip, int place) {
        String name = BenchWords.name(shown.get(place));
        chip.setText((place + 1) + "  " + name);
        chip.setFont(view.look().type().label());
        chip.setToolTipText(tip(shown.get(place)));
        chip.getAccessibleContext().setAccessibleName(name + ", wish " + (place + 1) + " of " + chips.size());
        chip.getAccessibleContext().setAccessibleDescription("Left and right move it, Home puts it first");
    }

    private static String tip(Wish wish) {
        String means =
                switch (wish) {
                    case RESERVE ->
                        "Keeps the wished reserve, is no louder than you will bear, and lasts on the battery.";
                    case SMALLEST -> "By its rated flow; a tenth more or less is the same.";
                    case CHEAPEST -> "By its price; a tenth more or less is the same.";
                    case QUIETEST -> "By the level where you sit; less than 3 dB is the same.";
                    case CHEAPEST_TO_RUN -> "By energy and rebuilds of a year; a tenth more or less is the same.";
                    case LONGEST_LIVED -> "By the years until it is replaced; a tenth more or less is the same.";
                };
        return "<html>" + means + "<br>Drag it, or press ← → while it has the focus.";
    }

    private void put(int from, int to) {
        if (to >= 0 && to < chips.size() && to != from) {
            view.desk().apply(WishEdits.move(view.desk().room(), shown.get(from), to));
            chips.get(to).requestFocusInWindow();
        }
    }

    /** A line where the dragged one would come to stand. */
    @Override
    protected void paintChildren(Graphics graphics) {
        super.paintChildren(graphics);
        if (caret >= 0) {
            Graphics2D g = (Graphics2D) graphics.create();
            Color accent = view.look().palette().accent();
            Component at = chips.get(Math.min(caret, chips.size() - 1));
            int x = caret < chips.size() ? at.getX() - view.px(3) : at.getX() + at.getWidth();
            g.setColor(accent);
            g.fillRect(Math.max(0, x), at.getY(), view.px(3), at.getHeight());
            g.dispose();
        }
    }

    private void caretAt(int place) {
        caret = place;
        repaint();
    }

    /** Before which chip a point lies; as many as there are: after the last. */
    private int placeAt(Point point) {
        int nearest = chips.size();
        for (int i = chips.size() - 1; i >= 0; i--) {
            Component chip = chips.get(i);
            boolean isOnRow = point.y < chip.getY() + chip.getHeight() + view.px(GAP);
            boolean isOnEarlierRow = point.y < chip.getY() - view.px(GAP);
            if (isOnEarlierRow || (isOnRow && point.x < chip.getX() + chip.getWidth() / 2)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private final class Dragged extends MouseAdapter {
        private final int place;
        private Point from = new Point();
        private boolean isDragging;

        Dragged(int place) {
            this.place = place;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            from = event.getPoint();
            isDragging = false;
            event.getComponent().requestFocusInWindow();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            isDragging |= from.distance(event.getPoint()) > view.px(DRAGGED);
            if (isDragging) {
                caretAt(placeAt(inRow(event)));
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            caretAt(-1);
            if (isDragging) {
                int before = placeAt(inRow(event));
                put(place, before > place ? before - 1 : before);
            }
        }

        private Point inRow(MouseEvent event) {
            return SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), WishChips.this);
        }
    }
}
