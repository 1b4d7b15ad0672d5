package lungfish.siphon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Demand;
import lungfish.demand.Demands;
import lungfish.piping.Piping;
import lungfish.room.Blower;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The rising water beside a slow and obvious model: every pair, over the lowest crest of all ways. */
final class RisingTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    /** Crests are steps of a millimetre. */
    private static final double STEP_M = 1.1e-3;

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    @Property(tries = 150)
    void findsWhatLookingAtEveryPairFinds(@ForAll("rooms") Room room) {
        waterways(room).ifPresent(open -> {
            double[][] crests = crests(open);
            List<Way> ways = new Rising(open).ways();
            for (Waterways.Hung end : open.outlets()) {
                Optional<Way> found = ways.stream()
                        .filter(way -> way.into().part().equals(end.need().id().part()))
                        .findFirst();
                List<Way> all = everyWay(open, crests, end);
                assertThat(found.isPresent()).isEqualTo(!all.isEmpty());
                found.ifPresent(way -> {
                    assertThat(way.start())
                            .isEqualTo(all.stream()
                                    .map(Way::start)
                                    .min(Enum::compareTo)
                                    .orElseThrow());
                    double least = all.stream()
                            .filter(each -> each.start() == way.start())
                            .mapToDouble(each -> Math.max(
                                    each.liftM(), each.crestM() - each.from().lineM()))
                            .min()
                            .orElseThrow();
                    if (way.start() == Way.Start.ONCE_LIFTED) {
                        assertThat(way.liftM()).isEqualTo(least, within(STEP_M));
                    }
                });
            }
        });
    }

    private static Optional<Waterways> waterways(Room room) {
        Demand demand = Demands.of(room, CATALOGUE);
        List<Blower> blowers = room.blowers(Blower.Role.PLANNED);
        return Piping.of(room, demand, blowers, CATALOGUE).map(piped -> PipeWays.of(room, piped, blowers));
    }

    private static List<Way> everyWay(Waterways open, double[][] crests, Waterways.Hung end) {
        Reached into =
                new Reached.ByOutlet(end.need().seat(), end.need().depthM().si());
        return open.outlets().stream()
                .filter(source -> !Leaving.isHeld(source.need().seat().outlet()))
                .flatMap(source -> {
                    Leaving from = Leaving.of(source.need());
                    double crest = Math.max(crests[source.node()][end.node()], into.rimM());
                    boolean falls = from.lineM() > into.lineM() + Rising.LEVEL_M && Double.isFinite(crest);
                    return falls ? Stream.of(new Way(from, into, crest)) : Stream.<Way>empty();
                })
                .toList();
    }

    /** Heights count in whole millimetres: on the edge of running by itself the two must mean the same height. */
    private static double stepped(double heightM) {
        return Math.round(heightM * 1000) / 1000.0;
    }

    /** Floyd and Warshall's sweep, with "the higher of two" for "the sum". */
    private static double[][] crests(Waterways open) {
        int n = open.places().size();
        double[][] crest = new double[n][n];
        for (int i = 0; i < n; i++) {
            Arrays.fill(crest[i], Double.POSITIVE_INFINITY);
            crest[i][i] = stepped(open.places().get(i).zM());
        }
        for (Link link : open.links()) {
            double height = Math.min(crest[link.from()][link.to()], stepped(link.crestM()));
            crest[link.from()][link.to()] = height;
            crest[link.to()][link.from()] = height;
        }
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    crest[i][j] = Math.min(crest[i][j], Math.max(crest[i][k], crest[k][j]));
                }
            }
        }
        return crest;
    }
}
