package lungfish.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** What is in a tank: its water and who lives there. An empty value is unknown: the plan then assumes one, visibly. */
public final class ContentEdits {
    private static final double COLDEST_K = 200;
    private static final double WARMEST_K = 400;
    private static final double SALTIEST = 0.3;
    private static final double LONGEST_S = 1e10;
    private static final double HEAVIEST_KG = 100;
    private static final int MOST_FISH = 1_000_000;

    private ContentEdits() {}

    /** The temperature of the water, K. */
    public static Attempt temperatureK(Room room, Collection<TankId> ids, OptionalDouble that) {
        return isWithin(that, COLDEST_K, WARMEST_K)
                ? TankEdits.change(
                        room, ids, "Set the temperature of ", tank -> tank.withWater(that, tank.salinityKgPerKg()))
                : Refused.because("No fish room has water that warm or cold.", "Type a temperature with its unit.");
    }

    /** Salt in the water, kg/kg. */
    public static Attempt salinity(Room room, Collection<TankId> ids, OptionalDouble kgPerKg) {
        return isWithin(kgPerKg, 0, SALTIEST)
                ? TankEdits.change(room, ids, "Set the salt of ", tank -> tank.withWater(tank.temperatureK(), kgPerKg))
                : Refused.because("Water does not hold that much salt.", "The sea has 3.5 %.");
    }

    /** How long what is in it lives without air, s. */
    public static Attempt survivalS(Room room, Collection<TankId> ids, OptionalDouble that) {
        return isWithin(that, Double.MIN_VALUE, LONGEST_S)
                ? TankEdits.change(
                        room, ids, "Set how long it lives in ", tank -> tank.holding(tank.fish(), tank.feeding(), that))
                : Refused.because("That is no time to live.", "Type a time with its unit, or leave it empty.");
    }

    /** Who lives there. */
    public static Attempt fish(Room room, Collection<TankId> ids, List<Tank.Fish> fish) {
        boolean sound = fish.stream()
                .allMatch(each -> Names.trouble(each.name()).isEmpty()
                        && each.count() >= 1
                        && each.count() <= MOST_FISH
                        && each.massKg() > 0
                        && each.massKg() <= HEAVIEST_KG);
        return sound
                ? TankEdits.change(
                        room, ids, "Set the fish of ", tank -> tank.holding(fish, tank.feeding(), tank.survivalS()))
                : Refused.because("Those fish make no sense.", "Give a name, how many, and what one of them weighs.");
    }

    /** Who lives there, as a keeper writes it: {@code 20 rainbows, 8 g; 4 loaches, 12 g}. */
    public static Attempt fish(Room room, Collection<TankId> ids, String text, Quantities quantities) {
        List<Tank.Fish> before =
                Find.tanks(room, ids).stream().findFirst().map(Tank::fish).orElse(List.of());
        return FishText.read(text, before, quantities, fish -> fish(room, ids, fish));
    }

    /** Dry food a day, kg; empty: unknown, and its protein with it. */
    public static Attempt foodKg(Room room, Collection<TankId> ids, OptionalDouble kgPerDay) {
        return isWithin(kgPerDay, 0, HEAVIEST_KG)
                ? TankEdits.change(
                        room,
                        ids,
                        "Set the food of ",
                        tank -> tank.holding(tank.fish(), fed(tank, kgPerDay), tank.survivalS()))
                : Refused.because("Nobody feeds that much.", "Type the dry food of one day, with its unit.");
    }

    private static Optional<Tank.Feeding> fed(Tank tank, OptionalDouble kgPerDay) {
        OptionalDouble protein = tank.feeding().map(Tank.Feeding::protein).orElse(OptionalDouble.empty());
        return kgPerDay.isPresent() ? Optional.of(new Tank.Feeding(kgPerDay.getAsDouble(), protein)) : Optional.empty();
    }

    /** The share of protein in its food; empty: unknown. */
    public static Attempt protein(Room room, Collection<TankId> ids, OptionalDouble share) {
        if (!isWithin(share, 0, 1)) {
            return Refused.because("Food has no such share of protein.", "Type a share from 0 % to 100 %.");
        }
        return Find.tanks(room, ids).stream().allMatch(tank -> tank.feeding().isEmpty())
                ? Refused.because("No food is said there.", "Say first how much it is fed in a day.")
                : TankEdits.change(
                        room,
                        ids,
                        "Set the protein in the food of ",
                        tank -> tank.holding(
                                tank.fish(),
                                tank.feeding().map(food -> new Tank.Feeding(food.kgPerDay(), share)),
                                tank.survivalS()));
    }

    /** Whether it was fed shortly before; empty: unknown. */
    public static Attempt justFed(Room room, Collection<TankId> ids, Optional<Boolean> that) {
        return TankEdits.change(room, ids, "Set when food was last given to ", tank -> tank.justFed(that));
    }

    private static boolean isWithin(OptionalDouble value, double least, double most) {
        double there = value.orElse(most);
        return there >= least && there <= most;
    }
}
