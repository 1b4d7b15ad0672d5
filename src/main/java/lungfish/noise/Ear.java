package lungfish.noise;

import static lungfish.reason.Assumable.ABSORPTION;
import static lungfish.reason.Assumable.AIR_PATH_SHARE;
import static lungfish.reason.Assumable.LISTENER_DISTANCE;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.BlowerClass.Level;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumption;
import lungfish.reason.Given;
import lungfish.reason.PartId;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Room;

/** One listener in one room; remembers what had to be assumed on the way. */
final class Ear {
    /** Nearer than this a machine is no point, and the law of distance would run away. */
    private static final double NEAREST_M = 0.3;

    /** A surface nearer than this sends the sound back as if the machine stood on it. */
    private static final double BESIDE_M = 0.5;

    private static final double ON_A_FLOOR = 2;

    private final Room room;
    private final Catalogue catalogue;
    private final Given absorption;
    private final Hall hall;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    Ear(Room room, Catalogue catalogue) {
        this.room = room;
        this.catalogue = catalogue;
        this.absorption = given(room.shell().absorption(), catalogue.assumed(ABSORPTION), PartId.ROOM);
        this.hall = Hall.of(room.shell(), absorption.si());
    }

    /** What a source adds here; empty where its level is not known. */
    Optional<Heard> hears(SoundSource source) {
        return source.kind().level().map(level -> hears(source, level));
    }

    private Heard hears(SoundSource source, Level level) {
        double powerDb = Levels.powerDb(level) + Levels.manyDb(source.count()) - silencedDb(source);
        double distanceM = distanceM(source);
        double directivity = directivity(source);
        double reductionDb = outsideDb(source) + behindDb();
        double dba = powerDb + hall.reachingDb(directivity, distanceM) - reductionDb;
        return new Heard(source, dba, powerDb, distanceM, directivity, reductionDb);
    }

    private double silencedDb(SoundSource source) {
        if (source.insertionLossDb() == 0) {
            return 0;
        }
        AssumedValue share = catalogue.assumed(AIR_PATH_SHARE);
        assumptions.add(share.about(source.part()));
        return Levels.silencedDb(share.si(), source.insertionLossDb());
    }

    private double distanceM(SoundSource source) {
        Optional<Point> ear = room.listener().map(Listener::place);
        Optional<Point> place = source.siting().place();
        OptionalDouble drawn = ear.isPresent() && place.isPresent()
                ? OptionalDouble.of(ear.get().distanceM(place.get()))
                : OptionalDouble.empty();
        return Math.max(
                NEAREST_M,
                given(drawn, catalogue.assumed(LISTENER_DISTANCE), source.part())
                        .si());
    }

    /** Q doubles with each wall, floor or ceiling beside the machine: every textbook of room acoustics, from memory. */
    private double directivity(SoundSource source) {
        if (source.siting().outside() || source.siting().place().isEmpty()) {
            return ON_A_FLOOR;
        }
        Point at = source.siting().place().get();
        return Math.pow(
                2,
                axis(at.xM(), room.shell().lengthM())
                        + axis(at.yM(), room.shell().widthM())
                        + axis(at.zM(), room.shell().heightM()));
    }

    private static int axis(double at, double length) {
        return Math.min(at, length - at) <= BESIDE_M ? 1 : 0;
    }

    /** A machine outside counts as if it stood in the room, less the wall between. */
    private double outsideDb(SoundSource source) {
        if (!source.siting().outside()) {
            return 0;
        }
        if (source.siting().wallDb().isPresent()) {
            return source.siting().wallDb().getAsDouble();
        }
        Between between = new Between(room.shell(), catalogue);
        between.assumed().forEach(value -> assumptions.add(value.about(source.part())));
        return between.assumedDb(source.siting().place());
    }

    private double behindDb() {
        return room.listener()
                .flatMap(Listener::behind)
                .map(Listener.Partition::reductionDb)
                .orElse(0.0);
    }

    private Given given(OptionalDouble typed, AssumedValue otherwise, PartId where) {
        Given given = Given.typedOr(typed, otherwise.given());
        if (given.isAssumed()) {
            assumptions.add(otherwise.about(where));
        }
        return given;
    }

    /** How it was reckoned, for the one who asks. */
    Given absorption() {
        return absorption;
    }

    Hall hall() {
        return hall;
    }

    double together(List<Heard> heard) {
        return Levels.sum(heard.stream().flatMapToDouble(each -> DoubleStream.of(each.dba())));
    }

    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }
}
