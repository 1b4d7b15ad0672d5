package lungfish.desktop;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import lungfish.desk.Trouble;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** How far a question in the background has come, and the button that stops it; or why it has no answer. */
final class UnderWay extends JPanel {
    private static final int FULL = 100;

    private final JProgressBar bar = new JProgressBar(0, FULL);
    private final JButton stop = new JButton("Stop");
    private final Line trouble;

    UnderWay(View view, Runnable stopping) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap " + view.px(8) + " 0", "[grow, fill][]"));
        setOpaque(false);
        this.trouble = new Line(view, Type::body, Palette::accent);
        bar.getAccessibleContext().setAccessibleName("How much is worked out");
        stop.setName("stop");
        stop.setToolTipText("Stop; what was worked out last stays");
        stop.addActionListener(event -> stopping.run());
        add(bar, "wmin 0");
        add(stop);
        add(trouble, "wmin 0");
    }

    void tell(boolean isRunning, double share, Optional<Trouble> why) {
        bar.setVisible(isRunning);
        stop.setVisible(isRunning);
        bar.setValue((int) (FULL * share));
        trouble.setText(why.map(Trouble::headline).orElse(""));
        trouble.setVisible(why.isPresent());
        setVisible(isRunning || why.isPresent());
    }
}
