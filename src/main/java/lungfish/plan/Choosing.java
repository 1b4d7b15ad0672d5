package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.backup.BatteryRuntime;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.PipeSize;
import lungfish.noise.Noise;
import lungfish.noise.NoiseAnswer;
import lungfish.noise.SoundSource;
import lungfish.piping.PipedRoom;
import lungfish.reason.Assumable;
import lungfish.room.Blower;
import lungfish.room.Wishes;
import lungfish.sizing.Asked;
import lungfish.sizing.Bench;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;

/** Chooses the blower: the one that the room names, or the best that fits. */
final class Choosing {
    /** A machine's air side may be this warm where no pipe says otherwise. */
    private static final double NO_PIPE_LIMIT_K = 1000;

    private final Setup setup;
    private final PipedRoom piped;

    Choosing(Setup setup, PipedRoom piped) {
        this.setup = setup;
        this.piped = piped;
    }

    /** The room's places, taken by the machines that it names, or by the first candidate where it is silent. */
    Fleet places() {
        List<Fleet.Placed> placed = new ArrayList<>();
        for (Blower blower : setup.planned()) {
            Machine machine = Machines.chosen(blower, setup.room(), setup.catalogue())
                    .orElseGet(() -> Machines.as(classes().get(0), blower, setup.catalogue()));
            String node = piped.blowerNodes().get(blower.id());
            placed.add(new Fleet.Placed(
                    machine, node == null ? "" : node, blower.machine().isPresent()));
        }
        return new Fleet(
                placed, setup.planned().get(0).bleed(), setup.surroundings().freeAir());
    }

    /** Whether the room names every machine itself. */
    boolean isChosen() {
        return setup.planned().stream().allMatch(blower -> blower.machine().isPresent());
    }

    /** Candidates: the room's own classes, and all of the catalogue that are more than small pumps. */
    List<BlowerClass> classes() {
        return Stream.concat(
                        setup.room().ownClasses().blowers().stream(),
                        setup.catalogue().blowers().stream()
                                .filter(kind -> !kind.kind().isPump()))
                .toList();
    }

    Bench bench(Needed needed) {
        return new Bench(needed, asked(), this::levelDba, this::runtime, this::perYear);
    }

    /** By how much a power falls short of the wished time on battery: of one that is there, where a time is typed. */
    Optional<Limit.Broken> runtime(double watts) {
        OptionalDouble wished = setup.room().wishes().runtimeS();
        OptionalDouble holds = BatteryRuntime.runtimeS(setup.room(), setup.catalogue(), watts);
        return wished.isPresent() && holds.isPresent() && holds.getAsDouble() < wished.getAsDouble()
                ? Optional.of(Limit.RUNTIME.broken(holds.getAsDouble(), wished.getAsDouble()))
                : Optional.empty();
    }

    List<Candidate> ranked(Bench bench) {
        return bench.rank(places(), classes());
    }

    Asked asked() {
        Wishes wishes = setup.room().wishes();
        return new Asked(
                wishes.growthReserve().orElse(assumed(Assumable.GROWTH_RESERVE)),
                wishes.indexSparePa().orElse(assumed(Assumable.INDEX_SPARE)),
                wishes.loudestDba(),
                warmestPipeK(),
                OptionalDouble.of(setup.room().supply().voltageV().orElse(assumed(Assumable.VOLTAGE))),
                wishes.order());
    }

    private double assumed(Assumable key) {
        return setup.catalogue().assumed(key).si();
    }

    private double warmestPipeK() {
        return setup.room().runs().stream()
                .flatMap(run -> setup.catalogue().pipe(run.size()).stream())
                .mapToDouble(PipeSize::warmestK)
                .min()
                .orElse(NO_PIPE_LIMIT_K);
    }

    /** Energy and rebuilds of a candidate in a year, averaged over its life. */
    double perYear(Candidate candidate) {
        return Money.perYear(setup, candidate.fleet(), candidate.tired().gaugePa());
    }

    /** The level of a fleet at the listener; unknown where that of one machine is. */
    private OptionalDouble levelDba(Fleet fleet) {
        boolean known = fleet.placed().stream()
                .allMatch(each -> each.machine().kind().level().isPresent());
        return known ? noise(fleet).dba() : OptionalDouble.empty();
    }

    NoiseAnswer noise(Fleet fleet) {
        List<SoundSource> sources = new ArrayList<>();
        for (int i = 0; i < setup.planned().size(); i++) {
            sources.add(SoundSource.of(
                    setup.planned().get(i), fleet.placed().get(i).machine().kind(), setup.catalogue()));
        }
        return Noise.at(setup.room(), sources, setup.catalogue());
    }
}
