package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The middle of the window: the room from above or one rack from its front, and a line that tells of what is pointed at. */
final class Center extends Sheet {
    private final transient View view;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final transient ToolBelt roomBelt;
    private final transient ToolBelt rackBelt;
    private final transient Front front;
    private final CanvasHead head;
    private final RoomCanvas room;
    private final RackCanvas rack;
    private final QuickSheet questions;
    private boolean isRackOpen;
    private @Nullable Component shown;

    /**
     * The room of a view.
     *
     * @param figures leads to the fields of what is chosen
     * @param whyAsked explains the figures of an outlet
     */
    Center(View view, WindowFiles files, Runnable figures, Consumer<OutletId> whyAsked) {
        super(
                view,
                new MigLayout(
                        "insets 8 12 10 12, fill, wrap 1, hidemode 3, gap 0 2", "[grow, fill]", "[][grow, fill]"));
        this.view = view;
        this.front = new Front(view);
        this.roomBelt = ToolBelt.ofRoom(view);
        this.rackBelt = ToolBelt.ofRack(view, front);
        this.room = new RoomCanvas(view, roomBelt, this::openRack);
        this.rack = new RackCanvas(view, rackBelt, room::scene, front, this::closeRack, figures);
        this.questions = new QuickSheet(view, files);
        RackSteps steps = new RackSteps(view, front, this::closeRack, this::stepRack);
        this.head = new CanvasHead(view, List.of(roomBelt, rackBelt), this::belt, this::drawn, steps, whyAsked);
        middle.setOpaque(false);
        add(head, "cell 0 0");
        add(middle, "cell 0 1, grow, hmin 0");
        view.onChange(this::changed);
        roomBelt.onTake(this::taken);
        rackBelt.onTake(this::taken);
    }

    /** What opens on the parts of either drawing, by the other button of the mouse or by the menu key. */
    void offer(Acts acts) {
        room.setComponentPopupMenu(Menus.onRoom(acts));
        rack.setComponentPopupMenu(Menus.onRack(acts));
        Keys.bind(rack, "PAGE_UP", acts.the(PreviousRack.class)::act);
        Keys.bind(rack, "PAGE_DOWN", acts.the(NextRack.class)::act);
    }

    /** The canvas that is shown. */
    Canvas canvas() {
        return isRackOpen ? rack : room;
    }

    RoomCanvas room() {
        return room;
    }

    RackCanvas rack() {
        return rack;
    }

    boolean isRackOpen() {
        return isRackOpen;
    }

    /** What is chosen stays so where it stands in that rack; else the rack itself is. */
    void openRack(RackId id) {
        isRackOpen = true;
        front.open(id);
        rackBelt.inHand().cancelled();
        if (!view.selection().parts().stream().allMatch(front::holds)
                || view.selection().isEmpty()) {
            view.choose(id.part());
        }
        rack.tell();
        rack.fit();
        rack.speak();
        showWhatIsDue();
        head.dress(true);
    }

    /** To the rack before or after the one that is open. */
    void stepRack(int by) {
        if (isRackOpen) {
            front.beside(by).map(Rack::id).ifPresent(this::openRack);
        }
    }

    void closeRack() {
        isRackOpen = false;
        rackBelt.putAllDown();
        showWhatIsDue();
    }

    /** Shows what is to be shown, and takes the focus to it where it was not shown before. */
    private void showWhatIsDue() {
        boolean isAsking = !isRackOpen
                && roomBelt.inHand().enters()
                && QuickSheet.isFor(view.desk().room());
        Component wanted = isAsking ? questions : canvas();
        if (wanted != shown) {
            shown = wanted;
            middle.removeAll();
            middle.add(isAsking ? scrolling(questions) : wanted);
            head.dress(isRackOpen);
            middle.revalidate();
            middle.repaint();
            takeFocus();
        }
        head.tell();
    }

    /** Another tool: a drawing tool in an empty room means that its owner draws rather than answers. */
    private void taken() {
        showWhatIsDue();
        head.dress(isRackOpen);
        takeFocus();
    }

    /** The tools of what is shown. */
    ToolBelt belt() {
        return isRackOpen ? rackBelt : roomBelt;
    }

    /** To the room from above, with a machine in the hand. */
    void draw(Blower.Role role) {
        closeRack();
        roomBelt.take(role);
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
        if (isRackOpen && rack.whereM(part).isEmpty()) {
            closeRack();
        }
        canvas().leadTo(part);
    }

    private void changed() {
        isRackOpen = isRackOpen && front.rack().isPresent();
        showWhatIsDue();
    }
}
