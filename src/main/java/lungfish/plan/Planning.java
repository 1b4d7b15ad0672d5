package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import lungfish.backup.BackupAnswer;
import lungfish.backup.BatteryRuntime;
import lungfish.backup.Load;
import lungfish.backup.LowPressureAlarm;
import lungfish.cost.CostAnswer;
import lungfish.headroom.Headroom;
import lungfish.network.Quality;
import lungfish.network.Refused;
import lungfish.noise.Noise;
import lungfish.noise.NoiseAnswer;
import lungfish.noise.SoundSource;
import lungfish.piping.PipedRoom;
import lungfish.piping.Piping;
import lungfish.piping.Spot;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.room.OutletId;
import lungfish.room.RunId;
import lungfish.siphon.SiphonFindings;
import lungfish.siphon.SiphonWhys;
import lungfish.siphon.Siphons;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.PumpDuty;
import lungfish.sizing.PumpedAir;
import lungfish.sizing.Pumps;
import lungfish.sizing.Running;

/**
 * One planning of one room, in the order of the thoughts: demand, pipe, what is needed, which blower, where it runs, how the
 * valves stand, room to grow, noise, backup, money; and what is wrong with any of it.
 */
final class Planning {
    private final Setup setup;
    private final List<PumpDuty> pumps;
    private final Optional<PipedRoom> piped;
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final Set<Assumption> assumptions = new LinkedHashSet<>();
    private final List<Why> whys = new ArrayList<>();

    Planning(Setup setup) {
        this.setup = setup;
        this.pumps = Pumps.of(setup.room(), setup.demand(), setup.catalogue());
        this.piped = Piping.of(setup.room(), setup.demand(), setup.planned(), setup.catalogue());
    }

    Plan plan() {
        findings.addAll(setup.demand().findings());
        assumptions.addAll(Assumed.of(setup));
        assumptions.addAll(setup.demand().assumptions());
        Optional<AirSide> air = piped.flatMap(this::airSide);
        Optional<Headroom> headroom = air.map(this::headroom);
        air.ifPresent(side -> explain(side, headroom.orElseThrow()));
        NoiseAnswer today = keep(noiseToday(), "level of today's pumps at the listener");
        NoiseAnswer planned = keep(noisePlanned(air), "level of the planned blower at the listener");
        Optional<EssentialDuty> essential = air.flatMap(EssentialDuty::of);
        Optional<BackupAnswer> backup = load(air, essential).map(load -> backup(load));
        Optional<CostAnswer> cost = air.map(side -> cost(side));
        List<OutletPlan> outlets = new OutletPlans(setup, pumps).of(air);
        boolean keepPumps = keepPumps(cost);
        OptionalInt paysFrom = keepPumps ? paysFrom(air, headroom, cost) : OptionalInt.empty();
        Siphons siphons = siphons(keepPumps);
        remaining(air, outlets, cost, keepPumps);
        return new Plan(
                setup.room(),
                setup.demand(),
                piped,
                air.map(AirSide::filedNetwork),
                air.map(side -> new Trials(side.predicted(), side.filed())),
                air.map(AirSide::duty),
                air.map(AirSide::candidates).orElse(List.of()),
                outlets,
                pumps,
                headroom,
                today,
                planned,
                essential,
                Airless.of(setup, outlets, keepPumps),
                backup,
                cost,
                keepPumps,
                paysFrom,
                air.map(side -> OptionalDouble.of(
                                LowPressureAlarm.setPa(side.duty().needed().pressurePa())))
                        .orElse(OptionalDouble.empty()),
                air.map(Planning::solution),
                siphons,
                ordered(),
                List.copyOf(assumptions),
                whys);
    }

    private Optional<AirSide> airSide(PipedRoom room) {
        findings.addAll(room.findings());
        assumptions.addAll(room.assumptions());
        return Basis.of(setup, room, refused -> findings.add(cannotSolve(refused)))
                .flatMap(this::airSide);
    }

    private Finding cannotSolve(Refused refused) {
        PartId part = part(refused.partId());
        return refused.why() == Refused.Why.NO_SOURCE
                ? Finding.of(Code.DISCONNECTED, part)
                : Finding.of(Code.CANNOT_SOLVE, part).with("reason", refused.reason());
    }

    /** The part of the room behind a part of the network: an outlet, or the run that a node lies on. */
    private PartId part(String networkId) {
        boolean isOutlet = setup.demand().needs().stream()
                .anyMatch(need -> need.id().text().equals(networkId));
        return isOutlet
                ? new OutletId(networkId).part()
                : piped.flatMap(room -> Optional.ofNullable(room.spots().get(networkId)))
                        .flatMap(Spot::run)
                        .map(RunId::part)
                        .orElse(new PartId(PartId.Kind.NETWORK, networkId));
    }

    private Optional<AirSide> airSide(Basis basis) {
        List<Candidate> candidates = basis.ranked();
        Candidate candidate = basis.chosen();
        Duty duty = new Duty(candidate, !basis.isChosen(), basis.needed(), basis.neededClean());
        return AirSide.of(setup, basis, duty, candidates);
    }

    private Headroom headroom(AirSide air) {
        return air.basis().headroom(air.duty().candidate());
    }

    private void explain(AirSide air, Headroom headroom) {
        whys.addAll(new Whys(setup, air).all(headroom));
    }

    private NoiseAnswer noiseToday() {
        List<SoundSource> sources = pumps.stream()
                .map(pump -> SoundSource.of(pump.pump(), pump.machine().kind(), setup.catalogue()))
                .toList();
        return Noise.at(setup.room(), sources, setup.catalogue());
    }

    private NoiseAnswer noisePlanned(Optional<AirSide> air) {
        return air.map(AirSide::noise).orElseGet(() -> Noise.at(setup.room(), List.of(), setup.catalogue()));
    }

    /** Keeps the whys and the assumptions of a noise answer; its findings count for the planned blower only. */
    private NoiseAnswer keep(NoiseAnswer noise, String figure) {
        noise.why().ifPresent(why -> whys.add(why.named(figure)));
        assumptions.addAll(noise.assumptions());
        return noise;
    }

    /** What would hang on a battery: the blower where it runs, or the pumps of today where no blower is planned. */
    private Optional<Load> load(Optional<AirSide> air, Optional<EssentialDuty> essential) {
        if (air.isEmpty()) {
            double watts = pumps.stream().mapToDouble(PumpDuty::watts).sum();
            return watts > 0 ? Optional.of(new Load(watts, watts, OptionalDouble.empty())) : Optional.empty();
        }
        AirSide side = air.get();
        Running running = side.duty().candidate().tired();
        Fleet fleet = side.fleet();
        double surge = fleet.placed().stream()
                .mapToDouble(each -> each.machine().kind().surgeFactor())
                .max()
                .orElse(1);
        OptionalDouble essentialW =
                essential.stream().mapToDouble(duty -> duty.running().watts()).findFirst();
        return Optional.of(new Load(running.watts(), running.watts() * surge, essentialW));
    }

    private BackupAnswer backup(Load load) {
        BackupAnswer backup = BatteryRuntime.of(setup.room(), setup.catalogue(), load);
        findings.addAll(backup.findings());
        assumptions.addAll(backup.assumptions());
        backup.why().ifPresent(whys::add);
        return backup;
    }

    private CostAnswer cost(AirSide air) {
        CostAnswer cost =
                Money.of(setup, air.fleet(), air.duty().candidate().tired().gaugePa(), pumps);
        assumptions.addAll(cost.assumptions());
        Bled.of(air.duty(), cost).ifPresent(bled -> whys.add(bled.why(cost)));
        whys.add(cost.whyCentral());
        cost.whyToday().ifPresent(whys::add);
        return cost;
    }

    /** The pumps give what the outlets ask, and what is planned, and a blower would never pay. */
    private boolean keepPumps(Optional<CostAnswer> cost) {
        PumpedAir air = PumpedAir.of(setup.demand(), pumps);
        boolean neverPays = cost.isEmpty() || cost.get().keepSmallPumps().isPresent();
        return air.isEnough() && !air.isOutgrown() && neverPays;
    }

    private OptionalInt paysFrom(Optional<AirSide> air, Optional<Headroom> headroom, Optional<CostAnswer> cost) {
        return air.isPresent() && headroom.isPresent() && cost.isPresent()
                ? new PaysFrom(setup, pumps, headroom.get(), cost.get()).outlets()
                : OptionalInt.empty();
    }

    /** Through the pipe; through the small pumps where they stay, or where there is no pipe yet. */
    private Siphons siphons(boolean keepPumps) {
        Siphons siphons = piped.filter(pipe -> !keepPumps)
                .map(pipe -> Siphons.of(setup.room(), pipe, setup.planned()))
                .orElseGet(() -> Siphons.of(pumps.stream()
                        .map(pump -> new Siphons.Pump(pump.pump(), pump.served()))
                        .toList()));
        findings.addAll(SiphonFindings.of(siphons, setup.catalogue()));
        SiphonWhys.of(siphons).ifPresent(whys::add);
        return siphons;
    }

    private void remaining(
            Optional<AirSide> air, List<OutletPlan> outlets, Optional<CostAnswer> cost, boolean keepPumps) {
        if (setup.demand().needs().isEmpty()) {
            findings.add(Finding.of(Code.NO_OUTLETS, PartId.ROOM));
        } else if (piped.isEmpty() && !keepPumps) {
            findings.add(Finding.of(Code.NO_MAIN, PartId.ROOM));
        }
        if (keepPumps) {
            cost.flatMap(CostAnswer::keepSmallPumps).ifPresent(findings::add);
        }
        findings.addAll(OutletFindings.today(pumps));
        findings.addAll(RoomCautions.of(setup));
        air.ifPresent(side -> {
            findings.addAll(DutyFindings.of(setup, side.duty(), side.asked()));
            findings.addAll(SurplusFindings.of(side, keepPumps));
            if (!keepPumps) {
                findings.addAll(OutletFindings.asFiled(outlets));
            }
            findings.addAll(PipeFindings.of(setup, side));
            findings.addAll(side.noise().findings());
            findings.addAll(
                    LowPressureAlarm.check(setup.room(), side.duty().needed().pressurePa()));
        });
    }

    private static Solution solution(AirSide air) {
        Quality tuned = air.duty().needed().tuned().quality();
        Quality trial = air.predicted().quality();
        Quality filed = air.filed().quality();
        return new Solution(
                Math.max(
                        tuned.massImbalanceOverTotal(),
                        Math.max(trial.massImbalanceOverTotal(), filed.massImbalanceOverTotal())),
                Math.max(tuned.residualPa(), Math.max(trial.residualPa(), filed.residualPa())),
                air.filed().iterations());
    }

    private List<Finding> ordered() {
        return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }
}
