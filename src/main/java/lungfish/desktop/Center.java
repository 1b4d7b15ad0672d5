package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import lungfish.reason.PartId;
import lungfish.room.OutletId;
import lungfish.room.RackId;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The middle of the window: the room from above or one rack from its front, and a line that tells of what is pointed at. */
final class Center extends Sheet {
    private final transient View view;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final transient ToolBelt belt;
    private final CanvasHead head;
    private final RoomCanvas room;
    private final QuickSheet questions;
    private @Nullable Component shown;
    private @Nullable RackCanvas rack;

    Center(View view, WindowFiles files, Consumer<OutletId> whyAsked) {
        super(
                view,
                new MigLayout(
                        "insets 8 12 10 12, fill, wrap 1, hidemode 3, gap 0 2", "[grow, fill]", "[][grow, fill]"));
        this.view = view;
        this.belt = new ToolBelt(view);
        this.room = new RoomCanvas(view, belt, this::openRack);
        this.questions = new QuickSheet(view, files);
        this.head = new CanvasHead(view, belt, this::drawn, this::closeRack, whyAsked);
        middle.setOpaque(false);
        add(head, "cell 0 0");
        add(middle, "cell 0 1, grow, hmin 0");
        view.onChange(this::changed);
        belt.onTake(this::taken);
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
        boolean isAsking = rack == null
                && belt.inHand().enters()
                && QuickSheet.isFor(view.desk().room());
        Component wanted = isAsking ? questions : canvas();
        if (wanted != shown) {
            shown = wanted;
            middle.removeAll();
            middle.add(isAsking ? scrolling(questions) : wanted);
            head.dress(rack != null);
            middle.revalidate();
            middle.repaint();
            takeFocus();
        }
        head.tell();
    }

    /** Another tool: a drawing tool in an empty room means that its owner draws rather than answers. */
    private void taken() {
        showWhatIsDue();
        head.dress(rack != null);
        takeFocus();
    }

    ToolBelt belt() {
        return belt;
    }

    private Optional<Canvas> drawn() {
        return shown == questions ? Optional.empty() : Optional.of(canvas());
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
}
