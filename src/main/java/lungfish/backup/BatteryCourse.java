package lungfish.backup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.room.Room;

/**
 * The state of charge of a room's batteries over spans of different loads. They begin full.
 *
 * <p>A share of 1 is all that may be drawn in this course: what depth, cold, age and Peukert leave at the hardest load in
 * it, as if that load ruled the whole of it. That is the cautious side of both usual sums: of the one that takes from a
 * full battery the share of its runtime that each load uses up ({@code Σ t_i/T_i}), and of the one that takes the energy
 * drawn so far from what the load of the moment can draw. For one load it is the runtime of {@link BatteryRuntime}.
 *
 * <p>Once empty they stay so until they are charged: a battery that recovers when it rests is not counted on.
 *
 * @param moments in the order of time, the first at 0; between two of them the share runs straight
 * @param emptyS when they are first empty, s from the beginning; absent if never
 * @param usableJ the energy that a share of 1 stands for
 */
public record BatteryCourse(List<Moment> moments, OptionalDouble emptyS, double usableJ) {
    /**
     * How full they are at a moment.
     *
     * @param atS from the beginning
     * @param share of what may be drawn, 1 full to 0 empty
     */
    public record Moment(double atS, double share) {}

    public BatteryCourse {
        moments = List.copyOf(moments);
    }

    /**
     * The course of the batteries of a room; empty where there are none.
     *
     * @throws IllegalArgumentException if a battery names a kind that is not in the catalogue
     */
    public static Optional<BatteryCourse> of(Room room, Catalogue catalogue, List<Span> spans) {
        return BatteryRuntime.bank(room, catalogue)
                .map(bank -> of(bank, Recharge.chargerW(room, catalogue, bank), spans));
    }

    static BatteryCourse of(Bank bank, double chargerW, List<Span> spans) {
        return new Walk(bank, chargerW, spans).walk();
    }

    /** The share at a time; before the first moment and after the last it is theirs. */
    public double shareAt(double atS) {
        Moment before = moments.get(0);
        for (Moment after : moments) {
            if (after.atS() > atS) {
                return between(before, after, atS);
            }
            before = after;
        }
        return before.share();
    }

    private static double between(Moment before, Moment after, double atS) {
        double spanS = after.atS() - before.atS();
        double part = spanS == 0 ? 0 : Math.max(0, (atS - before.atS()) / spanS);
        return before.share() + part * (after.share() - before.share());
    }

    /** Goes through the spans once. */
    private static final class Walk {
        private final Bank bank;
        private final Charging charging;
        private final double usableJ;
        private final List<Moment> moments = new ArrayList<>();
        private OptionalDouble emptyS = OptionalDouble.empty();
        private double atS;
        private double share = 1;

        Walk(Bank bank, double chargerW, List<Span> spans) {
            this.bank = bank;
            this.usableJ = spans.stream()
                    .filter(span -> span.doing() == Span.Doing.CARRYING)
                    .mapToDouble(span -> bank.usableJ(span.watts()))
                    .min()
                    .orElseGet(() -> bank.usableJ(0));
            this.charging = Charging.of(bank, chargerW, usableJ);
            moments.add(new Moment(0, share));
            spans.forEach(this::go);
        }

        BatteryCourse walk() {
            return new BatteryCourse(moments, emptyS, usableJ);
        }

        private void go(Span span) {
            double endS = atS + span.forS();
            switch (span.doing()) {
                case CARRYING -> fall(bank.inverting().batteryW(span.watts()) / usableJ, endS);
                case CHARGING -> {
                    rise(charging.bulkPerS(), charging.knee(), endS);
                    rise(charging.tailPerS(), 1, endS);
                }
                case RESTING -> {}
            }
            reach(endS, share);
        }

        private void fall(double perS, double endS) {
            if (share > 0 && atS + share / perS <= endS) {
                reach(atS + share / perS, 0);
                emptyS = emptyS.isPresent() ? emptyS : OptionalDouble.of(atS);
            } else if (share > 0) {
                reach(endS, share - (endS - atS) * perS);
            }
        }

        private void rise(double perS, double to, double endS) {
            if (share < to && atS < endS) {
                double untilS = Math.min(endS, atS + (to - share) / perS);
                reach(untilS, untilS < endS ? to : Math.min(to, share + (endS - atS) * perS));
            }
        }

        private void reach(double toS, double toShare) {
            if (toS > atS) {
                moments.add(new Moment(toS, toShare));
            }
            atS = toS;
            share = toShare;
        }
    }
}
