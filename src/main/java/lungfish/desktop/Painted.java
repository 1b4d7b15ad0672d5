package lungfish.desktop;

import java.awt.AlphaComposite;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.function.IntSupplier;
import lungfish.drawing.Look;
import lungfish.drawing.Pictures;

/** A picture on a sheet: as wide as the sheet's text, as high as its painter wants; soft while what it shows is of an older room. */
final class Painted extends Drawn {
    /** How much is seen of what is of an older room. */
    static final float SOFT = 0.4f;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient DoubleSupplier heightPx;
    private final transient Pictures.Painting painting;
    private final transient BooleanSupplier isCurrent;

    /**
     * A picture.
     *
     * @param says what a screen reader says of it
     * @param isCurrent whether it shows the room as it is now
     */
    Painted(
            View view,
            String says,
            IntSupplier widthPx,
            DoubleSupplier heightPx,
            Pictures.Painting painting,
            BooleanSupplier isCurrent) {
        this.view = view;
        this.isCurrent = isCurrent;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.painting = painting;
        getAccessibleContext().setAccessibleName(says);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(widthPx.getAsInt(), (int) Math.ceil(heightPx.getAsDouble()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (!isCurrent.getAsBoolean()) {
            g.setComposite(AlphaComposite.SrcOver.derive(SOFT));
        }
        Look look = view.look();
        painting.paint(new Rectangle2D.Double(0, 0, getWidth(), getHeight()), look, g);
        g.dispose();
    }
}
