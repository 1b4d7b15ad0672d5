package lungfish.growth;

import static lungfish.plan.DemoPlans.CATALOGUE;
import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.edit.BlowerEdits;
import lungfish.headroom.Newcomer;
import lungfish.plan.Basis;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.OwnClasses;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shelf;
import lungfish.room.Shell;
import lungfish.room.TankBuilder;
import lungfish.room.TankId;
import lungfish.sizing.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class HeadroomMapTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final Planner PLANNER = new Planner(CATALOGUE);

    private static HeadroomMap map(Room room, NewKind kind) {
        return Mapping.of(PLANNER, room, kind, Progress.UNHEARD).orElseThrow();
    }

    /** A machine that never tires and gives the same air up to a pressure, and soon after it none. */
    private static OwnClasses flat(double litresPerMin, double upToPa) {
        double flow = litresPerMin * L_PER_MIN;
        BlowerClass like = CATALOGUE.blower("linear-piston-80").orElseThrow();
        return new OwnClasses(
                List.of(),
                List.of(new BlowerClass(
                        "flat",
                        "Flat",
                        like.kind(),
                        flow,
                        upToPa,
                        List.of(
                                new CurvePoint(0, flow, 50),
                                new CurvePoint(upToPa, flow, 60),
                                new CurvePoint(upToPa + 1, 0, 60)),
                        1e6,
                        Optional.empty(),
                        like.portM(),
                        100,
                        100,
                        10,
                        1e8,
                        1e9,
                        1,
                        0,
                        0.3,
                        1,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        "made for a test")));
    }

    /** Outlets of 1 L/min each, 0.3 m deep, on a wide main; and 20 m of the thinnest pipe that leads to nothing. */
    private static Room room(int outlets, OwnClasses own) {
        TankBuilder tank = aTank("A-1").waterDepthM(0.35);
        for (int i = 0; i < outlets; i++) {
            tank.with(anOutlet("a" + i)
                    .targetM3PerS(L_PER_MIN)
                    .depthM(0.3)
                    .airline("airline-4-6", 1)
                    .onRun("main", 1));
        }
        Run main =
                aMain("main", false, new Point(0, 1, 2.2), new Point(4, 1, 2.2)).sized("pvc-u-63-pn10");
        Run thin = aMain("thin", false, new Point(4, 1, 2.2), new Point(4, 21, 2.2))
                .sized("pvc-u-16-pn16");
        return aRoom().with(new Shell(10, 25, 2.5, OptionalDouble.empty(), List.of(), List.of()))
                .with(aRack("A").shelf(0.9, tank))
                .with(main)
                .with(thin)
                .with(aBlower("central").machine("flat").at(0, 1, 2.1).bleed(new Blower.BledTo(OptionalDouble.empty())))
                .with(own)
                .build();
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void atTheTapOfTheWorstServedItIsTheHeadline(String demo) {
        Plan plan = DemoPlans.plan(demo);
        var index = plan.duty().orElseThrow().needed().tuned();
        var spot = plan.piped()
                .orElseThrow()
                .spots()
                .get(index.network().drops().get(index.indexDrop()).node());

        HeadroomMap map = map(plan.room(), NewKind.COMMONEST);

        assertThat(map.places())
                .filteredOn(place -> spot != null && place.at().distanceM(spot.place()) < 0.001)
                .isNotEmpty()
                .allMatch(place ->
                        place.outlets() == plan.headroom().orElseThrow().outlets());
    }

    /** 5 outlets take 5 L/min of the 20.5 that the machine gives at any pressure: 15 more, wherever they hang on the main. */
    @Test
    void airAloneCountsTheSameEverywhere() {
        HeadroomMap map = map(room(5, flat(20.5, 90_000)), NewKind.COMMONEST);

        assertThat(map.places()).allMatch(place -> place.outlets() == 15);
        assertThat(map.placeMatters()).isFalse();
    }

    /** A large sponge filter typically takes 3 L/min (devices.csv): of the 15.5 L/min left, 5 are fed. */
    @Test
    void anotherKindTakesItsTypicalAir() {
        NewKind large = new NewKind(Optional.of("sponge-large"), OptionalDouble.empty());

        HeadroomMap map = map(room(5, flat(20.5, 90_000)), large);

        assertThat(map.places()).allMatch(place -> place.outlets() == 5);
    }

    /**
     * Laminar flow in 20 m of 12.6 mm bore: 128 · 1.83e-5 Pa s · 20 m / (π · (0.0126 m)⁴) = 5.92e5 Pa s/m³, 9.9 Pa for each
     * L/min. The machine has 150 Pa to spare, so at the end of it 15 outlets would do, less one or two for tees and the
     * density of the air; on the main the 100.5 L/min feed 98 more than the 2 that are there.
     */
    @Test
    void atTheEndOfAThinPipePressureStopsWhatAirWouldAllow() {
        Basis now = PLANNER.basis(room(2, flat(100.5, 90_000))).orElseThrow();
        HeadroomMap map = map(room(2, flat(100.5, now.needed().pressurePa() + 150)), NewKind.COMMONEST);

        Place end = map.places().stream()
                .filter(place -> place.at().yM() > 20.99)
                .findFirst()
                .orElseThrow();

        assertThat(end.outlets()).isBetween(13, 15);
        assertThat(end.fits().limit()).map(Limit.Broken::limit).contains(Limit.PRESSURE);
        assertThat(map.best()).map(Place::outlets).contains(98);
        assertThat(map.best()).map(place -> place.run().text()).contains("main");
        assertThat(map.placeMatters()).isTrue();
    }

    @Test
    void alongADeadEndNoPlaceIsBetterThanOneNearerToTheBlower() {
        Basis now = PLANNER.basis(room(2, flat(100.5, 90_000))).orElseThrow();
        HeadroomMap map = map(room(2, flat(100.5, now.needed().pressurePa() + 150)), NewKind.COMMONEST);

        List<Integer> counts = map.places().stream()
                .filter(place -> place.run().text().equals("thin"))
                .sorted(Comparator.comparingDouble(Place::alongM))
                .map(Place::outlets)
                .toList();

        assertThat(counts).isSortedAccordingTo(Comparator.reverseOrder()).hasSizeGreaterThan(35);
    }

    /** Deeper by 0.1 m is 978 Pa more (ρ g at 24 °C): more than the 150 Pa that the machine has to spare. */
    @Test
    void whatIsDeeperThanThePressureAllowsDoesNotFit() {
        Basis now = PLANNER.basis(room(2, flat(100.5, 90_000))).orElseThrow();
        NewKind deep = new NewKind(Optional.empty(), OptionalDouble.of(0.4));

        HeadroomMap map = map(room(2, flat(100.5, now.needed().pressurePa() + 150)), deep);

        assertThat(map.most()).isZero();
        assertThat(map.places().get(0).fits().limit()).map(Limit.Broken::limit).contains(Limit.PRESSURE);
    }

    private static Room hungOn(Room room, HeadroomMap map, Place place, int many, double airlineM) {
        Newcomer like = map.newcomer();
        Outlet pattern = like.like().seat().outlet();
        List<Outlet> more = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            more.add(new Outlet(
                    new OutletId("more-" + i),
                    pattern.device(),
                    new Outlet.Flow(
                            OptionalDouble.empty(),
                            OptionalDouble.of(like.targetM3PerS()),
                            OptionalDouble.empty(),
                            OptionalDouble.empty()),
                    OptionalDouble.of(like.depthM()),
                    Optional.of(new Outlet.Airline(
                            pattern.airline().flatMap(Outlet.Airline::size), OptionalDouble.of(airlineM))),
                    pattern.valve(),
                    pattern.checkValve(),
                    pattern.use(),
                    Optional.empty(),
                    Optional.of(new Outlet.OnRun(place.run(), place.alongM()))));
        }
        return into(room, like.like().seat().tank().id(), more);
    }

    private static Room into(Room room, TankId id, List<Outlet> more) {
        return room.withRacks(room.racks().stream()
                .map((Rack rack) -> rack.withShelves(rack.shelves().stream()
                        .map((Shelf shelf) -> shelf.withTanks(shelf.tanks().stream()
                                .map(tank -> tank.id().equals(id)
                                        ? tank.withOutlets(Stream.concat(tank.outlets().stream(), more.stream())
                                                .toList())
                                        : tank)
                                .toList()))
                        .toList()))
                .toList());
    }

    private static boolean carries(Room room) {
        return PLANNER.plan(room).duty().orElseThrow().candidate().broken().stream()
                .allMatch(broken -> broken.limit() == Limit.RESERVE);
    }

    /** Not the map's own way: real outlets in the room, the whole room planned anew. */
    @ParameterizedTest
    @ValueSource(strings = {"garage-killifish", "basement-rainbows"})
    void soManyRealOutletsFitAndOneMoreBreaks(String demo) {
        Room drawn = DemoPlans.room(demo);
        HeadroomMap map = map(drawn, NewKind.COMMONEST);
        Room room = BlowerEdits.settle(map.candidate().kind()).of(drawn);
        var piped = PLANNER.basis(room).orElseThrow().piped();
        int pattern = piped.needs().stream()
                .map(need -> need.id())
                .toList()
                .indexOf(map.newcomer().like().id());
        double airlineM = piped.airlineM().get(pattern);
        for (int i = 1; i < map.places().size(); i += 25) {
            Place place = map.places().get(i);

            assertThat(carries(hungOn(room, map, place, place.outlets(), airlineM)))
                    .as("%s at %s", place.outlets(), place)
                    .isTrue();
            assertThat(carries(hungOn(room, map, place, place.outlets() + 1, airlineM)))
                    .as("one more than %s at %s", place.outlets(), place)
                    .isFalse();
        }
    }

    @Test
    void everyPieceOfPipeButTheRiserLiesBetweenTwoPlaces() {
        HeadroomMap map = map(DemoPlans.room("basement-rainbows"), NewKind.COMMONEST);

        assertThat(map.spans())
                .allMatch(span -> span.from() < map.places().size()
                        && span.to() < map.places().size());
        assertThat(map.spans()).allMatch(span -> span.toM() - span.fromM() <= 0.51);
        double drawnM = DemoPlans.room("basement-rainbows").runs().stream()
                .filter(run -> run.role() != Run.Role.RISER)
                .mapToDouble(Run::lengthM)
                .sum();
        assertThat(map.spans().stream()
                        .mapToDouble(span -> span.toM() - span.fromM())
                        .sum())
                .isEqualTo(drawnM, offset(0.01));
    }

    @Test
    void aPlannedRackThatFitsLeavesTheRest() {
        HeadroomMap map = map(DemoPlans.room("basement-rainbows"), NewKind.COMMONEST);

        // 26.5 L/min are left; the wall takes 6 × 2.5; of the 11.5 left, 7 outlets of 1.5 L/min are fed
        assertThat(map.racks().get(0)).satisfies(wall -> {
            assertThat(wall.outlets()).isEqualTo(6);
            assertThat(wall.fits()).isTrue();
            assertThat(wall.own().outlets()).isEqualTo(7);
            assertThat(wall.best()).isEmpty();
        });
    }

    @Test
    void itStopsWhereItIsNoLongerWanted() {
        Progress stopped = (done, of) -> {
            if (done > 5) {
                throw new CancellationException();
            }
        };
        assertThatThrownBy(() -> Mapping.of(PLANNER, DemoPlans.room("basement-rainbows"), NewKind.COMMONEST, stopped))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void aRoomWithoutPipeHasNoMap() {
        assertThat(Mapping.of(PLANNER, aRoom().build(), NewKind.COMMONEST, Progress.UNHEARD))
                .isEmpty();
    }
}
