package lungfish.desktop;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.demand.Need;
import lungfish.drawing.OutletState;
import lungfish.drawing.Shown;
import lungfish.network.DropFlow;
import lungfish.plan.OutletPlan;
import lungfish.reason.Given;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Seat;
import lungfish.sizing.Setting;

/**
 * One outlet in the table, in SI, as one of the two trials shows it.
 *
 * @param seat as the room has it now, the last edit in it
 * @param plan as the newest plan has it, which may be that of a room some edits ago; empty where that did not know it yet
 */
record OutletRow(Seat seat, Optional<OutletPlan> plan, Shown shown) {
    OutletId id() {
        return seat.outlet().id();
    }

    Outlet outlet() {
        return seat.outlet();
    }

    OutletState state() {
        return plan.map(known -> OutletState.of(known, shown)).orElse(OutletState.UNKNOWN);
    }

    OptionalDouble getsM3PerS() {
        return figure(known -> switch (shown) {
            case AS_IT_SHOULD_BE_SET -> known.predictedM3PerS();
            case AS_IT_IS_SET ->
                known.asSet().stream().mapToDouble(DropFlow::freeM3PerS).findFirst();
        });
    }

    OptionalDouble sparePa() {
        return figure(shown::sparePa);
    }

    OptionalDouble jarS() {
        return figure(known -> OptionalDouble.of(known.jarS()));
    }

    /** How far its valve is open: as it should be, or as it is. */
    OptionalDouble opening() {
        return switch (shown) {
            case AS_IT_SHOULD_BE_SET ->
                figure(known ->
                        known.setting().stream().mapToDouble(Setting::opening).findFirst());
            case AS_IT_IS_SET -> outlet().valve().map(Outlet.Valve::opening).orElse(OptionalDouble.empty());
        };
    }

    /** Of the air release below the water line: as typed, or what the plan takes. */
    OptionalDouble depthM() {
        return typedOr(outlet().depthM(), Need::depthM);
    }

    OptionalDouble targetM3PerS() {
        return typedOr(outlet().flow().targetM3PerS(), Need::targetM3PerS);
    }

    OptionalDouble leastM3PerS() {
        OptionalDouble typed = outlet().flow().leastM3PerS();
        return typed.isPresent()
                ? typed
                : figure(known -> OptionalDouble.of(known.need().leastM3PerS()));
    }

    OptionalDouble mostM3PerS() {
        OptionalDouble typed = outlet().flow().mostM3PerS();
        return typed.isPresent() ? typed : figure(known -> known.need().mostM3PerS());
    }

    OptionalDouble airlineM() {
        return outlet().airline().map(Outlet.Airline::lengthM).orElse(OptionalDouble.empty());
    }

    private OptionalDouble typedOr(OptionalDouble typed, Function<Need, Given> otherwise) {
        return typed.isPresent()
                ? typed
                : figure(
                        known -> OptionalDouble.of(otherwise.apply(known.need()).si()));
    }

    private OptionalDouble figure(Function<OutletPlan, OptionalDouble> of) {
        return plan.map(of).orElse(OptionalDouble.empty());
    }

    String use() {
        return switch (outlet().use()) {
            case ALWAYS -> "always";
            case SOMETIMES -> "sometimes";
        };
    }

    /** What its device is called; its id until the plan knows it. */
    String device() {
        return plan.map(known -> known.need().device())
                .filter(known -> known.id().equals(outlet().device()))
                .map(known -> known.name())
                .orElse(outlet().device());
    }

    /** Whether a word that is typed into the filter is found in what people read of this row. */
    boolean speaksOf(String word) {
        String all =
                String.join(" ", id().text(), seat.tank().name(), seat.rack().name(), device(), state().word(), use());
        return all.toLowerCase(Locale.ROOT).contains(word.strip().toLowerCase(Locale.ROOT));
    }
}
