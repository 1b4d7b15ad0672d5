package lungfish.edit;

import static lungfish.edit.Tried.CATALOGUE;
import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.sentence;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.TankSize;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import org.junit.jupiter.api.Test;

/** In an empty room of 6 by 4 by 2.4 m. */
final class RackDrawingTest {
    private static final Room ROOM = Rooms.empty();
    private static final TankSize SIXTY = CATALOGUE.tankSize("cm-60-30-30").orElseThrow();
    private static final RackTemplate THREE_BY_FOUR = new RackTemplate(3, 4, SIXTY, Optional.of("sponge-medium"));

    private static Rack only(Room room) {
        assertThat(room.racks()).hasSize(1);
        return room.racks().get(0);
    }

    private static Rack drawn(Box box) {
        return only(after(ROOM, RackDrawing.draw(ROOM, THREE_BY_FOUR, box, CATALOGUE.tankSizes())));
    }

    @Test
    void aTemplateIsAsLongAsItsTanksAndGaps() {
        // 4 tanks of 0.6 m, 5 gaps of 0.02 m; 0.3 m of tank and 0.05 m of margin
        assertThat(THREE_BY_FOUR.widthM()).isEqualTo(2.5);
        assertThat(THREE_BY_FOUR.depthM()).isEqualTo(0.35);
    }

    @Test
    void aTemplateBecomesARackWithTanksSideBySide() {
        Rack rack = only(after(ROOM, RackDrawing.add(ROOM, THREE_BY_FOUR, 1, 0.5, Rack.Turn.NONE)));
        assertThat(rack.shelves()).extracting(Shelf::heightM).containsExactly(0.15, 0.7, 1.25); // 0.3 + 0.25 m apart
        assertThat(rack.shelves().get(1).tanks()).extracting(Tank::xM).containsExactly(0.02, 0.64, 1.26, 1.88);
        assertThat(rack.tanks()).extracting(tank -> tank.id().text()).contains("A-1-1", "A-2-3", "A-3-4");
        assertThat(rack.name()).isEqualTo("Rack A");
    }

    @Test
    void nothingIsSaidOfADrawnOutletButItsDevice() {
        Rack rack = only(after(ROOM, RackDrawing.add(ROOM, THREE_BY_FOUR, 1, 0.5, Rack.Turn.NONE)));
        Outlet outlet = rack.shelves().get(0).tanks().get(0).outlets().get(0);
        assertThat(outlet.device()).isEqualTo("sponge-medium");
        assertThat(outlet.flow()).isEqualTo(Outlet.Flow.UNKNOWN);
        assertThat(outlet.depthM()).isEqualTo(OptionalDouble.empty());
        assertThat(List.of(outlet.airline(), outlet.valve(), outlet.checkValve(), outlet.essential(), outlet.tap()))
                .containsOnly(Optional.empty());
    }

    @Test
    void aRectangleIsFilledWithAsManyTanksAsFit() {
        // 2 m hold 3 tanks of 0.6 m with gaps of (2 - 1.8) / 4 = 0.05 m
        Rack rack = drawn(new Box(1, 0, 3, 0.5));
        assertThat(Box.of(rack)).isEqualTo(new Box(1, 0, 3, 0.5));
        assertThat(rack.shelves()).hasSize(3);
        assertThat(rack.shelves().get(0).tanks()).extracting(Tank::xM).containsExactly(0.05, 0.7, 1.35);
    }

    @Test
    void theCeilingLimitsTheShelves() {
        Room low = after(ROOM, RoomEdits.resize(ROOM, 6, 4, 1.3)); // (1.3 - 0.15) / 0.55 = 2.09
        Rack rack = only(after(low, RackDrawing.draw(low, THREE_BY_FOUR, new Box(1, 0, 3, 0.5), List.of())));
        assertThat(rack.shelves()).hasSize(2);
    }

    @Test
    void theBackIsToTheNearerWall() {
        assertThat(drawn(new Box(1, 0, 3, 0.5)).turn()).isEqualTo(Rack.Turn.NONE); // front looks to larger y
        assertThat(drawn(new Box(1, 3.5, 3, 4)).turn()).isEqualTo(Rack.Turn.HALF);
        assertThat(drawn(new Box(0, 1, 0.5, 3)).turn()).isEqualTo(Rack.Turn.THREE_QUARTERS); // front looks to larger x
        assertThat(drawn(new Box(5.5, 1, 6, 3)).turn()).isEqualTo(Rack.Turn.QUARTER);
    }

    @Test
    void theFrontOfARackAtTheRightWallIsOnItsLeft() {
        Rack rack = drawn(new Box(5.5, 1, 6, 3));
        assertThat(rack.at(0, 0, 0).xM()).isEqualTo(5.5);
        assertThat(rack.at(0, rack.depthM(), 0).xM()).isEqualTo(6);
    }

    @Test
    void aSmallRectangleTakesTheLargestTankOfTheTradeThatFits() {
        // 0.5 by 0.3 m: with two gaps of 0.02 m, 0.46 m are left; of the metric sizes that is 45 × 30 × 30 cm
        Rack rack = drawn(new Box(1, 0, 1.5, 0.3));
        assertThat(rack.tanks()).extracting(Tank::outside).containsOnly(new Tank.Size(0.45, 0.3, 0.3));
    }

    @Test
    void aRectangleForNoTankIsRefused() {
        assertThat(sentence(RackDrawing.draw(ROOM, THREE_BY_FOUR, new Box(1, 0, 1.2, 0.1), CATALOGUE.tankSizes())))
                .isEqualTo(
                        "No tank fits on a rack of 20 cm by 10 cm. Draw it larger; it is as deep as a tank is wide.");
    }

    @Test
    void theNextRackHasTheNextLetter() {
        Room one = after(ROOM, RackDrawing.add(ROOM, THREE_BY_FOUR, 1, 0.5, Rack.Turn.NONE));
        Room two = after(one, RackDrawing.add(one, THREE_BY_FOUR, 1, 2, Rack.Turn.NONE));
        assertThat(two.racks()).extracting(Rack::name).containsExactly("Rack A", "Rack B");
    }
}
