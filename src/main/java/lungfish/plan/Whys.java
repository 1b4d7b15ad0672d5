package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.catalogue.BlowerClass;
import lungfish.demand.Need;
import lungfish.headroom.Headroom;
import lungfish.network.DropNeed;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.reason.Why.Term;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/** Explains the headline figures of duty and headroom: terms that add up, with where each came from. */
final class Whys {
    private final Setup setup;
    private final AirSide air;
    private final Needed needed;

    Whys(Setup setup, AirSide air) {
        this.setup = setup;
        this.air = air;
        this.needed = air.duty().needed();
    }

    List<Why> all(Headroom headroom) {
        return List.of(
                neededAir(),
                neededPressure(),
                runningPressure(),
                runningAir(),
                drawnPower(),
                pressureInHand(),
                discharge(),
                airLeft(),
                outlets(headroom));
    }

    private Why neededAir() {
        Map<String, List<Need>> byDevice = new LinkedHashMap<>();
        for (Need need : setup.demand().needs()) {
            byDevice.computeIfAbsent(need.device().name(), name -> new ArrayList<>())
                    .add(need);
        }
        List<Term> terms = new ArrayList<>();
        byDevice.forEach((name, needs) -> terms.add(new Term(
                "{count} × " + name,
                List.of(new Amount("count", needs.size(), Dimension.COUNT)),
                needs.stream().mapToDouble(need -> need.targetM3PerS().si()).sum(),
                needs.get(0).targetM3PerS().origin())));
        return new Why(
                "air the room needs",
                needed.freeM3PerS(),
                Dimension.AIR_FLOW,
                Why.Adding.SUM,
                terms,
                List.of(),
                "sum of the outlets' targets; those that run sometimes count as on",
                "addition");
    }

    private Why neededPressure() {
        DropNeed need = needed.indexNeed();
        Need index = needed.index();
        List<Term> terms = List.of(
                new Term(
                        "water over " + index.id() + ", {depth}",
                        List.of(new Amount("depth", index.depthM().si(), Dimension.DEPTH)),
                        need.waterPa(),
                        index.depthM().origin()),
                new Term(
                        "its " + index.device().name() + ", due for cleaning",
                        need.devicePa(),
                        Origin.catalogue(index.device().id())),
                new Term(
                        need.checkPa() > 0 ? "its check valve" : "no check valve of its own",
                        need.checkPa(),
                        Origin.catalogue("")),
                new Term(
                        "its airline, {length}",
                        List.of(new Amount("length", airlineM(index), Dimension.LENGTH)),
                        need.airlinePa(),
                        Origin.computed("")),
                new Term("its valve, fully open", need.valvePa(), Origin.catalogue("")),
                new Term("pipe between the blower and its tap", needed.pipePa(), Origin.computed("")));
        return new Why(
                "pressure the room needs",
                needed.pressurePa(),
                Dimension.PRESSURE,
                Why.Adding.SUM,
                terms,
                List.of(new Why.Input("target of " + index.id(), index.targetM3PerS(), Dimension.AIR_FLOW)),
                "p = ρ g d + p₀ + a q + b q² + check + airline + open valve + main",
                "hydrostatics; isothermal pipe flow with the friction factor of Churchill (1977)");
    }

    private double airlineM(Need need) {
        return air.piped().airlineM().get(air.piped().needs().indexOf(need));
    }

    private Why runningPressure() {
        Running running = air.duty().candidate().tired();
        double spare = running.gaugePa() - needed.pressurePa();
        return new Why(
                "pressure where the blower runs",
                running.gaugePa(),
                Dimension.PRESSURE,
                Why.Adding.SUM,
                List.of(
                        new Term("what the room needs", needed.pressurePa(), Origin.computed("tuned network")),
                        new Term(
                                spare >= 0
                                        ? "spare, burnt in the outlets' valves"
                                        : "missing: the blower cannot hold it",
                                spare,
                                Origin.computed("blower curve and bleed"))),
                List.of(),
                "bled: the pressure asked for; unbled: where the curve gives the sum of the targets",
                "meeting of the blower's curve and the demand");
    }

    private Why runningAir() {
        Running running = air.duty().candidate().tired();
        double taken = running.freeM3PerS() - running.bledM3PerS();
        return new Why(
                "air the blower gives there",
                running.freeM3PerS(),
                Dimension.AIR_FLOW,
                Why.Adding.SUM,
                List.of(
                        new Term("taken by the outlets", taken, Origin.computed("")),
                        new Term("bled", running.bledM3PerS(), Origin.computed(""))),
                curveInputs(running.gaugePa()),
                "the curve at the running pressure, tired",
                "monotone cubic of Fritsch and Butland (1984) through the class's points");
    }

    private List<Why.Input> curveInputs(double gaugePa) {
        Fleet fleet = air.fleet();
        return List.of(
                new Why.Input(
                        "the same blower, new, at this pressure",
                        fleet.freeAt(gaugePa, Wear.NEW),
                        Dimension.AIR_FLOW,
                        Origin.catalogue(fleet.kind().id())),
                new Why.Input(
                        "share of its flow left when tired",
                        fleet.kind().tiredShare(),
                        Dimension.SHARE,
                        Origin.catalogue(fleet.kind().id())));
    }

    private Why drawnPower() {
        Fleet fleet = air.fleet();
        Running running = air.duty().candidate().tired();
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < fleet.placed().size(); i++) {
            Machine machine = fleet.placed().get(i).machine();
            terms.add(new Term(
                    "{count} × " + machine.kind().name(),
                    List.of(new Amount("count", machine.count(), Dimension.COUNT)),
                    fleet.watts(i, running.gaugePa(), Wear.TIRED),
                    Origin.catalogue(machine.kind().id())));
        }
        return new Why(
                "power drawn where the blower runs",
                running.watts(),
                Dimension.POWER,
                Why.Adding.SUM,
                terms,
                List.of(new Why.Input(
                        "pressure where it runs",
                        running.gaugePa(),
                        Dimension.PRESSURE,
                        Origin.computed("curve, demand and bleed"))),
                "the watts of the class at the pressure inside it, filter and silencer included",
                "straight between the points of the class");
    }

    /** Of the machine that has least in hand. */
    private Why pressureInHand() {
        double gaugePa = air.duty().candidate().tired().gaugePa();
        Fleet fleet = air.fleet();
        int at = IntStream.range(0, fleet.placed().size())
                .boxed()
                .min(Comparator.comparingDouble(i -> inHandPa(i, gaugePa)))
                .orElseThrow();
        BlowerClass kind = fleet.placed().get(at).machine().kind();
        double taken = kind.continuousPa() - inHandPa(at, gaugePa) - gaugePa;
        return new Why(
                "pressure in hand below what it bears all day",
                inHandPa(at, gaugePa),
                Dimension.PRESSURE,
                Why.Adding.SUM,
                List.of(
                        new Term("borne all day by " + kind.name(), kind.continuousPa(), Origin.catalogue(kind.id())),
                        new Term("where it runs", -gaugePa, Origin.computed("curve, demand and bleed")),
                        new Term("taken by filter and silencer", -taken, Origin.catalogue(""))),
                List.of(),
                "p_continuous − p − k q²",
                "the class's continuous pressure; losses of fittings in proportion to the flow squared");
    }

    private double inHandPa(int place, double gaugePa) {
        Machine machine = air.fleet().placed().get(place).machine();
        double inside = machine.machinePa(gaugePa, air.fleet().freeAt(place, gaugePa, Wear.TIRED));
        return machine.kind().continuousPa() - inside;
    }

    private Why discharge() {
        Running running = air.duty().candidate().tired();
        double inletK = running.discharge().inletK();
        double coolK = running.discharge().coolK();
        double hotK = running.discharge().hotK();
        Given room = setup.surroundings().temperatureK();
        Origin drawn = inletK == room.si() ? room.origin() : Origin.typed("");
        return new Why(
                "air leaving the blower, hot end",
                hotK,
                Dimension.TEMPERATURE,
                Why.Adding.SUM,
                List.of(
                        new Term("air drawn in", inletK, drawn),
                        new Term("compressed without loss (the cool end)", coolK - inletK, Origin.computed("")),
                        new Term("the rest of the watts, if all stayed in the air", hotK - coolK, Origin.computed(""))),
                List.of(new Why.Input("power", running.discharge().watts(), Dimension.POWER, Origin.catalogue(""))),
                "T₁ ((p₂/p₁)^0.283 − 1) at the cool end, P/(ṁ c_p) at the hot end",
                "adiabatic compression (Metcalf & Eddy, Wastewater Engineering) and the energy balance");
    }

    private Why airLeft() {
        double gives = air.fleet().freeAt(needed.pressurePa(), Wear.TIRED);
        return new Why(
                "air left at the pressure the room needs",
                gives - needed.freeM3PerS(),
                Dimension.AIR_FLOW,
                Why.Adding.SUM,
                List.of(
                        new Term("what the tired blower gives there", gives, Origin.computed("")),
                        new Term("what the outlets take", -needed.freeM3PerS(), Origin.computed(""))),
                curveInputs(needed.pressurePa()),
                "curve(needed pressure) − Σ targets",
                "meeting of the blower's curve and the demand");
    }

    private Why outlets(Headroom headroom) {
        int present = setup.demand().needs().size();
        Need like = headroom.like();
        return new Why(
                "more outlets",
                headroom.outlets(),
                Dimension.COUNT,
                Why.Adding.SUM,
                List.of(
                        new Term(
                                "outlets that the first limit allows",
                                (double) present + headroom.outlets(),
                                Origin.computed("everything retuned, step by step")),
                        new Term("outlets there already", -present, Origin.drawn(""))),
                List.of(
                        new Why.Input("each takes", like.targetM3PerS(), Dimension.AIR_FLOW),
                        new Why.Input("each is this deep", like.depthM(), Dimension.DEPTH)),
                "each like " + like.id() + ", hung at the tap of "
                        + needed.index().id() + ", blower tired, devices due",
                "the tuned network, solved for each number");
    }
}
