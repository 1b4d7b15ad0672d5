package lungfish.desktop;

import java.awt.AlphaComposite;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import lungfish.drawing.ReadingsPicture;
import lungfish.logbook.Logbook;

/** What was read over time, as on paper, in the colours of the window. */
final class ReadingsDrawing extends Drawn {
    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BooleanSupplier isCurrent;
    private transient Optional<Logbook> shown = Optional.empty();

    /**
     * A picture of nothing yet.
     *
     * @param isCurrent whether what is shown is of the room as it is now; else it is painted soft
     */
    ReadingsDrawing(View view, IntSupplier widthPx, BooleanSupplier isCurrent) {
        this.view = view;
        this.widthPx = widthPx;
        this.isCurrent = isCurrent;
        setName("readings");
        setVisible(false);
    }

    /**
     * Shows this from now on.
     *
     * @param says what a program that reads the screen aloud says of it
     */
    void show(Logbook logbook, String says) {
        shown = Optional.of(logbook).filter(ReadingsPicture::isWorthIt);
        setVisible(shown.isPresent());
        getAccessibleContext().setAccessibleName("Readings over time. " + says);
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        double high =
                shown.map(read -> ReadingsPicture.height(read, view.look())).orElse(0.0);
        return new Dimension(widthPx.getAsInt(), (int) Math.ceil(high));
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
        Rectangle2D area = new Rectangle2D.Double(0, 0, Math.max(1, getWidth()), getHeight());
        shown.ifPresent(read -> ReadingsPicture.paint(read, area, view.look(), g));
        g.dispose();
    }
}
