package lungfish.desktop;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import lungfish.desk.Later;
import lungfish.desk.Trouble;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/**
 * How far a question in the background has come, and the button that stops it; or why it has no answer. Where it can be asked
 * again, the button does that once it is stopped.
 */
final class UnderWay extends JPanel {
    private static final int FULL = 100;

    private final JProgressBar bar = new JProgressBar(0, FULL);
    private final JButton stop = new JButton("Stop");
    private final Line trouble;
    private final boolean goesOn;

    UnderWay(View view, Runnable stopping) {
        this(view, stopping, false);
    }

    private UnderWay(View view, Runnable stopping, boolean goesOn) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap " + view.px(8) + " 0", "[grow, fill][]"));
        setOpaque(false);
        this.goesOn = goesOn;
        this.trouble = new Line(view, Type::body, Palette::accent);
        bar.getAccessibleContext().setAccessibleName("How much is worked out");
        stop.setName("stop");
        stop.addActionListener(event -> stopping.run());
        add(bar, "wmin 0");
        add(stop);
        add(trouble, "wmin 0");
    }

    /** One whose button stops, and asks again. */
    static UnderWay thatGoesOn(View view, Runnable stopOrGoOn) {
        return new UnderWay(view, stopOrGoOn, true);
    }

    /** How a question stands that may be stopped. */
    void tell(Later<?, ?> later) {
        boolean isStopped = goesOn && !later.isRunning() && !later.isCurrent();
        tell(later.isRunning(), later.share(), later.trouble());
        stop.setVisible(later.isRunning() || isStopped);
        setVisible(isVisible() || isStopped);
        says(isStopped);
    }

    private void says(boolean isStopped) {
        stop.setText(isStopped ? "Work it out" : "Stop");
        stop.setToolTipText(isStopped ? "It was stopped" : "Stop; what was worked out last stays");
    }

    void tell(boolean isRunning, double share, Optional<Trouble> why) {
        bar.setVisible(isRunning);
        stop.setVisible(isRunning);
        says(false);
        bar.setValue((int) (FULL * share));
        trouble.setText(why.map(Trouble::headline).orElse(""));
        trouble.setVisible(why.isPresent());
        setVisible(isRunning || why.isPresent());
    }
}
