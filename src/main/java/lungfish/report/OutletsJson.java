package lungfish.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lungfish.demand.Need;
import lungfish.json.JsonWriter;
import lungfish.network.DropFlow;
import lungfish.plan.OutletPlan;
import lungfish.sizing.PumpDuty;
import lungfish.sizing.Setting;

/** The outlets, and the pumps of today that feed them, as JSON. */
final class OutletsJson {
    private OutletsJson() {}

    static void outlet(JsonWriter out, OutletPlan outlet) {
        Need need = outlet.need();
        out.text("id", need.id().text())
                .text("rack", need.seat().rack().id().text())
                .text("tank", need.seat().tank().id().text())
                .text("device", need.device().id());
        Keys.number(out, "depth_m", need.depthM().si());
        Keys.number(out, "least_m3_per_s", need.leastM3PerS());
        Keys.number(out, "target_m3_per_s", need.targetM3PerS().si());
        Keys.number(out, "most_m3_per_s", need.mostM3PerS());
        Keys.number(out, "predicted_m3_per_s", outlet.predictedM3PerS());
        Keys.number(out, "as_set_m3_per_s", of(outlet.asSet(), DropFlow::freeM3PerS));
        Keys.word(out, "as_set_state", outlet.asSet().map(DropFlow::state));
        Keys.number(out, "today_m3_per_s", outlet.todayM3PerS());
        Keys.number(out, "tap_pressure_pa", of(outlet.setting(), Setting::tapPa));
        Keys.number(out, "spare_pressure_pa", of(outlet.setting(), Setting::sparePa));
        Keys.number(out, "valve_opening", of(outlet.setting(), Setting::opening));
        Keys.number(out, "jar_seconds", outlet.jarS());
        out.word("use", need.seat().outlet().use())
                .truth("essential", need.essential())
                .truth("index", outlet.index());
    }

    private static <T> OptionalDouble of(Optional<T> holder, ToDoubleFunction<T> figure) {
        return holder.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(figure.applyAsDouble(holder.get()));
    }

    static void pump(JsonWriter out, PumpDuty pump) {
        out.text("id", pump.pump().id().text())
                .text("name", pump.pump().name())
                .text("class", pump.machine().kind().id())
                .whole("count", pump.machine().count())
                .whole("outlets", pump.served().size());
        Keys.number(out, "asked_m3_per_s", pump.askedM3PerS());
        Keys.number(out, "gives_m3_per_s", pump.givesM3PerS());
        Keys.number(out, "running_pressure_pa", pump.gaugePa());
        Keys.number(out, "power_w", pump.watts());
        out.truth("enough", pump.enough());
    }
}
