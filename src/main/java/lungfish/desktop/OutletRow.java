package lungfish.desktop;

import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.drawing.OutletState;
import lungfish.drawing.Shown;
import lungfish.network.DropFlow;
import lungfish.plan.OutletPlan;
import lungfish.room.Outlet;
import lungfish.sizing.Setting;

/** One outlet in the table, in SI, as one of the two trials shows it. */
record OutletRow(OutletPlan outlet, Shown shown) {
    Need need() {
        return outlet.need();
    }

    OutletState state() {
        return OutletState.of(outlet, shown);
    }

    OptionalDouble getsM3PerS() {
        return switch (shown) {
            case AS_IT_SHOULD_BE_SET -> outlet.predictedM3PerS();
            case AS_IT_IS_SET ->
                outlet.asSet().stream().mapToDouble(DropFlow::freeM3PerS).findFirst();
        };
    }

    OptionalDouble sparePa() {
        return shown.sparePa(outlet);
    }

    /** How far its valve is open: as it should be, or as it is. */
    OptionalDouble opening() {
        return switch (shown) {
            case AS_IT_SHOULD_BE_SET ->
                outlet.setting().stream().mapToDouble(Setting::opening).findFirst();
            case AS_IT_IS_SET ->
                need().seat().outlet().valve().map(Outlet.Valve::opening).orElse(OptionalDouble.empty());
        };
    }

    String use() {
        return switch (need().seat().outlet().use()) {
            case ALWAYS -> "always";
            case SOMETIMES -> "sometimes";
        };
    }

    /** Whether a word that is typed into the filter is found in what people read of this row. */
    boolean speaksOf(String word) {
        String all = String.join(
                " ",
                need().id().text(),
                need().seat().tank().name(),
                need().seat().rack().name(),
                need().device().name(),
                state().word(),
                use());
        return all.toLowerCase(java.util.Locale.ROOT).contains(word.strip().toLowerCase(java.util.Locale.ROOT));
    }
}
