package lungfish.report;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.backup.Needed;
import lungfish.cost.Bill;
import lungfish.cost.CostAnswer;
import lungfish.demand.Demand;
import lungfish.headroom.Headroom;
import lungfish.json.JsonWriter;
import lungfish.noise.Heard;
import lungfish.noise.NoiseAnswer;
import lungfish.plan.Bled;
import lungfish.plan.EssentialDuty;
import lungfish.plan.Plan;
import lungfish.plan.Solution;
import lungfish.quantity.Quantities;
import lungfish.sizing.Limit;
import lungfish.today.Beside;

/**
 * A plan as JSON, as docs/schemas/plan.schema.json says: SI units, named in the keys; what is not known is null. Where the
 * plan has blocking findings they stand under {@code problems} too, as in every answer that fails.
 */
public final class PlanJson {
    private final Plan plan;
    private final ReasonsJson reasons;

    private PlanJson(Plan plan, Quantities quantities) {
        Names names = new Names(plan.room());
        this.plan = plan;
        this.reasons = new ReasonsJson(names, new Sentences(quantities, names));
    }

    /** The text; sentences in it are in the units of the reader. */
    public static String text(Plan plan, Quantities quantities) {
        return JsonWriter.text(new PlanJson(plan, quantities)::write);
    }

    private void write(JsonWriter out) {
        out.text("format", "lungfish-plan").whole("version", 1);
        out.text("room", plan.room().name());
        reasons.problems(out, plan.findings());
        out.object("demand", inner -> demand(inner, plan.demand()));
        Keys.object(out, "duty", plan.duty(), DutyJson::duty);
        out.objects("candidates", plan.candidates(), DutyJson::candidate);
        out.objects("outlets", plan.outlets(), OutletsJson::outlet);
        out.objects("pumps", plan.pumps(), OutletsJson::pump);
        Keys.object(out, "headroom", plan.headroom(), PlanJson::headroom);
        out.object("noise", this::noise);
        out.object("backup", this::backup);
        Keys.object(out, "cost", plan.cost(), this::cost);
        out.object("today", new BesideJson(Beside.of(plan))::write);
        out.object("siphon", new SiphonJson(plan.siphons())::write);
        reasons.findings(out, plan.findings());
        reasons.assumptions(out, plan.assumptions());
        reasons.whys(out, plan.whys());
        Keys.object(out, "solution", plan.solution(), PlanJson::solution);
    }

    private static void demand(JsonWriter out, Demand demand) {
        out.whole("outlets", demand.needs().size());
        Keys.number(out, "free_air_m3_per_s", demand.totalM3PerS());
        out.whole("planned_outlets", demand.planned().size());
        double planned = demand.planned().stream()
                .mapToDouble(need -> need.targetM3PerS().si())
                .sum();
        Keys.number(out, "planned_free_air_m3_per_s", planned);
    }

    private static void headroom(JsonWriter out, Headroom headroom) {
        Keys.number(out, "free_air_m3_per_s", headroom.freeM3PerS());
        Keys.number(out, "free_air_when_new_m3_per_s", headroom.freshFreeM3PerS());
        out.whole("outlets", headroom.outlets());
        Keys.word(out, "limit", headroom.limit().map(Limit.Broken::limit));
        out.text("like_outlet", headroom.like().id().text())
                .text("like_device", headroom.like().device().id());
    }

    private void noise(JsonWriter out) {
        Keys.number(out, "today_dba", plan.today().dba());
        Keys.number(out, "planned_dba", plan.planned().dba());
        out.text("at", plan.planned().at());
        heard(out, "today_machines", plan.today());
        heard(out, "planned_machines", plan.planned());
    }

    private static void heard(JsonWriter out, String key, NoiseAnswer answer) {
        out.flatObjects(key, answer.heard(), PlanJson::machine);
    }

    private static void machine(JsonWriter out, Heard heard) {
        out.text("name", heard.source().name());
        Keys.number(out, "dba", heard.dba());
        Keys.number(out, "power_dba", heard.powerDba());
        Keys.number(out, "distance_m", heard.distanceM());
    }

    private void backup(JsonWriter out) {
        Optional<BackupAnswer> backup = plan.backup();
        Keys.number(out, "runtime_s", backup.map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty()));
        Keys.number(
                out,
                "essential_runtime_s",
                backup.map(BackupAnswer::essentialRuntimeS).orElse(OptionalDouble.empty()));
        Keys.object(out, "essential_duty", plan.essential(), PlanJson::essential);
        Keys.object(out, "battery_for_the_wish", backup.map(BackupAnswer::needed), PlanJson::battery);
        Keys.number(out, "alarm_pa", plan.alarmPa());
    }

    private static void essential(JsonWriter out, EssentialDuty duty) {
        out.whole("outlets", duty.outlets());
        out.whole("machines_on", duty.machinesOn());
        out.whole("machines", duty.machines());
        Keys.number(out, "running_pressure_pa", duty.running().gaugePa());
        Keys.number(out, "running_free_air_m3_per_s", duty.running().freeM3PerS());
        Keys.number(out, "power_w", duty.running().watts());
    }

    private static void battery(JsonWriter out, Needed needed) {
        out.text("kind", needed.kind().id());
        Keys.number(out, "voltage_v", needed.voltageV());
        Keys.number(out, "charge_c", needed.chargeC());
        Keys.number(out, "runtime_s", needed.forS());
    }

    private void cost(JsonWriter out, CostAnswer cost) {
        Keys.text(out, "currency", cost.currency());
        out.whole("years", cost.years());
        out.object("central", inner -> bill(inner, cost.central()));
        Keys.object(out, "today", cost.today(), PlanJson::bill);
        OptionalDouble payback = cost.paybackYear().isPresent()
                ? OptionalDouble.of(cost.paybackYear().getAsInt())
                : OptionalDouble.empty();
        Keys.number(out, "payback_year", payback);
        out.truth("keep_pumps", plan.keepPumps());
        Keys.number(
                out, "bled_energy_per_year", Bled.of(plan).map(Bled::perYear).orElse(0.0));
    }

    private static void bill(JsonWriter out, Bill bill) {
        Keys.number(out, "energy_per_year", bill.energyPerYear());
        Keys.number(out, "purchase", bill.purchase());
        Keys.number(out, "energy", bill.energy());
        Keys.number(out, "wear_parts", bill.wearParts());
        Keys.number(out, "replacements", bill.replacements());
        Keys.number(out, "total", bill.total());
    }

    private static void solution(JsonWriter out, Solution solution) {
        Keys.number(out, "mass_imbalance", solution.massImbalance());
        Keys.number(out, "residual_pa", solution.residualPa());
        out.whole("iterations", solution.iterations());
    }
}
