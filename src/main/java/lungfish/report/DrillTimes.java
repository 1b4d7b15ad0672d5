package lungfish.report;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import lungfish.oxygen.TankTime;
import lungfish.plan.Airless;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * How long there is when all air stops and nothing helps, for a card on the wall. Times are rounded down: to the minute, from
 * an hour on to five, from ten to the hour.
 */
final class DrillTimes {
    private static final int MOST_ROWS = 12;
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double COARSE_S = 5 * MINUTE_S;
    private static final double LONG_S = 10 * HOUR_S;
    private static final String NEVER = "never";

    private final Room room;
    private final Airless airless;
    private final Quantities quantities;

    DrillTimes(Room room, Airless airless, Quantities quantities) {
        this.room = room;
        this.airless = airless;
        this.quantities = quantities;
    }

    DrillCard.Clock clock() {
        return airless.first()
                .map(this::clock)
                .orElseGet(() -> airless.tanks().isEmpty()
                        ? new DrillCard.Clock(
                                "Unknown",
                                "Nothing is said of the fish in the tanks, so nobody can say how long there is. Act at once.")
                        : new DrillCard.Clock(
                                "No danger",
                                "The surface alone keeps every tank of which the fish are known above the danger level, even"
                                        + " by the cautious figure."));
    }

    private DrillCard.Clock clock(TankTime first) {
        String until = "without any air until the first tank is in danger: "
                + first.tank().name() + " (" + where(first.tank()) + "). ";
        String likely = first.likelyS().isPresent() ? moment(first.likelyS()).said() + " likely." : "likely never.";
        String sure = first.typed() ? "That is what the room says of it." : "That is the cautious figure; " + likely;
        return new DrillCard.Clock(moment(first.cautiousS()).said(), until + sure);
    }

    List<DrillCard.TankRow> rows() {
        return airless.tanks().stream()
                .filter(tank -> tank.cautiousS().isPresent())
                .sorted(Comparator.<TankTime>comparingDouble(tank -> orNever(tank.cautiousS()))
                        .thenComparingDouble(tank -> orNever(tank.likelyS())))
                .limit(MOST_ROWS)
                .map(this::row)
                .toList();
    }

    /** Tanks in danger that have no row. */
    int later() {
        return Math.max(0, inDanger() - MOST_ROWS);
    }

    int safe() {
        return airless.tanks().size() - inDanger();
    }

    private int inDanger() {
        return (int) airless.tanks().stream()
                .filter(tank -> tank.cautiousS().isPresent())
                .count();
    }

    private DrillCard.TankRow row(TankTime time) {
        Tank tank = time.tank();
        boolean isEssential = tank.outlets().stream().map(Outlet::essential).anyMatch(said -> said.orElse(false));
        return new DrillCard.TankRow(
                tank.name(),
                where(tank),
                isEssential,
                moment(time.alarmS()),
                moment(time.cautiousS()),
                moment(time.likelyS()));
    }

    /** "Rack A, shelf 2". */
    private String where(Tank tank) {
        for (Rack rack : room.racks()) {
            ToIntFunction<Shelf> number = shelf -> rack.shelves().indexOf(shelf) + 1;
            for (Shelf shelf : rack.shelves()) {
                if (shelf.tanks().contains(tank)) {
                    return rack.name() + ", shelf " + number.applyAsInt(shelf);
                }
            }
        }
        return "";
    }

    DrillCard.Moment moment(OptionalDouble s) {
        if (s.isEmpty()) {
            return new DrillCard.Moment(Double.POSITIVE_INFINITY, NEVER, NEVER);
        }
        double exact = s.getAsDouble();
        double step = exact < HOUR_S ? MINUTE_S : exact < LONG_S ? COARSE_S : HOUR_S;
        double down = step * Math.floor(exact / step);
        long minutes = Math.round(down / MINUTE_S);
        String brief = minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
        return new DrillCard.Moment(down, down == 0 ? "at once" : quantities.show(down, Dimension.DURATION), brief);
    }

    private static double orNever(OptionalDouble s) {
        return s.orElse(Double.POSITIVE_INFINITY);
    }
}
