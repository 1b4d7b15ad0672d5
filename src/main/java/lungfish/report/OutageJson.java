package lungfish.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.json.JsonWriter;
import lungfish.outage.Drill;
import lungfish.outage.Failing;
import lungfish.outage.Stretch;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.oxygen.Course;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** An outage played through as JSON, as docs/schemas/outage.schema.json says: SI units, named in the keys. */
public final class OutageJson {
    /** So many parts has the time that is looked at; a course is told at their ends. */
    private static final int PARTS = 48;

    private static final double KG_PER_G = 1e-3;

    /** Levels are written to a thousandth of a mg/L: nobody measures more. */
    private static final double WRITTEN_IN_A_KG_PER_M3 = 1e6;

    private final Names names;
    private final ReasonsJson reasons;

    private OutageJson(Plan plan, Quantities quantities) {
        this.names = new Names(plan.room());
        this.reasons = new ReasonsJson(names, new Sentences(quantities, names));
    }

    /**
     * The whole answer.
     *
     * @param drill empty where nothing gives air
     * @param asSet whether every valve stands as the room says, not as it should
     * @param quantities the units of the sentences in it
     */
    public static String text(Plan plan, Optional<Drill> drill, boolean asSet, Quantities quantities) {
        OutageJson json = new OutageJson(plan, quantities);
        return JsonWriter.text(out -> {
            out.text("format", "lungfish-outage").whole("version", 1);
            out.text("room", plan.room().name());
            json.reasons.problems(out, plan.findings());
            Keys.object(out, "drill", drill, (inner, there) -> json.drill(inner, there, asSet));
        });
    }

    private void drill(JsonWriter out, Drill drill, boolean asSet) {
        out.object("scene", inner -> scene(inner, drill, asSet));
        out.text("air_of", drill.plannedBlower() ? "planned_blower" : "small_pumps");
        out.object("levels", inner -> {
            Keys.number(
                    inner, "alarm_oxygen_kg_per_m3", KG_PER_G * drill.levels().alarmGPerM3());
            Keys.number(
                    inner, "danger_oxygen_kg_per_m3", KG_PER_G * drill.levels().dangerGPerM3());
        });
        out.flatObject("counts", inner -> counts(inner, drill));
        Keys.text(out, "first_in_danger", drill.first().map(tank -> tank.tank()
                .id()
                .text()));
        reasons.assumptions(out, drill.assumptions());
        out.texts(
                "outlets", drill.needs().stream().map(need -> need.id().text()).toList());
        out.objects("stretches", drill.stretches(), OutageJson::stretch);
        double[] times = times(drill);
        out.numbers("times_s", times);
        out.objects("tanks", drill.tanks(), (inner, tank) -> tank(inner, tank, times));
    }

    private void scene(JsonWriter out, Drill drill, boolean asSet) {
        Failing what = drill.scene().what();
        out.word("fails", what.kind());
        out.flatObject("part", part -> part.word("kind", what.part().kind())
                .text("id", what.part().id())
                .text("name", names.of(what.part())));
        Keys.number(out, "asked_back_s", drill.scene().backS());
        Keys.number(out, "back_s", drill.backS());
        Keys.number(out, "until_s", drill.scene().untilS());
        out.text("valves", asSet ? "as_set" : "as_they_should_be");
    }

    private static void counts(JsonWriter out, Drill drill) {
        out.whole("tanks", drill.tanks().size())
                .whole("judged", drill.judged().size())
                .whole("in_danger_likely", drill.inDanger(Case.LIKELY).size())
                .whole("in_danger_cautious", drill.inDanger(Case.CAUTIOUS).size());
    }

    private static void stretch(JsonWriter out, Stretch stretch) {
        Keys.number(out, "from_s", stretch.fromS());
        Keys.number(out, "to_s", stretch.toS());
        out.word("power", stretch.power())
                .truth("essentials_only", stretch.state().essentialsOnly())
                .truth("standby", stretch.state().standby())
                .truth("battery_pumps", stretch.state().batteryPumps());
        out.texts("stopped", sorted(stretch.state().stopped()));
        out.texts("stirring", sorted(stretch.stirring()));
        Keys.number(out, "charge_from_share", stretch.chargeFrom());
        Keys.number(out, "charge_to_share", stretch.chargeTo());
        out.whole("outlets_with_air", stretch.outletsOn());
        out.numbers(
                "free_air_m3_per_s",
                stretch.airM3PerS().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static List<String> sorted(Set<?> ids) {
        return ids.stream().map(Object::toString).sorted().toList();
    }

    private static double[] times(Drill drill) {
        double untilS = drill.scene().untilS();
        return IntStream.rangeClosed(0, PARTS)
                .mapToDouble(i -> i * untilS / PARTS)
                .toArray();
    }

    private static void tank(JsonWriter out, TankDrill tank, double[] times) {
        out.text("id", tank.tank().id().text())
                .text("name", tank.tank().name())
                .text("rack", tank.rack().id().text())
                .text("shelf", tank.shelf().id().text());
        Keys.number(out, "water_m3", tank.tank().waterM3());
        out.truth("essential", tank.essential()).truth("judged", tank.isJudged());
        Keys.number(out, "survival_s", tank.tank().survivalS());
        for (Case how : Case.values()) {
            Keys.object(
                    out,
                    how == Case.LIKELY ? "likely" : "cautious",
                    tank.isJudged() ? Optional.of(how) : Optional.empty(),
                    (inner, each) -> figure(inner, tank, each, times));
        }
    }

    private static void figure(JsonWriter out, TankDrill tank, Case how, double[] times) {
        Keys.number(out, "alarm_s", tank.alarmS(how));
        Keys.number(out, "danger_s", tank.dangerS(how));
        tank.courses().map(both -> both.of(how)).ifPresent(course -> course(out, course, times));
    }

    private static void course(JsonWriter out, Course course, double[] times) {
        Keys.number(out, "start_oxygen_kg_per_m3", written(course.startGPerM3()));
        Keys.number(out, "lowest_oxygen_kg_per_m3", written(course.lowestGPerM3()));
        double[] levels = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            levels[i] = written(course.atS(times[i]));
        }
        out.numbers("oxygen_kg_per_m3", levels);
    }

    private static double written(double gPerM3) {
        return Math.round(KG_PER_G * gPerM3 * WRITTEN_IN_A_KG_PER_M3) / WRITTEN_IN_A_KG_PER_M3;
    }
}
