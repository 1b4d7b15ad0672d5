package lungfish.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.SceneParts.OutletPart;
import lungfish.drawing.SceneParts.TapPart;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.room.RackId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Places are read from the room files: in basement-rainbows rack A stands at 0.40, 0.05 m, 1.2192 m wide, 0.5334 deep. */
final class RoomSceneTest {
    private static final double REACH_M = 0.02;
    private static final double SOLVED_PERCENT = 1e-4;
    private static final Plan BASEMENT = DemoPlans.plan("basement-rainbows");
    private static final RoomScene SCENE = RoomScene.of(BASEMENT, Shown.AS_IT_SHOULD_BE_SET);

    static List<String> demos() {
        return DemoPlans.names().toList();
    }

    /** The lowest shelf is the last strip, y 0.406 to 0.583; its only tank is 1.2192 m shelf's first. */
    @Test
    void theLowestShelfIsTheLastStrip() {
        PartId tank = DemoPlans.room("basement-rainbows")
                .racks()
                .get(0)
                .shelves()
                .get(0)
                .tanks()
                .get(0)
                .id()
                .part();
        assertThat(SCENE.at(0.46, 0.55, REACH_M))
                .get()
                .extracting(Hit::kind, Hit::part)
                .containsExactly(Hit.Kind.TANK, tank);
    }

    /** The top shelf's last tank ends at 0.842 + 0.25 m, so that the strip's end is bare. */
    @Test
    void besideTheTanksIsTheRack() {
        assertThat(SCENE.at(1.60, 0.12, REACH_M))
                .get()
                .extracting(Hit::kind, Hit::part)
                .containsExactly(Hit.Kind.RACK, new RackId("A").part());
    }

    /** The loop's first fitting is a union, 1 m from its start. */
    @Test
    void aFittingIsFoundBeforeItsPipe() {
        var loop = DemoPlans.room("basement-rainbows").runs().get(0);
        var at = loop.at(loop.fittings().get(0).atM());
        assertThat(SCENE.at(at.xM(), at.yM(), REACH_M))
                .get()
                .extracting(Hit::kind, Hit::part, Hit::number)
                .containsExactly(Hit.Kind.FITTING, loop.id().part(), 0);
    }

    @Test
    void doorsAndInnerWallsAreFoundByTheirNumber() {
        var shell = DemoPlans.room("basement-rainbows").shell();
        var door = shell.doors().get(0);
        assertThat(SCENE.at(door.xM() + door.widthM() / 2, door.yM(), REACH_M))
                .get()
                .extracting(Hit::kind, Hit::number)
                .containsExactly(Hit.Kind.DOOR, 0);
        var wall = shell.walls().get(1);
        assertThat(SCENE.at((wall.fromXM() + wall.toXM()) / 2, (wall.fromYM() + wall.toYM()) / 2, REACH_M))
                .get()
                .extracting(Hit::kind, Hit::number)
                .containsExactly(Hit.Kind.WALL, 1);
    }

    /** The loop's western side runs at x 0.20 m; no rack is near. */
    @Test
    void thePipeIsFoundWithinReachOnly() {
        assertThat(SCENE.at(0.21, 1.1, REACH_M)).get().extracting(Hit::kind).isEqualTo(Hit.Kind.RUN);
        assertThat(SCENE.at(0.30, 1.1, REACH_M)).isEmpty();
    }

    @Test
    void theListenerIsAtTheDesk() {
        assertThat(SCENE.at(6.4, 3.3, REACH_M)).get().extracting(Hit::kind).isEqualTo(Hit.Kind.LISTENER);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyOutletIsFoundWhereItIsDrawn(String demo) {
        RoomScene scene = RoomScene.of(DemoPlans.plan(demo), Shown.AS_IT_IS_SET);
        for (OutletPart outlet : scene.outlets()) {
            assertThat(scene.at(outlet.xM(), outlet.yM(), 0.001)).map(Hit::part).contains(outlet.part());
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyOutletInPlaceHangsOnOneTap(String demo) {
        RoomScene scene = RoomScene.of(DemoPlans.plan(demo), Shown.AS_IT_SHOULD_BE_SET);
        List<PartId> hung =
                scene.taps().stream().flatMap(tap -> tap.hangs().stream()).toList();
        List<PartId> inPlace = scene.outlets().stream()
                .filter(outlet -> !outlet.seat().planned())
                .map(OutletPart::part)
                .toList();
        assertThat(hung).containsExactlyInAnyOrderElementsOf(inPlace);
    }

    static Stream<Arguments> demosInBothTrials() {
        return demos().stream().flatMap(demo -> Stream.of(Shown.values()).map(shown -> Arguments.of(demo, shown)));
    }

    @ParameterizedTest
    @MethodSource("demosInBothTrials")
    void theShortestToothIsTheIndexOutlets(String demo, Shown shown) {
        RoomScene scene = RoomScene.of(DemoPlans.plan(demo), shown);
        double least = scene.taps().stream()
                .mapToDouble(tap -> tap.sparePa().orElse(0))
                .min()
                .orElse(0);
        assertThat(scene.taps().stream().filter(TapPart::index))
                .singleElement()
                .satisfies(tap -> assertThat(tap.sparePa().orElse(-1)).isEqualTo(least));
    }

    /** Whatever the air does on its way, the bubbles where a loop is fed are those of all outlets behind. */
    @ParameterizedTest
    @EnumSource(Shown.class)
    void bubblesAndOutletsAreOfTheSameTrial(Shown shown) {
        Plan plan = DemoPlans.plan("starting-out");
        RoomScene scene = RoomScene.of(plan, shown);
        double carried = scene.stretches().stream()
                .mapToDouble(stretch -> Math.abs(stretch.freeM3PerS()))
                .max()
                .orElseThrow();
        double taken = plan.outlets().stream()
                .mapToDouble(outlet -> shown == Shown.AS_IT_IS_SET
                        ? outlet.asSet().orElseThrow().freeM3PerS()
                        : outlet.predictedM3PerS().orElseThrow())
                .sum();
        assertThat(carried).isCloseTo(taken, withinPercentage(SOLVED_PERCENT));
    }

    @Test
    void outletsOfPlannedRacksArePlanned() {
        assertThat(SCENE.outlets().stream().filter(outlet -> outlet.seat().planned()))
                .isNotEmpty()
                .allMatch(outlet -> outlet.state() == OutletState.PLANNED);
    }

    /** The garage's listener sits in the kitchen, at x 7.2 of a room of 6 m. */
    @Test
    void whatStandsOutsideTheRoomIsInsideThePicture() {
        RoomScene scene = RoomScene.of(DemoPlans.room("garage-killifish"));
        assertThat(scene.boundsM().getMaxX()).isEqualTo(7.2);
    }

    @Test
    void anEmptyRoomHasNothingUnderThePointer() {
        RoomScene scene = RoomScene.of(EmptyRooms.like(DemoPlans.room("starting-out")));
        assertThat(scene.at(1, 1, REACH_M)).isEqualTo(Optional.empty());
        assertThat(Pictures.room(scene, 320, 200, Look.light(scene.room().displayUnits()))
                        .getWidth())
                .isEqualTo(320);
    }

    @Test
    void aDeviceIsFoundAtItsDepth() {
        Room room = BASEMENT.room();
        RackScene front = RackScene.of(SCENE, room.racks().get(0).id()).orElseThrow();
        // Lowest shelf 0.1524 m above the floor; its tank's first outlet is a third along the tank.
        RackScene.FrontOutlet first = front.outlets().get(0);
        double depthM = BASEMENT.outlets().get(0).need().depthM().si();
        double waterM = room.racks().get(0).shelves().get(0).tanks().get(0).waterDepthM();
        double lengthM =
                room.racks().get(0).shelves().get(0).tanks().get(0).outside().lengthM();
        assertThat(front.at(0.02 + lengthM / 3, -(0.1524 + waterM - depthM), REACH_M))
                .get()
                .extracting(Hit::kind, Hit::part)
                .containsExactly(Hit.Kind.OUTLET, first.outlet().part());
    }
}
