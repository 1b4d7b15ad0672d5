package lungfish.desktop;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.room.Rack;
import net.miginfocom.swing.MigLayout;

/** From the front of a rack back to the room, and on to the racks beside it. */
final class RackSteps extends JPanel {
    private static final String BACK = "Back to the room";

    private final transient Front front;
    private final JButton back = new JButton(BACK);
    private final JButton previous = new JButton("‹");
    private final JButton next = new JButton("›");

    /**
     * Steps from the rack whose front is open.
     *
     * @param leave back to the room
     */
    RackSteps(View view, Front front, Runnable leave, java.util.function.IntConsumer step) {
        super(new MigLayout("insets 0, gap 2 0"));
        this.front = front;
        setOpaque(false);
        back.setName("back-to-room");
        back.getAccessibleContext().setAccessibleName(BACK);
        back.setToolTipText("<html>" + BACK + " <b>Esc</b></html>");
        back.addActionListener(event -> leave.run());
        add(back, "gapright " + view.px(6));
        add(step(previous, "previous-rack", () -> step.accept(-1)));
        add(step(next, "next-rack", () -> step.accept(1)));
    }

    private static JButton step(JButton button, String name, Runnable does) {
        button.setName(name);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.putClientProperty("JComponent.minimumWidth", 28);
        button.addActionListener(event -> does.run());
        return button;
    }

    void tell() {
        tell(previous, "Previous rack", "Page Up", front.beside(-1));
        tell(next, "Next rack", "Page Down", front.beside(1));
    }

    private static void tell(JButton button, String name, String key, Optional<Rack> rack) {
        String says = name + rack.map(there -> ": " + there.name()).orElse("");
        button.setEnabled(rack.isPresent());
        button.setToolTipText("<html>" + says + " <b>" + key + "</b></html>");
        button.getAccessibleContext().setAccessibleName(says);
    }

    /** With the whole sentence where there is room for it. */
    void fitInto(int widthPx) {
        back.setText(BACK);
        if (getPreferredSize().width > widthPx) {
            back.setText("Back");
        }
    }
}
