package lungfish.headroom;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.FreeAir;
import lungfish.blower.Accessories;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.demand.Demands;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.piping.PipedRoom;
import lungfish.piping.Piping;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.TankBuilder;
import lungfish.sizing.Asked;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;
import lungfish.sizing.Needs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SearchTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final Asked ASKED = asked(400);

    private final PipedRoom room = piped();

    private static Asked asked(double warmestPipeK) {
        return new Asked(0, 0, OptionalDouble.empty(), warmestPipeK, OptionalDouble.empty(), List.of());
    }

    private static PipedRoom piped() {
        TankBuilder tank = aTank("A-1");
        for (int i = 0; i < 8; i++) {
            tank.with(anOutlet("a" + i).targetM3PerS(L_PER_MIN).depthM(0.2 + 0.01 * i));
        }
        Room room = aRoom().with(aRack("A").shelf(0.9, tank))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").at(0.2, 0.2, 2.1))
                .build();
        return Piping.of(room, Demands.of(room, CATALOGUE), room.blowers(Blower.Role.PLANNED), CATALOGUE)
                .orElseThrow();
    }

    private static Fleet fleet(String kind) {
        Machine machine = new Machine(
                kind,
                new PartId(PartId.Kind.BLOWER, "central"),
                CATALOGUE.blower(kind).orElseThrow(),
                1,
                Accessories.NONE,
                OptionalDouble.empty());
        return new Fleet(
                List.of(new Fleet.Placed(machine, "blower central")), new Blower.Unsaid(), FreeAir.at(0, 297.15));
    }

    private Needed needed(Fleet fleet) {
        return Needs.of(room, fleet, Upkeep.DUE, needed -> needed, refused -> {
            throw new AssertionError(refused.reason());
        });
    }

    private Headroom found(Fleet fleet) {
        Needed needed = needed(fleet);
        return new Search(room, fleet, needed, ASKED, running -> Optional.empty(), Newcomer.commonest(room.needs()))
                .find(needed, 0);
    }

    /** The slow and obvious way: hang on as many real drops, and ask whether the tired blower still gives the air. */
    private boolean fits(Fleet fleet, int more) {
        Needed needed = needed(fleet);
        Network network = needed.tuned().network();
        Drop pattern = network.drops().get(7);
        String node = network.drops().get(needed.tuned().indexDrop()).node();
        List<Drop> drops = new ArrayList<>(network.drops());
        for (int i = 0; i < more; i++) {
            drops.add(new Drop(
                    "more " + i,
                    node,
                    pattern.valveKOpen(),
                    pattern.valveKOpen(),
                    pattern.airline(),
                    pattern.check(),
                    pattern.device(),
                    pattern.depthM(),
                    pattern.targetM3PerS()));
        }
        Tuned tuned = (Tuned) Solver.of(network.withDrops(drops)).tuned();
        double pa = tuned.requiredGaugePa();
        return fleet.freeAt(pa, Wear.TIRED) >= tuned.totalFreeM3PerS() && pa <= fleet.continuousPa();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linear-diaphragm-15", "linear-piston-40", "linear-piston-80", "side-channel-100"})
    void theCountIsTheLastThatStillFitsWhenEveryOutletIsReallyHungOn(String kind) {
        Fleet fleet = fleet(kind);

        int outlets = found(fleet).outlets();

        assertThat(fits(fleet, outlets)).isTrue();
        assertThat(fits(fleet, outlets + 1)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linear-piston-40"})
    void theFirstLimitOfAFurtherKindStopsTheCount(String kind) {
        Fleet fleet = fleet(kind);
        Needed needed = needed(fleet);
        Search search = new Search(
                room,
                fleet,
                needed,
                ASKED,
                running -> running.bledM3PerS() < 20 * L_PER_MIN
                        ? Optional.of(Limit.RUNTIME.broken(1, 2))
                        : Optional.empty(),
                Newcomer.commonest(room.needs()));

        Headroom headroom = search.find(needed, 0);

        assertThat(headroom.limit()).map(Limit.Broken::limit).contains(Limit.RUNTIME);
        assertThat(headroom.outlets()).isLessThan(found(fleet).outlets());
    }

    /** Dry air at 24 °C pressed from 101.3 kPa by 3 kPa warms by 297 K · ((104.3 / 101.3)^(2/7) - 1) = 2.5 K. */
    @Test
    void aPipeThatBearsNoWarmthLeavesNothing() {
        Fleet fleet = fleet("linear-piston-40");
        Needed needed = needed(fleet);

        Headroom headroom = new Search(
                        room, fleet, needed, asked(298), running -> Optional.empty(), Newcomer.commonest(room.needs()))
                .find(needed, 0);

        assertThat(headroom.outlets()).isZero();
        assertThat(headroom.limit()).map(Limit.Broken::limit).contains(Limit.HEAT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"small-diaphragm-2"})
    void aBlowerThatIsShortAlreadyLeavesNothing(String kind) {
        Headroom headroom = found(fleet(kind));

        assertThat(headroom.outlets()).isZero();
        assertThat(headroom.freeM3PerS()).isNegative();
        assertThat(headroom.limit()).map(Limit.Broken::limit).contains(Limit.FLOW);
    }

    @Test
    void aSearchThatTakesOtherNumbersFindsWhatOneOfThatRoomFinds() {
        Fleet weak = fleet("linear-piston-40");
        Fleet strong = fleet("side-channel-100");
        Search search = new Search(
                room, weak, needed(weak), ASKED, running -> Optional.empty(), Newcomer.commonest(room.needs()));

        search.use(needed(strong).tuned().network(), strong);

        assertThat(search.find(needed(strong), 0)).isEqualTo(found(strong));
    }
}
