package lungfish.roomfile;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Wishes;

/** Every id is there once among its kind, and every wish once in its order. */
final class IdChecks {
    private IdChecks() {}

    static void tell(Spots spots, Problems problems) {
        once(spots.racks(), rack -> rack.id().text(), problems);
        once(spots.shelves(), shelf -> shelf.id().text(), problems);
        once(spots.tanks(), tank -> tank.id().text(), problems);
        once(spots.outlets(), outlet -> outlet.id().text(), problems);
        once(spots.runs(), run -> run.id().text(), problems);
        once(spots.gangs(), gang -> gang.id().text(), problems);
        once(spots.blowers(), blower -> blower.id().text(), problems);
        once(spots.circuits(), circuit -> circuit.id().text(), problems);
        once(spots.batteries(), battery -> battery.id().text(), problems);
        once(spots.stirrers(), stirrer -> stirrer.id().text(), problems);
        once(spots.ownDevices(), DeviceClass::id, problems);
        once(spots.ownBlowers(), BlowerClass::id, problems);
        once(spots.readings(), reading -> reading.id().text(), problems);
        once(spots.services(), service -> service.id().text(), problems);
        wishes(spots.room().wishes(), problems);
    }

    private static void wishes(Wishes wishes, Problems problems) {
        Set<Wishes.Wish> met = new HashSet<>();
        for (Spot<Wishes.Wish> wish : Spot.each(Place.ROOT.key("wishes").key("order"), wishes.order())) {
            if (!met.add(wish.value())) {
                problems.add(wish.place(), "this wish stands here already", "each wish once");
            }
        }
    }

    private static <T> void once(List<Spot<T>> spots, Function<T, String> id, Problems problems) {
        Map<String, Place> first = new HashMap<>();
        for (Spot<T> spot : spots) {
            String name = id.apply(spot.value());
            Place earlier = name.isEmpty() ? null : first.putIfAbsent(name, spot.place());
            if (earlier != null) {
                problems.add(
                        spot.place().key("id"),
                        "the id \"" + name + "\" is taken by " + earlier.pointer(),
                        "an id of its own");
            }
        }
    }
}
