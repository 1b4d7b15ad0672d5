package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.drawing.SceneParts.BlowerPart;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;
import lungfish.room.Rack;

/** Writes the names on a room: the index outlet's first, then racks, machines and the listener, each where it is free. */
final class RoomLabels {
    private static final double GAP_PX = 4;

    private final RoomScene scene;
    private final Ink ink;
    private final LabelSpots spots;

    private RoomLabels(RoomScene scene, Ink ink) {
        this.scene = scene;
        this.ink = ink;
        this.spots = TakenGround.of(scene, ink);
    }

    static void paint(RoomScene scene, Ink ink) {
        RoomLabels labels = new RoomLabels(scene, ink);
        labels.scene.blowers().stream()
                .filter(blower -> blower.blower().role() != Blower.Role.TODAY)
                .filter(blower -> !ink.isSmall() || blower.blower().role() == Blower.Role.PLANNED)
                .forEach(labels::blower);
        labels.listener();
        if (ink.isSmall()) {
            labels.index(); // where room is short, names make way for the one thing to look at
        }
        labels.scene.racks().forEach(labels::rack);
        if (!ink.isSmall()) {
            labels.index();
        }
    }

    private void rack(RackPart rack) {
        Font font = ink.type().drawingName();
        Rectangle2D box = ink.view().px(rack.outlineM());
        double most = Math.max(box.getWidth(), rack.across() ? 0 : ink.px(80));
        String full = rack.rack().name();
        String name = ink.width(full, font) <= most ? full : rack.rack().id().text();
        String text = rack.rack().isPlanned() ? name + ", planned" : name;
        Color colour = rack.rack().isPlanned()
                ? ink.palette().planned()
                : ink.palette().ink();
        write(text, rackSpots(rack, box, text, font), font, colour);
    }

    /** In front of the rack first; in a small room in the middle, so that each name keeps to its rack. */
    private List<Rectangle2D> rackSpots(RackPart rack, Rectangle2D box, String text, Font font) {
        boolean belowFirst = rack.rack().turn() != Rack.Turn.HALF;
        return ink.isSmall() ? middlesFirst(box, text, font, belowFirst) : beside(box, text, font, belowFirst);
    }

    /** Below and above, at both ends and in the middle; then left and right. */
    private List<Rectangle2D> beside(Rectangle2D box, String text, Font font, boolean belowFirst) {
        double wide = ink.width(text, font);
        double high = ink.height(font);
        double gap = ink.px(GAP_PX);
        double below = box.getMaxY() + gap;
        double above = box.getY() - gap - high;
        double further = ink.mark(PipePainter.BORE_PX + 12);
        double[] rows = belowFirst
                ? new double[] {below, above, below + further, above - further}
                : new double[] {above, below, above - further, below + further};
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double y : rows) {
            for (double x : new double[] {box.getX(), box.getMaxX() - wide, box.getCenterX() - wide / 2}) {
                candidates.add(new Rectangle2D.Double(x, y, wide, high));
            }
        }
        candidates.add(new Rectangle2D.Double(box.getMaxX() + 2 * gap, box.getY(), wide, high));
        candidates.add(new Rectangle2D.Double(box.getX() - 2 * gap - wide, box.getY(), wide, high));
        candidates.add(new Rectangle2D.Double(box.getMaxX() + 2 * gap, box.getCenterY() - high / 2, wide, high));
        candidates.add(new Rectangle2D.Double(box.getX() - 2 * gap - wide, box.getCenterY() - high / 2, wide, high));
        return candidates;
    }

    private void write(String text, List<Rectangle2D> candidates, Font font, Color colour) {
        Rectangle2D box = spots.place(candidates);
        ground(box);
        ink.text(text, box.getX(), box.getMaxY() - ink.height(font) * 0.27, font, colour);
    }

    /** Where nothing was free, a veil keeps the words readable. */
    private void ground(Rectangle2D box) {
        Color sheet = ink.palette().sheet();
        Color veil = new Color(sheet.getRed(), sheet.getGreen(), sheet.getBlue(), 215);
        ink.fill(Marks.outset(box, ink.px(1)), veil);
    }

    private void blower(BlowerPart blower) {
        Font font = ink.type().drawing();
        String text = ink.fitting(blower.blower().name(), ink.px(140), font);
        write(
                text,
                beside(BlowerPainter.boxPx(blower, ink), text, font, true),
                font,
                ink.palette().softInk());
    }

    private void listener() {
        scene.room().listener().ifPresent(ear -> {
            Font font = ink.type().drawing();
            String text = ink.fitting(ear.name(), ink.px(140), font);
            Rectangle2D head = TakenGround.around(
                    ink.view().xPx(ear.place().xM()),
                    ink.view().yPx(ear.place().yM()),
                    ink.px(ListenerPainter.HEAD_PX + 7));
            write(
                    text,
                    middlesFirst(head, text, font, true),
                    font,
                    ink.palette().softInk());
        });
    }

    private List<Rectangle2D> middlesFirst(Rectangle2D box, String text, Font font, boolean belowFirst) {
        List<Rectangle2D> all = beside(box, text, font, belowFirst);
        List<Rectangle2D> sorted = new ArrayList<>(List.of(all.get(2), all.get(5)));
        sorted.addAll(all);
        return sorted;
    }

    private void index() {
        scene.index().filter(outlet -> outlet.sparePa().isPresent()).ifPresent(outlet -> new LeaderPainter(ink, spots)
                .paint(
                        ink.view().xPx(outlet.xM()),
                        ink.view().yPx(outlet.yM()),
                        OutletPainter.radiusPx(outlet, ink) * 2.2,
                        saying(outlet)));
    }

    private String saying(OutletPart outlet) {
        double spare = outlet.sparePa().orElse(0);
        String figure = ink.look().quantities().show(Math.abs(spare), Dimension.PRESSURE);
        String id = outlet.outlet().id().text();
        return spare < 0 ? id + ": short by " + figure : id + ": least spare, " + figure;
    }
}
