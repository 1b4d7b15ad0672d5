package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.sentence;
import static lungfish.edit.Tried.tank;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** Two shelves: tanks 1 (outlets a, b), 2 (outlet c) and, above, 3 (none), 0.3 m of water in each; a main along y = 0.25 m. */
final class OutletEditsTest {
    private static final double L_MIN = 1e-3 / 60;
    private static final OutletId A = new OutletId("a");
    private static final OutletId B = new OutletId("b");
    private static final OutletId C = new OutletId("c");
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.2,
                            aTank("1")
                                    .with(anOutlet("a")
                                            .device("stone-fine")
                                            .valve("ball-small", 0.4)
                                            .airline("airline-4-6", 3)
                                            .sometimes())
                                    .with(anOutlet("b")),
                            aTank("2")
                                    .at(0.7)
                                    .with(anOutlet("c")
                                            .valve("needle-brass", 0.9)
                                            .onRun("main", 1)))
                    .shelf(0.9, aTank("3").waterDepthM(0.2)))
            .with(aMain("main", false, new Point(0, 0.25, 2.2), new Point(4, 0.25, 2.2)))
            .with(new Gang(new GangId("gang"), Gang.Kind.TEES, new Point(1, 1, 1), Optional.empty(), Optional.empty()))
            .build();

    @Test
    void nothingIsKnownOfANewOutletButItsDevice() {
        Room added = after(
                ROOM,
                OutletEdits.add(
                        ROOM,
                        List.of(new TankId("2"), new TankId("3")),
                        CATALOGUE.device("sponge-small").orElseThrow()));
        assertThat(tank(added, "2").outlets())
                .extracting(each -> each.id().text())
                .containsExactly("c", "2-a");
        assertThat(outlet(added, "3-a")).isEqualTo(TankMaker.outlet(new OutletId("3-a"), "sponge-small"));
    }

    @Test
    void aTargetTakesThePlaceOfATurnover() {
        Room turned = after(ROOM, OutletEdits.turnover(ROOM, List.of(A), OptionalDouble.of(0.001)));
        Room targeted = after(turned, OutletEdits.target(turned, List.of(A), OptionalDouble.of(2 * L_MIN)));
        assertThat(outlet(targeted, "a").flow())
                .isEqualTo(new Outlet.Flow(
                        OptionalDouble.empty(),
                        OptionalDouble.of(2 * L_MIN),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
    }

    @Test
    void aTargetAboveTheMostIsRefused() {
        Room most = after(ROOM, OutletEdits.most(ROOM, List.of(A), OptionalDouble.of(L_MIN)));
        assertThat(sentence(OutletEdits.target(most, List.of(A), OptionalDouble.of(2 * L_MIN))))
                .isEqualTo(
                        "Outlet a: its target, 2.00 L/min, would be more than its most, 1.00 L/min. Change one of the"
                                + " two.");
    }

    @Test
    void aReleaseBelowTheGlassIsRefused() {
        assertThat(sentence(OutletEdits.depthM(ROOM, List.of(A), OptionalDouble.of(0.31))))
                .startsWith(
                        "Outlet a would let its air out 31 cm below the water line, where the water of tank 1 is 30 cm"
                                + " deep.");
        assertThat(outlet(after(ROOM, OutletEdits.depthM(ROOM, List.of(A), OptionalDouble.empty())), "a")
                        .depthM())
                .isEmpty();
    }

    @Test
    void aNewValveHasNoSettingAndTheSameOneKeepsIts() {
        assertThat(outlet(after(ROOM, DropEdits.valve(ROOM, List.of(C), CATALOGUE.valve("ball-small"))), "c")
                        .valve())
                .hasValue(new Outlet.Valve("ball-small", OptionalDouble.empty()));
        assertThat(after(ROOM, DropEdits.valve(ROOM, List.of(C), CATALOGUE.valve("needle-brass"))))
                .isEqualTo(ROOM);
    }

    @Test
    void anAirlineOfWhichNothingIsSaidIsNone() {
        Room room = after(ROOM, DropEdits.airlineLength(ROOM, List.of(A), OptionalDouble.empty()));
        assertThat(outlet(room, "a").airline())
                .hasValue(new Outlet.Airline(Optional.of("airline-4-6"), OptionalDouble.empty()));
        assertThat(outlet(after(room, DropEdits.airline(room, List.of(A), Optional.empty())), "a")
                        .airline())
                .isEmpty();
    }

    @Test
    void everyTankOnAShelfBecomesAlike() {
        Room alike = after(ROOM, Alike.onShelf(ROOM, new TankId("1")));
        Outlet c = outlet(alike, "c");
        assertThat(c.device()).isEqualTo("stone-fine");
        assertThat(c.use()).isEqualTo(Outlet.Use.SOMETIMES);
        assertThat(c.tap()).as("its own").hasValue(new Outlet.OnRun(new RunId("main"), 1));
        assertThat(c.valve())
                .as("another kind: not set yet")
                .hasValue(new Outlet.Valve("ball-small", OptionalDouble.empty()));
        assertThat(c.airline().orElseThrow().lengthM())
                .as("measured, as before")
                .isEmpty();
        assertThat(tank(alike, "2").outlets())
                .extracting(Outlet::device)
                .containsExactly("stone-fine", "sponge-medium");
        assertThat(tank(alike, "3")).isEqualTo(tank(ROOM, "3"));
    }

    @Test
    void everyTankInARackBecomesAlikeAboveItsOwnBottom() {
        // 0.05 m above the bottom: 0.15 m deep in 0.2 m of water
        Room alike = after(ROOM, Alike.onRack(ROOM, new TankId("1")));
        assertThat(tank(alike, "3").outlets()).extracting(Outlet::depthM).containsOnly(OptionalDouble.of(0.15));
    }

    @Test
    void surplusOutletsGo() {
        Room alike = after(ROOM, Alike.onShelf(ROOM, new TankId("2")));
        assertThat(tank(alike, "1").outlets())
                .extracting(each -> each.id().text())
                .containsExactly("a");
    }

    @Test
    void outletsHangWhereTheyAreHung() {
        Room hung = after(ROOM, TapEdits.hang(ROOM, List.of(A, B), new Outlet.OnRun(new RunId("main"), 9)));
        assertThat(outlet(hung, "b").tap()).as("the pipe is 4 m long").hasValue(new Outlet.OnRun(new RunId("main"), 4));
        Room ganged = after(ROOM, TapEdits.hang(ROOM, List.of(A), new GangId("gang")));
        assertThat(outlet(ganged, "a").tap()).hasValue(new Outlet.OnGang(new GangId("gang")));
        assertThat(outlet(after(ROOM, TapEdits.nearest(ROOM, List.of(C))), "c").tap())
                .isEmpty();
        assertThat(TapEdits.hang(ROOM, List.of(A), new GangId("none")).refused())
                .isPresent();
    }

    @Test
    void aPinnedTapIsTheNearestPointOfNow() {
        // outlet b is the second of two over 0.6 m: at 0.4 m, in the middle of the rack's depth, under the main
        Room pinned = after(ROOM, TapEdits.pin(ROOM, List.of(B, C)));
        assertThat(outlet(pinned, "b").tap()).hasValue(new Outlet.OnRun(new RunId("main"), 0.4));
        assertThat(outlet(pinned, "c")).isEqualTo(outlet(ROOM, "c"));
    }

    @Test
    void aNewGangTakesItsOutlets() {
        Room ganged = after(ROOM, TapEdits.gang(ROOM, List.of(A, B), Gang.Kind.GANG_VALVE, new Point(0.3, 0.3, 1)));
        assertThat(ganged.gangs()).extracting(gang -> gang.id().text()).containsExactly("gang", "gang-2");
        assertThat(outlet(ganged, "b").tap()).hasValue(new Outlet.OnGang(new GangId("gang-2")));
        assertThat(ganged.gangs().get(1).tap()).isEmpty();
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(OutletEdits.use(ROOM, List.of(A), Outlet.Use.ALWAYS)).done())
                .isEqualTo("Set the use of outlet a");
        assertThat(done(TapEdits.nearest(ROOM, List.of(A, B))).done()).isEqualTo("Hang on the nearest pipe: 2 outlets");
        assertThat(done(Alike.onRack(ROOM, new TankId("1"))).done()).isEqualTo("Same outlets on the rack of tank 1");
    }
}
