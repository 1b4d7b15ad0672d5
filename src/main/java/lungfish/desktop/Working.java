package lungfish.desktop;

import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** While a long question is answered: how far it has come, and a way to stop it; stopped, a way to ask again. */
final class Working extends JPanel {
    private final Line says;
    private final JProgressBar bar = new JProgressBar(0, 100);
    private final JButton stop = new JButton("Stop");

    Working(View view, Runnable stopOrGoOn) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap " + view.px(8) + " 0", "[][grow, fill][]"));
        setOpaque(false);
        says = new Line(view, Type::body, Palette::softInk);
        stop.setName("stop");
        stop.addActionListener(event -> stopOrGoOn.run());
        bar.getAccessibleContext().setAccessibleName("How much of the work is done");
        add(says);
        add(bar, "h " + view.px(4) + "!, aligny center");
        add(stop);
    }

    /** Shows how a question stands; nothing where it is answered. */
    void show(Later<?, ?> later) {
        boolean isRunning = later.isRunning();
        setVisible(!later.isCurrent());
        says.setText(
                isRunning
                        ? "Working it out …"
                        : later.trouble().isPresent() ? "This could not be worked out." : "Stopped.");
        bar.setVisible(isRunning);
        bar.setValue((int) Math.round(100 * later.share()));
        stop.setText(isRunning ? "Stop" : "Go on");
        stop.getAccessibleContext().setAccessibleName(isRunning ? "Stop working it out" : "Work it out");
    }
}
