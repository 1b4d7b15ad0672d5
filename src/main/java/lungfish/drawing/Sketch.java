package lungfish.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * What a hand is doing on a drawing, painted over it while it lasts. Places are in metres.
 *
 * @param strokes in the order painted
 * @param note what comes of it, beside the hand
 */
public record Sketch(List<Stroke> strokes, Optional<Note> note) {
    public static final Sketch NOTHING = new Sketch(List.of(), Optional.empty());

    public Sketch {
        strokes = List.copyOf(strokes);
    }

    /** One thing drawn. */
    public sealed interface Stroke {}

    /** What is being moved or drawn. */
    public record Ghost(Rectangle2D box) implements Stroke {}

    /** The frame that chooses what it touches. */
    public record Choosing(Rectangle2D box) implements Stroke {}

    /** A pipe or a wall in the making, from corner to corner. */
    public record Path(List<Point2D> corners) implements Stroke {
        public Path {
            corners = List.copyOf(corners);
        }
    }

    /** A length that is measured, with its figure. */
    public record Length(double fromXM, double fromYM, double toXM, double toYM) implements Stroke {}

    /** Why something came to rest where it did. */
    public record Rest(double fromXM, double fromYM, double toXM, double toYM, String words) implements Stroke {}

    /** Where one can take hold. */
    public record Handle(double xM, double yM) implements Stroke {}

    /** Where one has taken hold: a corner that is chosen. */
    public record Held(double xM, double yM) implements Stroke {}

    /** Where a new corner can be pulled out. */
    public record Knob(double xM, double yM) implements Stroke {}

    /** Around a small thing that is chosen, or only pointed at. */
    public record Ring(double xM, double yM, boolean strong) implements Stroke {}

    /** Beside a line that is chosen, or only pointed at: a wall, a door, a leg of pipe. */
    public record Beside(double fromXM, double fromYM, double toXM, double toYM, boolean strong) implements Stroke {}

    /** Where the keys point. */
    public record Cross(double xM, double yM) implements Stroke {}

    /** A machine, or whatever else is a point. */
    public record Spot(double xM, double yM) implements Stroke {}

    /**
     * A few words beside the hand.
     *
     * @param refused whether they tell why it cannot be done
     */
    public record Note(double xM, double yM, String words, boolean refused) {}
}
