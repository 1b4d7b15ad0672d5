package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;

/** What one thing of a room is called. */
final class PartWords {
    private PartWords() {}

    /** Its kind: "rack", "corner". */
    static String kind(Part.Kind kind) {
        return switch (kind) {
            case RACK -> "rack";
            case SHELF -> "shelf";
            case TANK -> "tank";
            case OUTLET -> "outlet";
            case TAP, GANG_TAP -> "tap";
            case RUN -> "pipe";
            case CORNER -> "corner";
            case FITTING -> "fitting";
            case GANG -> "gang";
            case BLOWER -> "blower";
            case FEED -> "joint";
            case LISTENER -> "listener";
            case DOOR -> "door";
            case WALL -> "wall";
        };
    }

    /** Its name in the middle of a sentence; its kind and id where the room has it no more. */
    static String of(Room room, Part part) {
        return switch (part.kind()) {
            case RACK -> named(part, Find.rack(room, part.id()), Words::rack);
            case TANK -> named(part, Find.tank(room, part.id()), Words::tank);
            case RUN -> named(part, Find.run(room, part.id()), Words::run);
            case BLOWER -> named(part, Find.blower(room, part.id()), Blower::name);
            case CORNER, FITTING ->
                "a " + kind(part.kind()) + " of " + named(part, Find.run(room, part.id()), Words::run);
            case TAP, FEED, GANG_TAP -> "the " + kind(part.kind()) + " of " + part.id();
            case SHELF ->
                "a shelf"
                        + Find.rackOfShelf(room, part.id())
                                .map(rack -> " of " + Words.rack(rack))
                                .orElse("");
            case OUTLET, GANG -> kind(part.kind()) + " " + part.id();
            case LISTENER -> "the listener";
            case DOOR -> "a door";
            case WALL -> "an inner wall";
        };
    }

    private static <T> String named(Part part, Optional<T> thing, Function<T, String> name) {
        return thing.map(name).orElse(kind(part.kind()) + " " + part.id());
    }

    /** Several outlets: "outlet A-1-1-a", "3 outlets". */
    static String outlets(List<Outlet> outlets) {
        return outlets.size() == 1 ? "outlet " + outlets.get(0).id() : Words.count(outlets.size(), "outlet");
    }

    static String racks(List<Rack> racks) {
        return Words.racks(racks);
    }

    static String runs(List<Run> runs) {
        return runs.size() == 1 ? Words.run(runs.get(0)) : Words.count(runs.size(), "pipe");
    }

    static String tanks(List<Tank> tanks) {
        return Words.tanks(tanks);
    }
}
