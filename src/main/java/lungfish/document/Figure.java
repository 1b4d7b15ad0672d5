package lungfish.document;

import lungfish.room.RackId;

/** What a picture shows; whoever gives the document a form has it painted. */
public sealed interface Figure permits Figure.RoomFromAbove, Figure.RackFront, Figure.Readings {
    /** The room from above, to scale, with its dimensions, its pipe and its taps. */
    record RoomFromAbove() implements Figure {}

    /** The front of a rack, to scale, with its dimensions, tanks, devices and airlines. */
    record RackFront(RackId rack) implements Figure {}

    /** What was read over time. */
    record Readings() implements Figure {}
}
