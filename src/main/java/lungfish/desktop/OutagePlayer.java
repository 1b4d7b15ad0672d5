package lungfish.desktop;

import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import lungfish.drawing.OutagePlayed;
import lungfish.drawing.OxygenLaid;
import lungfish.drawing.OxygenState;
import lungfish.oxygen.Case;
import lungfish.report.Sentences;
import net.miginfocom.swing.MigLayout;

/** The time of an outage that is looked at, the button that plays it through, and which figure the drawing shows. */
final class OutagePlayer extends JPanel {
    private static final int FRAME_MS = 125;

    /** So many frames are the whole time. */
    private static final int FRAMES = 160;

    private final transient View view;
    private final transient Runnable moved;
    private final JButton play = new JButton("Play");
    private final JToggleButton worst = new JToggleButton("at worst");
    private final JToggleButton likely = new JToggleButton("likely");
    private final Line says;
    private final Timer timer = new Timer(FRAME_MS, event -> frame());
    private double atS;
    private double untilS;

    /**
     * A player at the moment of the failure.
     *
     * @param moved told when another time or another figure is looked at
     */
    OutagePlayer(View view, Runnable moved) {
        super(new MigLayout("insets 0, gap " + view.px(6) + " 0", "[]" + view.px(14) + "[][][]", "[center]"));
        this.view = view;
        this.moved = moved;
        setOpaque(false);
        play.setName("play");
        play.addActionListener(event -> playOrPause());
        says = Line.title(view, "The drawing shows");
        ButtonGroup group = new ButtonGroup();
        add(play);
        add(says);
        toggle(worst, "outage-worst", group);
        toggle(likely, "outage-likely", group);
        worst.setSelected(true);
        view.follow(this, this::dress);
    }

    private void toggle(JToggleButton button, String name, ButtonGroup group) {
        button.setName(name);
        button.getAccessibleContext().setAccessibleName("The drawing shows oxygen " + button.getText());
        button.putClientProperty("JButton.buttonType", "roundRect");
        button.addActionListener(event -> moved.run());
        group.add(button);
        add(button);
    }

    private void dress() {
        play.setFont(view.look().type().label());
        worst.setFont(view.look().type().label());
        likely.setFont(view.look().type().label());
    }

    double atS() {
        return Math.min(atS, untilS);
    }

    /** Which figure the drawing shows. */
    Case how() {
        return worst.isSelected() ? Case.CAUTIOUS : Case.LIKELY;
    }

    /** An outage that is looked at so far; the cursor stays where it stands. */
    void play(double until) {
        untilS = until;
    }

    void go(double seconds) {
        atS = seconds;
        moved.run();
    }

    /** Plays on, from the beginning where the end is reached; or stays where it is. */
    void playOrPause() {
        if (timer.isRunning()) {
            pause();
            return;
        }
        if (atS >= untilS) {
            atS = 0;
        }
        play.setText("Pause");
        timer.start();
    }

    void pause() {
        timer.stop();
        play.setText("Play");
    }

    boolean isPlaying() {
        return timer.isRunning();
    }

    /** One step of what is played. */
    void frame() {
        go(Math.min(untilS, atS + untilS / FRAMES));
        if (atS >= untilS) {
            pause();
        }
    }

    /** "At worst 3 tanks in alarm, 1 in danger." */
    String counts(OutagePlayed played) {
        int alarm = played.count(OxygenState.ALARM, how(), atS());
        int danger = played.count(OxygenState.DANGER, how(), atS());
        String which = Sentences.capital(OxygenLaid.words(how()));
        if (alarm + danger == 0) {
            return which + " no tank in trouble.";
        }
        return which + " " + Sentences.counted(alarm, "tank") + " in alarm, " + danger + " in danger.";
    }
}
