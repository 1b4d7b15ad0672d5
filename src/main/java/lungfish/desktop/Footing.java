package lungfish.desktop;

import java.awt.CardLayout;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** The row at the foot of a sheet: what its answer rests on; while that is worked out, how far it has come; once stopped, a way to go on. */
final class Footing extends JPanel {
    private static final String BUSY = "busy";
    private static final String IDLE = "idle";
    private static final int HEIGHT = 32;

    private final CardLayout cards = new CardLayout();
    private final UnderWay underWay;
    private final JButton again = new JButton("Look again");
    private final Line rests;

    /**
     * A row.
     *
     * @param stopping stops what is under way
     * @param asking asks what was asked last once more
     */
    Footing(View view, Runnable stopping, Runnable asking) {
        setLayout(cards);
        setOpaque(false);
        underWay = new UnderWay(view, stopping);
        rests = new Line(view, Type::body, Palette::softInk);
        again.setName("again");
        again.addActionListener(event -> asking.run());
        JPanel idle = new JPanel(new MigLayout(
                "insets 0, fillx, hidemode 3, gap " + view.px(8) + " 0",
                "[grow, fill][]",
                "[" + view.px(HEIGHT) + "!, center]"));
        idle.setOpaque(false);
        idle.add(rests, "wmin 0");
        idle.add(again);
        add(held(underWay), BUSY);
        add(idle, IDLE);
    }

    /** What comes and goes by itself needs a place of its own among cards. */
    private static JPanel held(UnderWay comesAndGoes) {
        JPanel place = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow, fill]", "[center]"));
        place.setOpaque(false);
        place.add(comesAndGoes, "wmin 0");
        return place;
    }

    /** Tells how far a question has come; where it is answered, what the answer rests on. */
    void tell(Later<?, ?> later, String answered) {
        boolean isStopped = !later.isRunning() && !later.isCurrent();
        boolean isBusy = later.isRunning() || later.trouble().isPresent();
        underWay.tell(later.isRunning(), later.share(), later.trouble());
        rests.setText(isStopped ? "Stopped: what is shown is older." : answered);
        again.setVisible(isStopped);
        cards.show(this, isBusy ? BUSY : IDLE);
    }
}
