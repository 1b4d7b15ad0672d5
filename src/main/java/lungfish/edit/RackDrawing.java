package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.TankSize;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;

/** New racks: from a template, or drawn as a rectangle on the floor. */
public final class RackDrawing {
    private RackDrawing() {}

    /** A rack as the template says, its first corner there, its front looking where {@code turn} says. */
    public static Attempt add(Room room, RackTemplate template, double xM, double yM, Rack.Turn turn) {
        return Edit.tried(
                room,
                "Add a rack",
                before -> with(before, template.rack(before, xM, yM, turn, template.widthM(), template.depthM())));
    }

    /** The same, moved so far that it stands wholly in the room, if it fits there. */
    public static Attempt addWithin(Room room, RackTemplate template, double xM, double yM, Rack.Turn turn) {
        boolean isAcross = turn == Rack.Turn.NONE || turn == Rack.Turn.HALF;
        double spanXM = isAcross ? template.widthM() : template.depthM();
        double spanYM = isAcross ? template.depthM() : template.widthM();
        return add(
                room,
                template,
                within(xM, room.shell().lengthM() - spanXM),
                within(yM, room.shell().widthM() - spanYM),
                turn);
    }

    private static double within(double at, double most) {
        return Metres.clean(Math.max(0, Math.min(at, most)));
    }

    /**
     * A rack that fills a rectangle: its back to the nearest wall, as many tanks along it as fit, as many shelves as the
     * template has and the ceiling allows. Where the template's tank is too large, the largest of the common sizes that fits
     * is taken.
     *
     * @param sizes the common sizes to choose from
     */
    public static Attempt draw(Room room, RackTemplate template, Box floor, List<TankSize> sizes) {
        double widthM = Metres.clean(Math.max(floor.spanXM(), floor.spanYM()));
        double depthM = Metres.clean(Math.min(floor.spanXM(), floor.spanYM()));
        Optional<RackTemplate> fitting = fitting(template, widthM, depthM, sizes)
                .map(size -> filled(template, size, widthM, room.shell().heightM()));
        if (fitting.isEmpty()) {
            return Refused.because(
                    "No tank fits on a rack of {width} by {depth}.",
                    "Draw it larger; it is as deep as a tank is wide.",
                    Refused.length("width", widthM),
                    Refused.length("depth", depthM));
        }
        Rack.Turn turn = backToTheWall(room.shell(), floor);
        return Edit.tried(
                room,
                "Draw a rack",
                before ->
                        with(before, fitting.get().rack(before, floor.fromXM(), floor.fromYM(), turn, widthM, depthM)));
    }

    private static RackTemplate filled(RackTemplate template, TankSize size, double widthM, double ceilingM) {
        RackTemplate sized = new RackTemplate(template.shelves(), 0, size, template.device());
        int shelves = Math.max(1, Math.min(template.shelves(), sized.shelvesUnder(ceilingM)));
        return new RackTemplate(shelves, sized.tanksAlong(widthM), size, template.device());
    }

    private static Optional<TankSize> fitting(
            RackTemplate template, double widthM, double depthM, List<TankSize> sizes) {
        if (fits(template.size(), widthM, depthM)) {
            return Optional.of(template.size());
        }
        return sizes.stream()
                .filter(size -> size.trade() == template.size().trade() && fits(size, widthM, depthM))
                .max(Comparator.comparingDouble(size -> size.lengthM() * size.widthM() * size.heightM()));
    }

    private static boolean fits(TankSize size, double widthM, double depthM) {
        return size.lengthM() + 2 * RackTemplate.GAP_M <= widthM && size.widthM() <= depthM;
    }

    /** The front of a rack looks away from the nearer of the two walls that run along it. */
    static Rack.Turn backToTheWall(Shell shell, Box floor) {
        if (floor.spanXM() >= floor.spanYM()) {
            boolean nearerToFirst = floor.fromYM() <= shell.widthM() - floor.toYM();
            return nearerToFirst ? Rack.Turn.NONE : Rack.Turn.HALF;
        }
        boolean nearerToFirst = floor.fromXM() <= shell.lengthM() - floor.toXM();
        return nearerToFirst ? Rack.Turn.THREE_QUARTERS : Rack.Turn.QUARTER;
    }

    static Room with(Room room, Rack rack) {
        List<Rack> racks = new ArrayList<>(room.racks());
        racks.add(rack);
        return room.withRacks(racks);
    }
}
