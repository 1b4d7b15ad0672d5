package lungfish.desktop;

import java.util.List;
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
 * How far questions in the background have come, and the button that stops them; or why they have no answer. Once they are
 * stopped, it says so, and the button goes on.
 */
final class UnderWay extends JPanel {
    private static final int FULL = 100;

    private final transient List<Later<?, ?>> questions;
    private final JProgressBar bar = new JProgressBar(0, FULL);
    private final JButton stop = new JButton("Stop");
    private final Line says;

    UnderWay(View view, List<Later<?, ?>> questions) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap " + view.px(8) + " 0", "[grow, fill][]"));
        this.questions = List.copyOf(questions);
        setOpaque(false);
        says = new Line(view, Type::body, Palette::softInk);
        bar.getAccessibleContext().setAccessibleName("How much is worked out");
        stop.setName("stop");
        stop.addActionListener(event -> questions.forEach(isRunning() ? Later::stop : Later::goOn));
        add(bar, "wmin 0");
        add(says, "wmin 0");
        add(stop);
    }

    private boolean isRunning() {
        return questions.stream().anyMatch(Later::isRunning);
    }

    /** Tells how they stand; there is nothing to see once all are answered. */
    void tell() {
        boolean isRunning = isRunning();
        boolean isStopped = !isRunning && !questions.stream().allMatch(Later::isCurrent);
        Optional<Trouble> trouble =
                questions.stream().flatMap(each -> each.trouble().stream()).findFirst();
        bar.setValue((int) (FULL * share()));
        bar.setVisible(isRunning);
        says.setText(trouble.map(Trouble::headline).orElse(stopped()));
        says.inked(trouble.isPresent() ? Palette::accent : Palette::softInk);
        says.setVisible(isStopped);
        stop.setText(isStopped ? "Work it out" : "Stop");
        stop.setToolTipText(isStopped ? "Work it out from the beginning" : "Stop; what was worked out last stays");
        setVisible(isRunning || isStopped);
    }

    private double share() {
        return questions.stream()
                .mapToDouble(each -> each.isRunning() ? each.share() : 1)
                .average()
                .orElse(1);
    }

    private String stopped() {
        return questions.stream().allMatch(each -> each.answer().isPresent())
                ? "Stopped: what is shown is older"
                : "Stopped before it was worked out";
    }
}
