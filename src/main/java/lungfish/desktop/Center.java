package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
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
    private final QuickSheet questions;
    private final JPanel zooming = new JPanel(new MigLayout("insets 0, gap 8 0"));
    private @Nullable Component shown;
    private @Nullable RackCanvas rack;

    Center(View view, WindowFiles files) {
        super(
                view,
                new MigLayout(
                        "insets 8 12 10 12, fill, wrap 1, hidemode 3, gap 0 2", "[grow, fill]", "[][grow, fill]"));
        this.view = view;
        this.telling = Line.reason(view);
        this.room = new RoomCanvas(view, this::openRack);
        this.questions = new QuickSheet(view, files);
        telling.setName("telling");
        back.setName("back-to-room");
        back.setVisible(false);
        back.addActionListener(event -> closeRack());
        middle.setOpaque(false);
        add(head(), "cell 0 0");
        add(middle, "cell 0 1, grow, hmin 0");
        view.onMark(this::tell);
        view.onChange(this::changed);
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, gap 8 0", "[][grow, fill][]"));
        head.setOpaque(false);
        head.add(back, "cell 0 0");
        head.add(telling, "cell 1 0, wmin 0");
        zooming.setOpaque(false);
        zooming.add(button("−", "Smaller", () -> canvas().zoom(1 / Canvas.ZOOM_STEP, Optional.empty())));
        zooming.add(button("Fit", "Show all of it", () -> canvas().fit()));
        zooming.add(button("+", "Larger", () -> canvas().zoom(Canvas.ZOOM_STEP, Optional.empty())));
        head.add(zooming, "cell 2 0");
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
        showWhatIsDue();
    }

    void closeRack() {
        rack = null;
        showWhatIsDue();
    }

    /** Shows what is to be shown, and takes the focus to it where it was not shown before. */
    private void showWhatIsDue() {
        boolean isAsking = rack == null && QuickSheet.isFor(view.desk().room());
        Component wanted = isAsking ? questions : canvas();
        if (wanted != shown) {
            shown = wanted;
            middle.removeAll();
            middle.add(isAsking ? scrolling(questions) : wanted);
            back.setVisible(rack != null);
            zooming.setVisible(!isAsking);
            middle.revalidate();
            middle.repaint();
            takeFocus();
        }
        tell();
    }

    private static JScrollPane scrolling(QuickSheet questions) {
        JScrollPane pane = new JScrollPane(questions);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        return pane;
    }

    /** To the drawing, or to the first question. */
    void takeFocus() {
        if (shown == questions) {
            questions.takeFocus();
        } else {
            canvas().requestFocusInWindow();
        }
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
            rack = null;
        }
        showWhatIsDue();
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
