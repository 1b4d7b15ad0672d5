package lungfish.roomfile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import lungfish.json.Place;

/** A part of the room with the place in the file where it stands. */
record Spot<T>(Place place, T value) {
    /** Each item of a list, with its place. */
    static <T> List<Spot<T>> each(Place list, List<T> items) {
        List<Spot<T>> spots = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            spots.add(new Spot<>(list.item(i), items.get(i)));
        }
        return spots;
    }

    /** The items of a list inside this part. */
    <U> List<Spot<U>> inside(String key, Function<T, List<U>> items) {
        return each(place.key(key), items.apply(value));
    }

    /** The items of a list inside each of these parts. */
    static <T, U> List<Spot<U>> inside(List<Spot<T>> spots, String key, Function<T, List<U>> items) {
        return spots.stream().flatMap(spot -> spot.inside(key, items).stream()).toList();
    }
}
