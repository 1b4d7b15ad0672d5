package lungfish.oxygen;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import lungfish.air.Aeration;
import lungfish.air.DissolvedOxygen;
import lungfish.air.Respiration;
import lungfish.air.StillSurface;
import lungfish.air.Water;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass.Bubbles;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.reason.Assumable;
import lungfish.room.Room;
import lungfish.room.Tank;

/**
 * Makes the balances of a room's tanks. Each approximation leans to the side that shortens the time: the cautious case takes
 * three times the fish's use, a large meal just before the air stops unless the tank says otherwise, the lowest published
 * transfer of still water, and the low end of what bubbles bring; neither case counts what plants give, what glass takes from the volume, or the water that a
 * filter turns over a wall.
 */
public final class Balances {
    /** Dirt of tank water in the transfer of bubbles, α 0.8 to 0.9, and its salts, β 0.95 to 1: wastewater handbooks, from memory. */
    private static final double LIKELY_ALPHA = 0.85;

    private static final double CAUTIOUS_ALPHA = 0.8;
    private static final double LIKELY_BETA = 0.97;
    private static final double CAUTIOUS_BETA = 0.95;

    /**
     * Likely share taken up for each metre from a stone of fine bubbles: one stone in a tank is no full floor of them, and
     * counts as medium; the middle of coarse and fine.
     */
    private static final double STONE_PER_M = Math.sqrt(Aeration.COARSE_PER_M * Aeration.FINE_PER_M);

    /** What coarse bubbles bring is known within 1.5 times (wastewater handbooks, from memory); no stone is trusted with more. */
    private static final double CAUTIOUS_PER_M = Aeration.COARSE_PER_M / 1.5;

    /** Transfer at a surface that bubbles or a filter move, at 20 °C: twice the highest of still water; common practice, no source. */
    private static final double LIKELY_STIRRED_M_PER_S = 2 * StillSurface.HIGHEST_M_PER_S;

    /** At least what the highest published formula gives for water that nothing moves. */
    private static final double CAUTIOUS_STIRRED_M_PER_S = StillSurface.HIGHEST_M_PER_S;

    /** Oxygen at which fish begin to take up less: median of 158 rows for fresh water at 20 °C and above (Verberk et al. 2022). */
    private static final double LIKELY_CRITICAL_PA = 3430;

    /** The same, 5th percentile: fish that go on breathing longest use up most. */
    private static final double CAUTIOUS_CRITICAL_PA = 1600;

    /** Surface over that of the box around it, for a round vessel: π/4. */
    private static final double ROUND = Math.PI / 4;

    private static final double TEST_K = 293.15;
    private static final double G_PER_KG = 1000;
    private static final double DAY_S = 86_400;

    private final Surroundings surroundings;
    private final double protein;
    private final double foodPerDay;

    /** For the tanks of a room. */
    public Balances(Room room, Catalogue catalogue) {
        this.surroundings = Surroundings.of(room, catalogue);
        this.protein = catalogue.assumed(Assumable.PROTEIN).si();
        this.foodPerDay = catalogue.assumed(Assumable.FOOD_SHARE).si();
    }

    /** Whether anything is known of what lives in a tank: without that its oxygen cannot be judged. */
    public static boolean isKnown(Tank tank) {
        return tank.fish().stream().anyMatch(fish -> fish.count() > 0)
                || tank.feeding().isPresent();
    }

    /** The balance of a tank; empty where nothing is known of what lives in it, and where it holds no water. */
    public Optional<Balance> of(Tank tank, Case how) {
        return isKnown(tank) && tank.waterM3() > 0 ? Optional.of(balance(tank, how)) : Optional.empty();
    }

    private Balance balance(Tank tank, Case how) {
        Water water = surroundings.water(tank);
        double saturation = DissolvedOxygen.saturationGPerM3(water, surroundings.ambientPa());
        double warm = StillSurface.warming(water.temperatureK(), TEST_K);
        boolean cautious = how == Case.CAUTIOUS;
        return new Balance(
                tank.waterM3(),
                surfaceM2(tank),
                saturation,
                saturation * (cautious ? CAUTIOUS_BETA : LIKELY_BETA),
                restGPerS(tank, how),
                isFed(tank, how) ? (Respiration.FED_FACTOR - 1) * fishGPerS(tank, how) : 0,
                DissolvedOxygen.atPartialPressureGPerM3(water, cautious ? CAUTIOUS_CRITICAL_PA : LIKELY_CRITICAL_PA),
                warm * (cautious ? StillSurface.LOWEST_M_PER_S : StillSurface.LIKELY_M_PER_S),
                warm * (cautious ? CAUTIOUS_STIRRED_M_PER_S : LIKELY_STIRRED_M_PER_S));
    }

    private static double surfaceM2(Tank tank) {
        double box = tank.outside().lengthM() * tank.outside().widthM();
        return tank.kind() == Tank.Kind.TANK ? box : ROUND * box;
    }

    /**
     * What fish and bacteria use, g/s, without a meal: half of the fish's use for bacteria and sediment, and the ammonia of the
     * food.
     */
    public double restGPerS(Tank tank, Case how) {
        return fishGPerS(tank, how) * (1 + Respiration.SEDIMENT_SHARE) + nitrificationGPerS(tank);
    }

    private static boolean isFed(Tank tank, Case how) {
        return tank.justFed().orElse(how == Case.CAUTIOUS);
    }

    /** What the fish use at rest, g/s. */
    public double fishGPerS(Tank tank, Case how) {
        double waterK = surroundings.waterK(tank);
        return G_PER_KG
                * sum(
                        tank,
                        fish -> how == Case.CAUTIOUS
                                ? Respiration.cautiousKgPerS(fish.massKg(), waterK)
                                : Respiration.likelyKgPerS(fish.massKg(), waterK));
    }

    private double nitrificationGPerS(Tank tank) {
        double kgPerDay =
                tank.feeding().map(Tank.Feeding::kgPerDay).orElseGet(() -> foodPerDay * sum(tank, Tank.Fish::massKg));
        double share = tank.feeding().map(Tank.Feeding::protein).stream()
                .flatMapToDouble(typed -> typed.stream())
                .findFirst()
                .orElse(protein);
        return G_PER_KG * Respiration.nitrificationKgPerS(kgPerDay / DAY_S, share);
    }

    private static double sum(Tank tank, ToDoubleFunction<Tank.Fish> ofOne) {
        return tank.fish().stream()
                .mapToDouble(fish -> fish.count() * ofOne.applyAsDouble(fish))
                .sum();
    }

    /**
     * What the outlets of one tank bring.
     *
     * @param needs of that tank
     * @param airM3PerS free air of each, in their order
     * @param stirred whether something beside the air moves the water
     */
    public Breath breath(List<Need> needs, List<Double> airM3PerS, Case how, boolean stirred) {
        double brings = 0;
        boolean moved = stirred;
        for (int i = 0; i < needs.size(); i++) {
            brings += bubblesM3PerS(needs.get(i), airM3PerS.get(i), how);
            moved |= airM3PerS.get(i) > 0;
        }
        return new Breath(brings, moved);
    }

    /** Transfer over deficit of one outlet, m³/s; ASCE/EWRI 2-06. */
    private double bubblesM3PerS(Need need, double airM3PerS, Case how) {
        boolean cautious = how == Case.CAUTIOUS;
        double likelyPerM = need.device().bubbles() == Bubbles.FINE ? STONE_PER_M : Aeration.COARSE_PER_M;
        double perM = cautious ? CAUTIOUS_PER_M : likelyPerM;
        double alpha = cautious ? CAUTIOUS_ALPHA : LIKELY_ALPHA;
        double airKgPerS = surroundings.freeAir().flowKgPerS(airM3PerS);
        return G_PER_KG
                * Aeration.standardKgPerS(airKgPerS, perM, need.depthM().si())
                * Aeration.perDeficit(surroundings.water(need.seat().tank()), alpha);
    }
}
