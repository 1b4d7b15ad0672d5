package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.JButton;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.room.Rack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures of an older plan while a rack is dragged. */
final class WaitingTest {
    @TempDir
    private Path folder;

    private final Deque<Runnable> planning = new ArrayDeque<>();

    private void planAll() {
        while (!planning.isEmpty()) {
            planning.remove().run();
        }
    }

    private static void drag(RoomCanvas canvas, Rack rack, double byM) {
        mouse(canvas, MouseEvent.MOUSE_PRESSED, rack, 0);
        mouse(canvas, MouseEvent.MOUSE_DRAGGED, rack, byM);
    }

    /** Alt keeps it off grid and guides. */
    private static void mouse(RoomCanvas canvas, int id, Rack rack, double byM) {
        double yM = rack.yM() + rack.spanYM() / 2 + byM;
        Point2D px = canvas.viewport().px(rack.xM() + rack.spanXM() / 2, yM);
        int x = (int) Math.round(px.getX());
        int y = (int) Math.round(px.getY());
        int keys = InputEvent.BUTTON1_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
        canvas.dispatchEvent(new MouseEvent(canvas, id, 0, keys, x, y, x, y, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void areSoftUntilThePlanOfTheNewPlaceIsThere() {
        Hands hands = new Hands(Runnable::run, planning::add, Runnable::run, Runnable::run, Runnable::run);
        Bench bench = new Bench(Desks.in(folder, hands), "garage-killifish");
        planAll();
        JButton duty = bench.part(JButton.class, Subject.DUTY.name());
        Color ink = bench.pane().view().look().palette().ink();
        Color soft = bench.pane().view().look().palette().free();
        String before = duty.getText();
        assertThat(duty.getForeground()).isEqualTo(ink);
        RoomCanvas canvas = bench.pane().center().room();
        canvas.setSize(900, 700);
        canvas.fit();
        drag(canvas, bench.desk().room().racks().get(0), 0.3);
        assertThat(duty.getForeground()).isEqualTo(soft);
        assertThat(duty.getText()).isEqualTo(before);
        planAll();
        assertThat(duty.getForeground()).isEqualTo(ink);
    }
}
