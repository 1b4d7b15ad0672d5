package lungfish.backup;

import static lungfish.reason.Assumable.CHARGE_RATE;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.room.Room;

/**
 * How long batteries that a load has emptied take to fill again: until then the next failure of the mains finds them short.
 *
 * @param forS from empty to full, with the slow end of lead-acid
 * @param chargerW what the charger gives
 * @param slowEndS the part of the time in which lead-acid takes less than the charger could give; 0 where it does not
 * @param assumptions what the room does not say
 */
public record Recharge(double forS, double chargerW, double slowEndS, List<Assumption> assumptions) {
    private static final double HOUR_S = 3600;

    public Recharge {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * After a load; empty where the room has no batteries.
     *
     * @param watts the load, 0 or more
     * @throws IllegalArgumentException if a battery names a kind that is not in the catalogue
     */
    public static Optional<Recharge> of(Room room, Catalogue catalogue, double watts) {
        return BatteryRuntime.bank(room, catalogue).map(bank -> {
            double chargerW = chargerW(room, catalogue, bank);
            Charging charging = Charging.of(bank, chargerW, bank.usableJ(watts));
            List<Assumption> assumed = room.backup().chargerW().isPresent()
                    ? List.of()
                    : List.of(catalogue.assumed(CHARGE_RATE).about(PartId.ROOM));
            return new Recharge(charging.fromEmptyS(), chargerW, charging.slowEndS(), assumed);
        });
    }

    /** As the room says, or the usual share of the rated energy in an hour, W. */
    static double chargerW(Room room, Catalogue catalogue, Bank bank) {
        return room.backup()
                .chargerW()
                .orElseGet(() -> catalogue.assumed(CHARGE_RATE).si() * bank.ratedJ() / HOUR_S);
    }
}
