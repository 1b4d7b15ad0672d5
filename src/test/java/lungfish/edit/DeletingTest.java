package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.blower;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.outlet;
import static lungfish.edit.Tried.run;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

final class DeletingTest {
    private static final RunId LOOP = new RunId("loop");
    private static final Room ROOM = aRoom().with(aRack("A")
                    .shelf(
                            0.9,
                            aTank("A-1").with(anOutlet("a").onRun("loop", 1)),
                            aTank("A-2").at(0.7).with(anOutlet("b").onGang("gang"))))
            .with(aMain("loop", true, at(0.2, 0.2), at(4, 0.2), at(4, 3), at(0.2, 3)))
            .with(new Gang(
                    new GangId("gang"),
                    Gang.Kind.GANG_VALVE,
                    at(1, 0.2),
                    Optional.of(new Outlet.OnRun(LOOP, 2)),
                    Optional.empty()))
            .with(aBlower("central").feeds("loop", 0.5))
            .with(aBlower("hum").today("a", "b"))
            .with(new Stirrer(
                    new StirrerId("s"),
                    new TankId("A-1"),
                    Stirrer.Kind.POWERHEAD,
                    OptionalDouble.empty(),
                    Optional.empty()))
            .build();

    private static Point at(double xM, double yM) {
        return new Point(xM, yM, 2.2);
    }

    private static Room without(Part... parts) {
        return after(ROOM, Deleting.of(ROOM, Selection.of(parts)));
    }

    @Test
    void aDeletedPipeLeavesNoTapBehind() {
        Room room = without(Part.run(LOOP));
        assertThat(room.runs()).isEmpty();
        assertThat(outlet(room, "a").tap()).isEmpty();
        assertThat(room.gangs().get(0).tap()).isEmpty();
        assertThat(blower(room, "central").feeds()).isEmpty();
    }

    @Test
    void aDeletedRackTakesItsOutletsOffThePumpsAndItsTanksOffTheStirrers() {
        Room room = without(Part.rack(new RackId("A")));
        assertThat(room.racks()).isEmpty();
        assertThat(blower(room, "hum").serves()).isEmpty();
        assertThat(room.stirrers()).isEmpty();
    }

    @Test
    void aDeletedOutletLeavesTheOthersToThePump() {
        assertThat(blower(without(Part.outlet(new OutletId("a"))), "hum").serves())
                .containsExactly(new OutletId("b"));
    }

    @Test
    void anOutletOfADeletedGangLeavesThePipeAtTheNearestPoint() {
        assertThat(outlet(without(Part.gang(new GangId("gang"))), "b").tap()).isEmpty();
    }

    @Test
    void aDeletedTapIsTheNearestPointAgain() {
        Room room = without(Part.tap(new OutletId("a")));
        assertThat(outlet(room, "a").tap()).isEmpty();
        assertThat(Find.outlets(room)).hasSize(2);
    }

    @Test
    void aLoopLosesACornerThenOpensThenGoes() {
        Room three = without(Part.corner(LOOP, 2));
        assertThat(run(three, "loop").points()).containsExactly(at(0.2, 0.2), at(4, 0.2), at(0.2, 3));
        assertThat(run(three, "loop").closed()).isTrue();
        Room two = without(Part.corner(LOOP, 2), Part.corner(LOOP, 3));
        assertThat(run(two, "loop").closed()).isFalse();
        Room gone = without(Part.corner(LOOP, 1), Part.corner(LOOP, 2), Part.corner(LOOP, 3));
        assertThat(gone.runs()).isEmpty();
        assertThat(outlet(gone, "a").tap()).isEmpty();
    }

    @Test
    void nothingChosenIsRefused() {
        assertThat(sentence(Deleting.of(ROOM, Selection.NONE))).isEqualTo("Nothing is chosen. Choose what to delete.");
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(Deleting.of(ROOM, Selection.of(Part.tank(new TankId("A-1")), Part.tank(new TankId("A-2")))))
                        .done())
                .isEqualTo("Delete 2 tanks");
        assertThat(done(Deleting.of(ROOM, Selection.of(Part.run(LOOP)))).done()).isEqualTo("Delete pipe loop");
    }
}
