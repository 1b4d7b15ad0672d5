package lungfish.desktop;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.reason.PartId;
import lungfish.room.RackId;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The middle of the window: the room from above or one rack from its front, and a line that tells of what is pointed at. */
final class Center extends Sheet {
    private final transient View view;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final JButton back = new JButton("Back to the room");
    private final Line telling;
    private final RoomCanvas room;
    private @Nullable RackCanvas rack;

    Center(View view, WindowFiles files) {
        super(
                view,
                new MigLayout(
                        "insets 8 12 10 12, fill, wrap 1, hidemode 3, gap 0 2", "[grow, fill]", "[][][grow, fill]"));
        this.view = view;
        this.telling = Line.reason(view);
        this.room = new RoomCanvas(view, this::openRack);
        telling.setName("telling");
        back.setName("back-to-room");
        back.setVisible(false);
        back.addActionListener(event -> closeRack());
        middle.setOpaque(false);
        middle.add(room);
        add(head(), "cell 0 0");
        add(new Invitation(view, files), "cell 0 1, growx");
        add(middle, "cell 0 2, grow, hmin 0");
        view.onMark(this::tell);
        view.onChange(this::changed);
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, gap 8 0", "[][grow, fill][][][]"));
        head.setOpaque(false);
        head.add(back, "cell 0 0");
        head.add(telling, "cell 1 0, wmin 0");
        head.add(button("−", "Smaller", () -> canvas().zoom(1 / Canvas.ZOOM_STEP, Optional.empty())), "cell 2 0");
        head.add(button("Fit", "Show all of it", () -> canvas().fit()), "cell 3 0");
        head.add(button("+", "Larger", () -> canvas().zoom(Canvas.ZOOM_STEP, Optional.empty())), "cell 4 0");
        return head;
    }

    private static JButton button(String text, String help, Runnable does) {
        JButton button = new JButton(text);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.putClientProperty("JComponent.minimumWidth", 28);
        button.setToolTipText(help);
        button.getAccessibleContext().setAccessibleName(help);
        button.addActionListener(event -> does.run());
        return button;
    }

    /** The canvas that is shown. */
    Canvas canvas() {
        return rack != null ? rack : room;
    }

    RoomCanvas room() {
        return room;
    }

    boolean isRackOpen() {
        return rack != null;
    }

    void openRack(RackId id) {
        rack = new RackCanvas(view, room::scene, id, this::closeRack);
        show(rack);
    }

    void closeRack() {
        rack = null;
        show(room);
    }

    private void show(Canvas canvas) {
        middle.removeAll();
        middle.add(canvas);
        back.setVisible(rack != null);
        middle.revalidate();
        middle.repaint();
        canvas.requestFocusInWindow();
        tell();
    }

    /** Opens the front of the rack in which the chosen part stands. */
    void openChosenRack() {
        room.enterChosen();
    }

    /** Leads to a part: in the rack that is open, where it stands in that, else in the room. */
    void leadTo(PartId part) {
        if (rack != null && rack.whereM(part).isEmpty()) {
            closeRack();
        }
        canvas().leadTo(part);
    }

    private void changed() {
        boolean isGone = rack != null && view.desk().room().racks().stream().noneMatch(each -> rack.shows(each.id()));
        if (isGone) {
            closeRack();
        }
        tell();
    }

    private void tell() {
        String idle = view.desk().room().seats().isEmpty()
                ? ""
                : "Click chooses · double click opens a rack · wheel zooms · drag pans";
        telling.setText(view.marked()
                .hovered()
                .or(view::chosen)
                .map(new Telling(view)::of)
                .orElse(idle));
        telling.inked(view.marked().chosen().isEmpty() ? Palette::softInk : Palette::ink);
        telling.setToolTipText(telling.getText());
    }
}
