package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.drawing.SceneParts.BlowerPart;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.RackPart;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;
import lungfish.room.Listener;
import lungfish.room.Rack;
import lungfish.room.Shell;

/**
 * Finds the places of the names on a room: machines and the listener, racks, and the index outlet, which goes before the
 * racks where it would find no free ground after them.
 */
final class RoomNames {
    private static final double MOST_PX = 140;

    /** Words that would cover so much, as a share of their area times the weight of what is there, look for another place. */
    private static final double MUCH = 0.4;

    /** Beyond that a name is left out: hovering tells it. */
    private static final double TOO_MUCH = 1.2;

    /** A machine's name that would have to be led further is left out. */
    private static final double MOST_DETOUR_PX = 110;

    /** A rack's name may be a little wider than the rack. */
    private static final double OVERHANG = 1.2;

    /** The index outlet lets the racks have their names first, if that makes its own way no longer than by so much. */
    private static final double GIVES_WAY = 2;

    private final RoomScene scene;
    private final Ink ink;
    private final boolean isBrief;
    private final LabelSpots spots;
    private final Rectangle2D shell;
    private final List<Label> labels = new ArrayList<>();
    private int named;

    private RoomNames(RoomScene scene, Rectangle2D frame, List<Rectangle2D> taken, Ink ink, boolean isBrief) {
        this.scene = scene;
        this.ink = ink;
        this.isBrief = isBrief;
        this.spots = TakenGround.of(scene, frame, taken, ink);
        Shell walls = scene.room().shell();
        this.shell = ink.view().px(new Rectangle2D.Double(0, 0, walls.lengthM(), walls.widthM()));
    }

    /** The names of a scene, all inside a frame: short ones where more racks have theirs then. */
    static List<Label> of(RoomScene scene, Rectangle2D frame, Ink ink) {
        return of(scene, frame, List.of(), ink);
    }

    /** The same where some ground is taken by other words. */
    static List<Label> of(RoomScene scene, Rectangle2D frame, List<Rectangle2D> taken, Ink ink) {
        RoomNames full = arranged(scene, frame, taken, ink, false);
        if (full.named == scene.racks().size()) {
            return full.labels;
        }
        RoomNames brief = arranged(scene, frame, taken, ink, true);
        return brief.named > full.named ? brief.labels : full.labels;
    }

    private static RoomNames arranged(
            RoomScene scene, Rectangle2D frame, List<Rectangle2D> taken, Ink ink, boolean isBrief) {
        RoomNames racksFirst = new RoomNames(scene, frame, taken, ink, isBrief);
        racksFirst.machinesAndListener();
        racksFirst.scene.racks().forEach(racksFirst::rack);
        double afterOthers = racksFirst.index();
        RoomNames indexFirst = new RoomNames(scene, frame, taken, ink, isBrief);
        double beforeOthers = indexFirst.index();
        if (afterOthers <= GIVES_WAY * beforeOthers) {
            return racksFirst;
        }
        indexFirst.machinesAndListener();
        indexFirst.scene.racks().forEach(indexFirst::rack);
        return indexFirst;
    }

    private void machinesAndListener() {
        scene.blowers().stream()
                .filter(blower -> blower.blower().role() != Blower.Role.TODAY)
                .filter(blower -> spots.isInside(ink.view().px(blower.xM(), blower.yM())))
                .filter(blower -> !ink.isSmall() || blower.blower().role() == Blower.Role.PLANNED)
                .forEach(this::blower);
        scene.room().listener().ifPresent(this::listener);
    }

    private void blower(BlowerPart blower) {
        Rectangle2D box = BlowerPainter.boxPx(blower, ink);
        Label words = soft(blower.blower().name());
        List<Rectangle2D> beside = NameSpots.of(box, size(words), ink, true).stream()
                .filter(spot -> staysInside(box, spot))
                .toList();
        if (placeBelow(MUCH, words, beside)) {
            return;
        }
        Leads leads = new Leads(ink, spots);
        leads.within(ink.px(MOST_DETOUR_PX), box, size(words))
                .ifPresent(lead -> labels.add(leads.label(lead, box, words)));
    }

    private void listener(Listener ear) {
        Rectangle2D head = Boxes.around(
                ink.view().xPx(ear.place().xM()),
                ink.view().yPx(ear.place().yM()),
                ink.px(ListenerPainter.HEAD_PX + 7));
        Label words = soft(ear.name());
        place(words, spots.best(NameSpots.middlesFirst(head, size(words), ink, true)));
    }

    private Label soft(String name) {
        Font font = ink.type().drawing();
        return words(
                ink.fitting(name, ink.px(MOST_PX), font), font, ink.palette().softInk());
    }

    private static Label words(String text, Font font, Color colour) {
        return new Label(text, new Rectangle2D.Double(), font, colour, Optional.empty());
    }

    private Rectangle2D size(Label words) {
        return new Rectangle2D.Double(0, 0, ink.width(words.text(), words.font()), ink.height(words.font()));
    }

    private void place(Label words, Rectangle2D box) {
        double aside = ink.px(5); // words side by side read as one name
        double above = ink.px(1.5);
        spots.take(
                Boxes.between(box.getX() - aside, box.getY() - above, box.getMaxX() + aside, box.getMaxY() + above, 0),
                10);
        labels.add(new Label(words.text(), box, words.font(), words.colour(), Optional.empty()));
    }

    /** The full name where there is room for it, else the short one, else none. */
    private void rack(RackPart rack) {
        Rectangle2D box = ink.view().px(rack.outlineM());
        double most = Math.max(OVERHANG * box.getWidth(), rack.across() ? 0 : ink.px(80));
        Label full = rackWords(rack.rack(), rack.rack().name());
        Label brief = rackWords(rack.rack(), rack.rack().id().text());
        boolean isPlaced = !isBrief && size(full).getWidth() <= most && placeBelow(MUCH, full, rackSpots(rack, full));
        if (isPlaced || placeBelow(TOO_MUCH, brief, rackSpots(rack, brief))) {
            named++;
        }
    }

    /** Places words where they cover least; not where that is more than so much. */
    private boolean placeBelow(double most, Label words, List<Rectangle2D> candidates) {
        Optional<Rectangle2D> spot = candidates.isEmpty() ? Optional.empty() : Optional.of(spots.best(candidates));
        Optional<Rectangle2D> free = spot.filter(box -> spots.share(box) <= most);
        free.ifPresent(box -> place(words, box));
        return free.isPresent();
    }

    private Label rackWords(Rack rack, String name) {
        return rack.isPlanned()
                ? words(
                        name + ", planned",
                        ink.type().drawingName(),
                        ink.palette().planned())
                : words(name, ink.type().drawingName(), ink.palette().ink());
    }

    /** In front of the rack first; in a small room in the middle, so that each name keeps to its rack. */
    private List<Rectangle2D> rackSpots(RackPart rack, Label words) {
        boolean belowFirst = rack.rack().turn() != Rack.Turn.HALF;
        Rectangle2D box = ink.view().px(rack.outlineM());
        List<Rectangle2D> all = ink.isSmall()
                ? NameSpots.middlesFirst(box, size(words), ink, belowFirst)
                : NameSpots.of(box, size(words), ink, belowFirst);
        return all.stream()
                .filter(spot -> staysInside(box, spot) && keepsTo(rack, box, spot))
                .toList();
    }

    /** Whether no outer wall lies between a name and what it names. */
    private boolean staysInside(Rectangle2D box, Rectangle2D spot) {
        return !shell.contains(box.getCenterX(), box.getCenterY())
                || shell.contains(spot.getCenterX(), spot.getCenterY());
    }

    /** Whether no other rack lies between a name and its rack. */
    private boolean keepsTo(RackPart rack, Rectangle2D box, Rectangle2D spot) {
        double nearX = Math.max(box.getX(), Math.min(box.getMaxX(), spot.getCenterX()));
        double nearY = Math.max(box.getY(), Math.min(box.getMaxY(), spot.getCenterY()));
        return scene.racks().stream()
                .filter(other -> !other.equals(rack))
                .map(other -> ink.view().px(other.outlineM()))
                .noneMatch(other -> other.intersectsLine(nearX, nearY, spot.getCenterX(), spot.getCenterY()));
    }

    /** What its leader costs; 0 where there is no index outlet. */
    private double index() {
        Optional<OutletPart> index = scene.index()
                .filter(outlet -> outlet.sparePa().isPresent())
                .filter(outlet -> spots.isInside(ink.view().px(outlet.xM(), outlet.yM())));
        return index.map(this::index).orElse(0.0);
    }

    private double index(OutletPart outlet) {
        double x = ink.view().xPx(outlet.xM());
        double y = ink.view().yPx(outlet.yM());
        Ellipse2D ring = StateMark.circle(x, y, OutletPainter.radiusPx(outlet, ink) * 2.2);
        Leads leads = new Leads(ink, spots);
        Label words = accented(saying(outlet));
        Leads.Lead lead = leads.best(ring, size(words));
        if (spots.share(lead.words()) > MUCH) { // too many words for this room
            words = accented(outlet.outlet().id().text());
            lead = leads.best(ring, size(words));
        }
        labels.add(leads.label(lead, ring, words));
        return lead.cost();
    }

    private Label accented(String text) {
        return words(text, ink.type().drawingName(), ink.palette().accent());
    }

    private String saying(OutletPart outlet) {
        double spare = outlet.sparePa().orElse(0);
        String figure = ink.look().quantities().show(Math.abs(spare), Dimension.PRESSURE);
        String id = outlet.outlet().id().text();
        return spare < 0 ? id + ": short by " + figure : id + ": least spare, " + figure;
    }
}
