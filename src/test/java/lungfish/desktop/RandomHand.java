package lungfish.desktop;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JTextField;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.reason.PartId;

/**
 * A hand that does anything at one window: pulls parts about, draws with the tools, types, and takes what the menus offer, by
 * chance from a seed. All goes through the event queue, as from mouse and keys; dialogs, which would wait for an answer, are left
 * out. Says what it does before it does it.
 */
final class RandomHand {
    private static final Set<Class<? extends Act>> WITH_DIALOGS = Set.of(
            NewRoom.class,
            OpenRoom.class,
            OpenWindow.class,
            SaveRoomAs.class,
            ImportTanks.class,
            ExportOutlets.class,
            PrintDrillCard.class,
            SaveDrillCard.class,
            PrintReport.class,
            SaveReport.class,
            SavePicture.class,
            CloseWindow.class,
            QuitProgram.class,
            OpenDemo.class);
    private static final List<String> TYPED = List.of(
            "", "1", "2", "12", "35", "0.4", "1.5", "80 mm", "2 l/min", "300 mm", "1 m", "50 %", "lots", "-3",
            "sponge");
    private static final int PULLS = 8;
    private static final double FARTHEST_PX = 90;

    /** What there is to do, and how often it is done. */
    private enum Deed {
        PULL(20),
        DRAW(8),
        CHOOSE(14),
        CELL(14),
        FIELD(8),
        EDIT(16),
        UNDO(5),
        REDO(3),
        ASK(8),
        CLOSE(5),
        OTHER(6),
        WHEEL(4);

        private final int often;

        Deed(int often) {
            this.often = often;
        }
    }

    private final MainWindow window;
    private final WindowPane pane;
    private final Random random;
    private final EventTimes times;

    RandomHand(MainWindow window, EventTimes times, long seed) {
        this.window = window;
        this.pane = window.pane();
        this.times = times;
        this.random = new Random(seed);
    }

    /** One thing, and waits until the window has heard it. */
    void act() {
        switch (any()) {
            case PULL -> pull();
            case DRAW -> draw();
            case CHOOSE -> later("choose", this::choose);
            case CELL -> later("type into the table", this::typeIntoTable);
            case FIELD -> later("type into a field", this::typeIntoField);
            case EDIT -> actOf(edits());
            case UNDO -> several(pane.acts().the(UndoEdit.class));
            case REDO -> several(pane.acts().the(RedoEdit.class));
            case ASK -> actOf(pane.acts().plan());
            case CLOSE -> later("close the sheet", pane.side()::close);
            case OTHER -> actOf(others());
            case WHEEL ->
                later("zoom", () -> pane.center().canvas().zoom(random.nextBoolean() ? 1.25 : 0.8, Optional.empty()));
        }
    }

    private Deed any() {
        int at = random.nextInt(
                List.of(Deed.values()).stream().mapToInt(deed -> deed.often).sum());
        for (Deed deed : Deed.values()) {
            at -= deed.often;
            if (at < 0) {
                return deed;
            }
        }
        throw new IllegalStateException();
    }

    /** What is thrown reaches the thread itself, as from a key. */
    void later(String what, Runnable doing) {
        tell(what);
        EventQueue.invokeLater(doing);
        idle();
    }

    /** With the sheet that is open, which hears of it. */
    private void tell(String what) {
        String kind = what.replaceFirst(":.*|,.*", "");
        times.doing(kind + " / " + open());
    }

    private String open() {
        return Parts.all(pane.side())
                .filter(SideSheet.class::isInstance)
                .map(sheet -> sheet.getClass().getSimpleName())
                .findFirst()
                .orElse("panels");
    }

    /** Asked on the event thread. */
    <T> T see(Supplier<T> what) {
        List<T> seen = new ArrayList<>();
        inTurn(() -> seen.add(what.get()));
        return seen.get(0);
    }

    /** Waits until all that was asked so far, and what that asked in turn, is done. */
    void idle() {
        inTurn(() -> {});
        inTurn(() -> {});
    }

    private static void inTurn(Runnable what) {
        try {
            EventQueue.invokeAndWait(what);
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private <T> Optional<T> oneOf(List<T> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    private List<Act> edits() {
        Acts acts = pane.acts();
        return List.of(acts.chosen(), acts.arrange(), acts.inRack(), acts.pipe()).stream()
                .flatMap(List::stream)
                .toList();
    }

    private List<Act> others() {
        Acts acts = pane.acts();
        return List.of(acts.file(), acts.look(), acts.go()).stream()
                .flatMap(List::stream)
                .filter(act -> !WITH_DIALOGS.contains(act.getClass()))
                .toList();
    }

    private void actOf(List<Act> all) {
        oneOf(all).ifPresent(this::take);
    }

    private void take(Act act) {
        later(act.name(), () -> {
            if (act.isEnabled()) {
                act.act();
            }
        });
    }

    private void several(Act act) {
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            take(act);
        }
    }

    private void choose() {
        List<Part> all = pane.center().canvas().everything().parts();
        Selection chosen = Selection.NONE;
        for (int i = random.nextInt(4); i >= 0; i--) {
            Optional<Part> one = oneOf(all);
            chosen = one.isPresent() ? chosen.with(one.get()) : chosen;
        }
        pane.view().select(chosen);
    }

    private Rectangle2D placeOfSome() {
        Canvas canvas = pane.center().canvas();
        List<PartId> all = List.copyOf(Handles.named(canvas.everything()));
        Rectangle2D all2d = new Rectangle2D.Double(0, 0, canvas.getWidth(), canvas.getHeight());
        return oneOf(all)
                .flatMap(canvas::whereM)
                .map(place -> canvas.viewport().px(place))
                .filter(px -> all2d.contains(px.getCenterX(), px.getCenterY()))
                .orElse(all2d);
    }

    /** One part along a way that sways, with the tool that chooses; on the grid or freely, or copied. */
    private void pull() {
        later("put tools down", () -> pane.center().belt().putAllDown());
        Rectangle2D place = see(this::placeOfSome);
        int keys = random.nextBoolean() ? InputEvent.ALT_DOWN_MASK : 0;
        keys |= random.nextInt(8) == 0 ? InputEvent.CTRL_DOWN_MASK : 0;
        drag("pull", place.getCenterX(), place.getCenterY(), keys);
    }

    /** With any tool, from anywhere; then it is done, or left. */
    private void draw() {
        later("take a tool", () -> {
            ToolBelt belt = pane.center().belt();
            oneOf(belt.tools()).ifPresent(belt::take);
        });
        String tool = "draw: " + see(() -> pane.center().belt().inHand().name());
        Component canvas = pane.center().canvas();
        for (int i = random.nextInt(3); i >= 0; i--) {
            drag(tool, random.nextDouble() * canvas.getWidth(), random.nextDouble() * canvas.getHeight(), 0);
        }
        later(tool + ", done", () -> {
            if (random.nextBoolean()) {
                pane.center().canvas().finish();
            }
            pane.center().canvas().escape();
        });
    }

    private void drag(String what, double x, double y, int keys) {
        double dx = (random.nextDouble() - 0.5) * 2 * FARTHEST_PX;
        double dy = (random.nextDouble() - 0.5) * 2 * FARTHEST_PX;
        mouse(what, MouseEvent.MOUSE_MOVED, x, y, 0);
        mouse(what + ", press", MouseEvent.MOUSE_PRESSED, x, y, keys);
        for (int i = 1; i <= PULLS; i++) {
            mouse(what, MouseEvent.MOUSE_DRAGGED, x + dx * i / PULLS, y + dy * i / PULLS, keys);
        }
        mouse(what + ", let go", MouseEvent.MOUSE_RELEASED, x + dx, y + dy, keys);
    }

    private void mouse(String what, int id, double x, double y, int keys) {
        tell(what);
        Component canvas = pane.center().canvas();
        boolean isMoved = id == MouseEvent.MOUSE_MOVED;
        int down = keys | (isMoved ? 0 : InputEvent.BUTTON1_DOWN_MASK);
        int button = isMoved ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
        times.postEvent(new MouseEvent(
                canvas, id, System.currentTimeMillis(), down, (int) x, (int) y, isMoved ? 0 : 1, false, button));
        idle();
    }

    private void typeIntoTable() {
        pane.below().showOutlets();
        OutletsTable table = pane.below().table();
        if (table.getRowCount() == 0) {
            return;
        }
        int row = random.nextInt(table.getRowCount());
        table.changeSelection(row, random.nextInt(table.getColumnCount()), false, false);
        table.input().begin(Optional.of('1'));
        table.input().field().ifPresent(field -> {
            field.setText(oneOf(TYPED).orElse(""));
            if (!table.input().stopCellEditing()) {
                table.input().cancelCellEditing();
            }
        });
    }

    /** Of what is chosen, or of the sheet that is open. */
    private void typeIntoField() {
        pane.showChosen();
        List<JTextField> fields = Parts.all(window.getContentPane())
                .filter(part -> part instanceof JTextField && part.isShowing() && part.isEnabled())
                .map(JTextField.class::cast)
                .filter(JTextField::isEditable)
                .toList();
        oneOf(fields).ifPresent(field -> {
            field.setText(oneOf(TYPED).orElse(""));
            field.postActionEvent();
        });
    }
}
