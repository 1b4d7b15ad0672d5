package lungfish.desktop;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Things under each other in a scrolling column, as wide as the column. What has the focus is scrolled into sight. */
class Stack extends JPanel implements Scrollable {
    private static final String FOCUS = "permanentFocusOwner";
    private static final int STEP_PX = 24;

    /** Its name stands over a field. */
    private static final int NAME_PX = 28;

    private final transient PropertyChangeListener following = event -> follow(event.getNewValue());

    Stack() {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0 10", "[grow, fill]"));
        setOpaque(false);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener(FOCUS, following);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener(FOCUS, following);
        super.removeNotify();
    }

    private void follow(@Nullable Object focused) {
        if (focused instanceof Component owner
                && SwingUtilities.isDescendingFrom(owner, this)
                && owner.getHeight() < getVisibleRect().height) {
            Rectangle there = SwingUtilities.convertRectangle(owner.getParent(), owner.getBounds(), this);
            scrollRectToVisible(
                    new Rectangle(there.x, there.y - NAME_PX, there.width, there.height + NAME_PX + STEP_PX));
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return STEP_PX;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
