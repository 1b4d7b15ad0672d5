package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.network.DropFlow;
import lungfish.network.DropNeed;
import lungfish.network.Drops;
import lungfish.network.Network;
import lungfish.piping.PipedRoom;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.reason.Why.Term;
import lungfish.room.OutletId;
import lungfish.sizing.Setting;

/** Explains the figures of one outlet: what its tap has to spare, what it gets, and where what it wants comes from. */
public final class OutletWhys {
    /** The valves as they should be set, or as they are. */
    public enum Trial {
        AS_IT_SHOULD_BE_SET,
        AS_IT_IS_SET
    }

    private static final String SOLVED = "the network's laws, solved together by Newton's method";

    private final OutletPlan outlet;
    private final Need need;
    private final Trial trial;

    private OutletWhys(OutletPlan outlet, Trial trial) {
        this.outlet = outlet;
        this.need = outlet.need();
        this.trial = trial;
    }

    /** Why the figures of an outlet are what they are, that of its spare pressure first; none for an outlet not in the plan. */
    public static List<Why> of(Plan plan, OutletId id, Trial trial) {
        return plan.outlets().stream()
                .filter(each -> each.need().id().equals(id))
                .findFirst()
                .map(each -> new OutletWhys(each, trial).all(plan))
                .orElse(List.of());
    }

    private List<Why> all(Plan plan) {
        List<Why> whys = new ArrayList<>();
        plan.piped()
                .flatMap(piped -> plan.network().flatMap(network -> spare(piped, network)))
                .ifPresent(whys::add);
        gets().ifPresent(whys::add);
        whys.add(wanted(
                "target of " + need.id(),
                need.targetM3PerS().si(),
                Dimension.AIR_FLOW,
                need.targetM3PerS().origin()));
        need.mostM3PerS()
                .ifPresent(most ->
                        whys.add(wanted("most that " + need.id() + " bears", most, Dimension.AIR_FLOW, mostOrigin())));
        whys.add(wanted(
                "depth of " + need.id(),
                need.depthM().si(),
                Dimension.DEPTH,
                need.depthM().origin()));
        jar().ifPresent(whys::add);
        return whys;
    }

    private Optional<Why> spare(PipedRoom piped, Network network) {
        OptionalDouble tapPa = tapPa();
        int at = piped.needs().indexOf(need);
        if (tapPa.isEmpty() || at < 0) {
            return Optional.empty();
        }
        double target = need.targetM3PerS().si();
        DropNeed takes = Drops.needed(network.conditions(), network.drops().get(at), target);
        return Optional.of(new Why(
                "spare pressure at the tap of " + need.id(),
                tapPa.getAsDouble() - takes.totalPa(),
                Dimension.PRESSURE,
                Why.Adding.SUM,
                terms(tapPa.getAsDouble(), takes, piped.airlineM().get(at)),
                List.of(new Why.Input("target of " + need.id(), need.targetM3PerS(), Dimension.AIR_FLOW)),
                "spare = p at the tap − (ρ g d + p₀ + a q + b q² + check + airline + open valve)",
                "hydrostatics; isothermal pipe flow with the friction factor of Churchill (1977)"));
    }

    private List<Term> terms(double tapPa, DropNeed takes, double airlineM) {
        return List.of(
                new Term("pressure at its tap", tapPa, Origin.computed("tuned network")),
                new Term(
                        "water over it, {depth}",
                        List.of(new Amount("depth", need.depthM().si(), Dimension.DEPTH)),
                        -takes.waterPa(),
                        need.depthM().origin()),
                new Term(
                        "its " + need.device().name() + ", due for cleaning",
                        -takes.devicePa(),
                        Origin.catalogue(need.device().id())),
                new Term(
                        takes.checkPa() > 0 ? "its check valve" : "no check valve of its own",
                        -takes.checkPa(),
                        Origin.catalogue("")),
                new Term(
                        "its airline, {length}",
                        List.of(new Amount("length", airlineM, Dimension.LENGTH)),
                        -takes.airlinePa(),
                        Origin.computed("")),
                new Term("its valve, fully open", -takes.valvePa(), Origin.catalogue("")));
    }

    private OptionalDouble tapPa() {
        return switch (trial) {
            case AS_IT_SHOULD_BE_SET ->
                outlet.setting().stream().mapToDouble(Setting::tapPa).findFirst();
            case AS_IT_IS_SET ->
                outlet.asSet().stream().mapToDouble(DropFlow::tapGaugePa).findFirst();
        };
    }

    private Optional<Why> gets() {
        OptionalDouble gets = getsM3PerS();
        if (gets.isEmpty()) {
            return Optional.empty();
        }
        double target = need.targetM3PerS().si();
        String beside =
                switch (trial) {
                    case AS_IT_SHOULD_BE_SET -> "beside it: a valve is set in round steps";
                    case AS_IT_IS_SET -> "beside it: the valves as they are set";
                };
        return Optional.of(new Why(
                "air that " + need.id() + " gets",
                gets.getAsDouble(),
                Dimension.AIR_FLOW,
                Why.Adding.SUM,
                List.of(
                        new Term("its target", target, need.targetM3PerS().origin()),
                        new Term(beside, gets.getAsDouble() - target, Origin.computed("solved network"))),
                List.of(),
                "the flow at which its drop takes the pressure at its tap",
                SOLVED));
    }

    private OptionalDouble getsM3PerS() {
        return switch (trial) {
            case AS_IT_SHOULD_BE_SET -> outlet.predictedM3PerS();
            case AS_IT_IS_SET ->
                outlet.asSet().stream().mapToDouble(DropFlow::freeM3PerS).findFirst();
        };
    }

    private Origin mostOrigin() {
        return need.seat().outlet().flow().mostM3PerS().isPresent()
                ? Origin.typed("")
                : Origin.catalogue(need.device().id());
    }

    /** What is given, and follows from nothing. */
    private static Why wanted(String figure, double si, Dimension dimension, Origin origin) {
        return new Why(
                figure,
                si,
                dimension,
                Why.Adding.SUM,
                List.of(new Term("given", si, origin)),
                List.of(),
                "none: it is given",
                "the room, or where that is silent the class");
    }

    private Optional<Why> jar() {
        if (!Double.isFinite(outlet.jarS())) {
            return Optional.empty();
        }
        return Optional.of(new Why(
                "time in which the target of " + need.id() + " fills the jar",
                outlet.jarS(),
                Dimension.DURATION,
                Why.Adding.SUM,
                List.of(new Term("the jar, over the air that rises into it", outlet.jarS(), Origin.computed(""))),
                List.of(new Why.Input("target of " + need.id(), need.targetM3PerS(), Dimension.AIR_FLOW)),
                "t = V · (T of the room ∕ T of the water) ∕ q",
                "the gas law; the jar's mouth at the surface"));
    }
}
