package lungfish.room;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A rack of shelves.
 *
 * @param xM its first corner, along the room's length
 * @param yM its first corner, along the room's width
 * @param turn how it stands
 * @param widthM along its front
 * @param depthM from front to back
 * @param stage in place, or planned
 * @param step when it comes, where it is planned; a rack in place keeps what was said of it, and nothing follows from that
 * @param shelves from the bottom up
 */
public record Rack(
        RackId id,
        String name,
        Stage stage,
        Step step,
        double xM,
        double yM,
        Turn turn,
        double widthM,
        double depthM,
        OptionalDouble ownMassKg,
        List<Shelf> shelves) {
    /** Whether it stands there or is thought of. */
    public enum Stage {
        IN_PLACE,
        PLANNED
    }

    /**
     * Which way the front looks, as clockwise quarter turns (x to the right, y down the page) from "towards larger y".
     * The corner {@code (xM, yM)} is always the one with the least x and y.
     */
    public enum Turn {
        NONE,
        QUARTER,
        HALF,
        THREE_QUARTERS;

        /** A quarter further, clockwise. */
        public Turn further() {
            return switch (this) {
                case NONE -> QUARTER;
                case QUARTER -> HALF;
                case HALF -> THREE_QUARTERS;
                case THREE_QUARTERS -> NONE;
            };
        }
    }

    public Rack {
        shelves = List.copyOf(shelves);
    }

    /** A rack of which nothing is said about when it comes. */
    public Rack(
            RackId id,
            String name,
            Stage stage,
            double xM,
            double yM,
            Turn turn,
            double widthM,
            double depthM,
            OptionalDouble ownMassKg,
            List<Shelf> shelves) {
        this(id, name, stage, Step.UNSAID, xM, yM, turn, widthM, depthM, ownMassKg, shelves);
    }

    public boolean isPlanned() {
        return stage == Stage.PLANNED;
    }

    /** The same rack with its first corner there. */
    public Rack movedTo(double x, double y) {
        return new Rack(id, name, stage, step, x, y, turn, widthM, depthM, ownMassKg, shelves);
    }

    /** The same rack, its front looking another way, with the same first corner. */
    public Rack turned(Turn that) {
        return new Rack(id, name, stage, step, xM, yM, that, widthM, depthM, ownMassKg, shelves);
    }

    /** The same rack, this wide along its front and this deep. */
    public Rack sized(double width, double depth) {
        return new Rack(id, name, stage, step, xM, yM, turn, width, depth, ownMassKg, shelves);
    }

    /** The same rack under another name. */
    public Rack named(String that) {
        return new Rack(id, that, stage, step, xM, yM, turn, widthM, depthM, ownMassKg, shelves);
    }

    /** The same rack, in place or planned. */
    public Rack at(Stage that) {
        return new Rack(id, name, that, step, xM, yM, turn, widthM, depthM, ownMassKg, shelves);
    }

    /** The same rack, coming then. */
    public Rack coming(Step that) {
        return new Rack(id, name, stage, that, xM, yM, turn, widthM, depthM, ownMassKg, shelves);
    }

    /** The same rack, this heavy when empty; absent: unknown. */
    public Rack weighing(OptionalDouble massKg) {
        return new Rack(id, name, stage, step, xM, yM, turn, widthM, depthM, massKg, shelves);
    }

    /** The same rack with these shelves for all of its own. */
    public Rack withShelves(List<Shelf> those) {
        return new Rack(id, name, stage, step, xM, yM, turn, widthM, depthM, ownMassKg, those);
    }

    /** What it takes up of the room's length, m. */
    public double spanXM() {
        return isAlongX() ? widthM : depthM;
    }

    /** What it takes up of the room's width, m. */
    public double spanYM() {
        return isAlongX() ? depthM : widthM;
    }

    private boolean isAlongX() {
        return turn == Turn.NONE || turn == Turn.HALF;
    }

    public Stream<Tank> tanks() {
        return shelves.stream().flatMap(shelf -> shelf.tanks().stream());
    }

    /**
     * A place in the rack as a place in the room.
     *
     * @param alongM from the left end, seen from the front
     * @param intoM from the front towards the back
     * @param zM above the floor
     */
    public Point at(double alongM, double intoM, double zM) {
        return switch (turn) {
            case NONE -> new Point(xM + alongM, yM + depthM - intoM, zM);
            case QUARTER -> new Point(xM + intoM, yM + alongM, zM);
            case HALF -> new Point(xM + widthM - alongM, yM + intoM, zM);
            case THREE_QUARTERS -> new Point(xM + depthM - intoM, yM + widthM - alongM, zM);
        };
    }
}
