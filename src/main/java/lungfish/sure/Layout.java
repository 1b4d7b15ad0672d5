package lungfish.sure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lungfish.demand.Need;
import lungfish.room.OutletId;

/**
 * Where each input finds its draw: so that an outlet has the same luck in every stage of the room, and every machine the
 * same as the others.
 */
final class Layout {
    /** Inputs that are the same for the whole room. */
    enum Common {
        CURVE(0),
        WEAR(1),
        PIPE_BORE(2),
        AIRLINE_BORE(3),
        PIPE_ROUGHNESS(4),
        AIRLINE_ROUGHNESS(5);

        private final int at;

        Common(int at) {
            this.at = at;
        }
    }

    /** What is the same for all devices of a class, and again for each outlet by itself. */
    enum Trait {
        RESISTANCE(0),
        FLOW(1),
        FOULING(2),
        /** Of each outlet only. */
        DEPTH(3);

        private final int at;

        Trait(int at) {
            this.at = at;
        }
    }

    private static final int COMMON = Common.values().length;
    private static final int OF_CLASS = Trait.DEPTH.at;
    private static final int OF_OUTLET = Trait.values().length;

    private final Map<String, Integer> classes = new HashMap<>();
    private final Map<OutletId, Integer> outlets = new HashMap<>();

    /** For the outlets of some rooms. */
    static Layout of(List<List<Need>> rooms) {
        Layout layout = new Layout();
        for (Need need : rooms.stream().flatMap(List::stream).toList()) {
            layout.classes.putIfAbsent(need.device().id(), layout.classes.size());
            layout.outlets.putIfAbsent(need.id(), layout.outlets.size());
        }
        return layout;
    }

    /** How many draws are shared by several things: these are spread evenly. */
    int shared() {
        return COMMON + OF_CLASS * classes.size();
    }

    /** How many draws belong to one outlet only. */
    int own() {
        return OF_OUTLET * outlets.size();
    }

    int shared(Common input) {
        return input.at;
    }

    int shared(Need need, Trait trait) {
        return COMMON + OF_CLASS * classes.getOrDefault(need.device().id(), 0) + trait.at;
    }

    int own(Need need, Trait trait) {
        return OF_OUTLET * outlets.getOrDefault(need.id(), 0) + trait.at;
    }
}
