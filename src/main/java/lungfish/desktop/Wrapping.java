package lungfish.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.function.IntSupplier;

/** Things side by side, and on the next row where there is no more room. */
final class Wrapping implements LayoutManager {
    private final IntSupplier widthPx;
    private final int gapPx;

    /**
     * A layout.
     *
     * @param widthPx how much room a row has
     */
    Wrapping(IntSupplier widthPx, int gapPx) {
        this.widthPx = widthPx;
        this.gapPx = gapPx;
    }

    @Override
    public void addLayoutComponent(String name, Component part) {}

    @Override
    public void removeLayoutComponent(Component part) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(widthPx.getAsInt(), placed(parent, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, placed(parent, false));
    }

    @Override
    public void layoutContainer(Container parent) {
        placed(parent, true);
    }

    /** How high all rows are. */
    private int placed(Container parent, boolean isMoved) {
        int x = 0;
        int y = 0;
        int high = 0;
        for (Component part : parent.getComponents()) {
            if (!part.isVisible()) {
                continue;
            }
            Dimension size = part.getPreferredSize();
            if (x > 0 && x + size.width > widthPx.getAsInt()) {
                x = 0;
                y += high + gapPx;
                high = 0;
            }
            if (isMoved) {
                part.setBounds(x, y, Math.min(size.width, widthPx.getAsInt()), size.height);
            }
            x += size.width + gapPx;
            high = Math.max(high, size.height);
        }
        return y + high;
    }
}
