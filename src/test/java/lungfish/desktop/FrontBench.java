package lungfish.desktop;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComboBox;
import lungfish.desk.Desk;
import lungfish.drawing.Sketch;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Seat;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * The garage with the front of one of its racks open. Rack B is 1.72 m wide; on its lowest shelf, 0.2 m high, stand B-1-1 from
 * 0.02 to 0.62 m and B-1-2 from 0.64 to 1.24 m, both with 0.31 m of water. Rack C has shelves at 0.6 and 1.15 m; the upper one is free from 0.8 to
 * 1.3 m.
 */
final class FrontBench {
    /** Half a pixel of a rack drawn at some 300 pixels a metre. */
    static final double PIXEL_M = 0.004;

    private final Bench bench;
    private final Hand hand;

    FrontBench(Path folder) {
        this.bench = new Bench(folder, "garage-killifish");
        this.hand = new Hand(bench.pane().center().rack());
    }

    void open(String rack) {
        bench.pane().center().openRack(new RackId(rack));
        canvas().setSize(900, 700);
        canvas().fit();
    }

    WindowPane pane() {
        return bench.pane();
    }

    Desk desk() {
        return bench.desk();
    }

    Hand hand() {
        return hand;
    }

    RackCanvas canvas() {
        return bench.pane().center().rack();
    }

    <T extends java.awt.Component> T part(Class<T> kind, String name) {
        return bench.part(kind, name);
    }

    Tank tank(String id) {
        return desk().room().racks().stream()
                .flatMap(Rack::tanks)
                .filter(each -> each.id().equals(new TankId(id)))
                .findFirst()
                .orElseThrow();
    }

    Shelf shelf(String id) {
        return desk().room().racks().stream()
                .flatMap(rack -> rack.shelves().stream())
                .filter(each -> each.id().equals(new ShelfId(id)))
                .findFirst()
                .orElseThrow();
    }

    Seat seat(String outlet) {
        return desk().room().seats().stream()
                .filter(each -> each.outlet().id().equals(new OutletId(outlet)))
                .findFirst()
                .orElseThrow();
    }

    double depthM(String outlet) {
        return seat(outlet).outlet().depthM().orElseThrow();
    }

    /** Of the tanks of a shelf, from left to right. */
    List<String> ids(String shelf) {
        return shelf(shelf).tanks().stream().map(tank -> tank.id().text()).toList();
    }

    Rectangle2D where(PartId part) {
        return canvas().whereM(part).orElseThrow();
    }

    Sketch sketch() {
        return pane().center().belt().inHand().sketch();
    }

    String undo() {
        return desk().history().toUndo().orElse("");
    }

    Selection chosen() {
        return pane().view().selection();
    }

    void choose(Part part) {
        pane().view().select(Selection.of(part));
    }

    /** Of what the tool in the hand offers. */
    void say(String name, String item) {
        JComboBox<?> choice = part(JComboBox.class, name);
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (choice.getItemAt(i).toString().equals(item)) {
                choice.setSelectedIndex(i);
                return;
            }
        }
        throw new AssertionError(name + " does not offer " + item);
    }

    /** Runs the action of this name. */
    void act(String name) {
        pane().acts().all().stream().filter(act -> act.name().equals(name)).forEach(Act::act);
    }

    void run(Class<? extends Act> kind) {
        bench.act(kind);
    }
}
