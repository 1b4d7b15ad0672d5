package lungfish.drawing;

import java.util.List;

/** Writes the names on a room: all veils first, then leaders, then words, so that none hides another. */
final class RoomLabels {
    private RoomLabels() {}

    static void paint(List<Label> labels, Ink ink) {
        labels.forEach(label -> label.veil(ink));
        labels.forEach(label -> label.lead(ink));
        labels.forEach(label -> label.write(ink));
    }
}
