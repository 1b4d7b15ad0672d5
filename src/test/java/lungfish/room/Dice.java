package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/** Random draws for {@link RoomMaker}. */
final class Dice {
    private final Random random;
    private final double presence;

    Dice(Random random, double presence) {
        this.random = random;
        this.presence = presence;
    }

    boolean isThere() {
        return random.nextDouble() < presence;
    }

    boolean heads() {
        return random.nextBoolean();
    }

    /** Between two numbers, half of the time rounded to a plain figure as a keeper would type it. */
    double between(double least, double most) {
        double x = least + random.nextDouble() * (most - least);
        double plain = Math.rint(x * 100) / 100;
        return heads() && plain > least && plain < most ? plain : x;
    }

    int whole(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    <E extends Enum<E>> E one(Class<E> type) {
        return one(List.of(type.getEnumConstants()));
    }

    OptionalDouble maybe(double least, double most) {
        return isThere() ? OptionalDouble.of(between(least, most)) : OptionalDouble.empty();
    }

    Optional<Boolean> maybeTruth() {
        return maybe(this::heads);
    }

    <T> Optional<T> maybe(Supplier<T> value) {
        return isThere() ? Optional.of(value.get()) : Optional.empty();
    }

    <T> List<T> some(int least, int most, IntFunction<T> item) {
        List<T> all = new ArrayList<>();
        int many = whole(least, most);
        for (int i = 0; i < many; i++) {
            all.add(item.apply(i));
        }
        return all;
    }

    String name() {
        return one(List.of("Left wall", "Grüße", "\"quoted\"", "50% of 水槽", "a/b~c", "tab\\no", "🐟 upstairs"));
    }
}
