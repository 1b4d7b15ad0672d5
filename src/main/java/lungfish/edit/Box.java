package lungfish.edit;

import java.util.List;
import lungfish.room.Rack;

/** A rectangle on the floor, seen from above: from its least x and y to its greatest, m. */
public record Box(double fromXM, double fromYM, double toXM, double toYM) {
    /** Between two opposite corners, whichever they are. */
    public static Box between(double oneXM, double oneYM, double otherXM, double otherYM) {
        return new Box(
                Math.min(oneXM, otherXM), Math.min(oneYM, otherYM), Math.max(oneXM, otherXM), Math.max(oneYM, otherYM));
    }

    /** What a rack takes of the floor. */
    public static Box of(Rack rack) {
        return new Box(rack.xM(), rack.yM(), rack.xM() + rack.spanXM(), rack.yM() + rack.spanYM());
    }

    /** Around all of them; there must be one. */
    static Box around(List<Box> boxes) {
        return boxes.stream()
                .reduce((a, b) -> new Box(
                        Math.min(a.fromXM, b.fromXM),
                        Math.min(a.fromYM, b.fromYM),
                        Math.max(a.toXM, b.toXM),
                        Math.max(a.toYM, b.toYM)))
                .orElseThrow();
    }

    public double spanXM() {
        return toXM - fromXM;
    }

    public double spanYM() {
        return toYM - fromYM;
    }

    public double midXM() {
        return (fromXM + toXM) / 2;
    }

    public double midYM() {
        return (fromYM + toYM) / 2;
    }

    public Box moved(double dxM, double dyM) {
        return new Box(fromXM + dxM, fromYM + dyM, toXM + dxM, toYM + dyM);
    }

    /** Whether the other lies in it wholly, its edge included. */
    public boolean holds(Box other) {
        return other.fromXM >= fromXM && other.toXM <= toXM && other.fromYM >= fromYM && other.toYM <= toYM;
    }

    /** Whether the two have a point in common, an edge included. */
    public boolean touches(Box other) {
        return other.fromXM <= toXM && other.toXM >= fromXM && other.fromYM <= toYM && other.toYM >= fromYM;
    }

    /** Whether the two share more than an edge; {@code slackM} of it is forgiven. */
    boolean overlaps(Box other, double slackM) {
        return other.fromXM < toXM - slackM
                && other.toXM > fromXM + slackM
                && other.fromYM < toYM - slackM
                && other.toYM > fromYM + slackM;
    }
}
