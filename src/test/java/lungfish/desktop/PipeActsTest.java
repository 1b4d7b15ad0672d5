package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.edit.Attempt;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Seat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the menu and the fields do to chosen pipe, valves, taps and machines: the garage, in metric units. */
final class PipeActsTest {
    private static final double ROUNDING_M = 1e-9;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
    }

    private Room room() {
        return bench.desk().room();
    }

    private Run loop() {
        return room().runs().get(0);
    }

    private void choose(Part... parts) {
        bench.pane().view().select(Selection.of(parts));
    }

    private void act(String name) {
        new RoomHand(bench).act(name);
    }

    /** Types an amount into a field of what is chosen. */
    private void type(String label, double si) {
        Property.Amount field = (Property.Amount) properties().stream()
                .filter(each -> each.label().equals(label))
                .findFirst()
                .orElseThrow();
        apply(field.say().apply(room(), OptionalDouble.of(si)));
    }

    private List<Property> properties() {
        return Properties.of(bench.pane().view(), bench.pane().view().selection());
    }

    private void apply(Attempt attempt) {
        bench.desk().apply(attempt.edit().orElseThrow());
    }

    private List<String> labels() {
        return properties().stream().map(Property::label).toList();
    }

    @Test
    void aLoopIsOpenedAndClosed() {
        boolean closed = loop().closed();
        choose(Part.run(loop().id()));
        act("Close or open the loop");
        assertThat(loop().closed()).isEqualTo(!closed);
        act("Close or open the loop");
        assertThat(loop().closed()).isEqualTo(closed);
    }

    @Test
    void whatIsDoneToOnePipeSaysSoWhereNoneIsChosen() {
        choose();
        act("Insert a corner");
        assertThat(bench.pane().view().said()).hasValue("That is done to one pipe. Click on it first.");
        act("Tie two pipes");
        assertThat(bench.pane().view().said().orElseThrow()).startsWith("A tie joins two pipes.");
    }

    @Test
    void outletsAreHungOnOneGangAndBackToTheNearestPlace() {
        Seat one = room().seats().get(0);
        Seat other = room().seats().get(1);
        choose(Part.outlet(one.outlet().id()), Part.outlet(other.outlet().id()));
        int gangs = room().gangs().size();
        act("Hang on one gang valve");
        assertThat(room().gangs()).hasSize(gangs + 1);
        assertThat(room().seats().subList(0, 2))
                .allMatch(seat -> seat.outlet().tap().orElseThrow() instanceof Outlet.OnGang);
        choose(Part.outlet(one.outlet().id()));
        act("Tap back to the nearest place");
        assertThat(room().seats().get(0).outlet().tap()).isEmpty();
    }

    @Test
    void aTapIsTypedAlongItsPipe() {
        choose(Part.tap(room().seats().get(0).outlet().id()));
        type("Tap along the pipe, from its start", 1.25);
        assertThat(room().seats().get(0).outlet().tap())
                .hasValueSatisfying(
                        tap -> assertThat(((Outlet.OnRun) tap).atM()).isCloseTo(1.25, within(ROUNDING_M)));
    }

    @Test
    void aCornerIsTypedToItsPlaceAndHeight() {
        choose(Part.corner(loop().id(), 1));
        type("From the left wall", 5.5);
        type("Height above the floor", 1.9);
        assertThat(loop().points().get(1).xM()).isCloseTo(5.5, within(ROUNDING_M));
        assertThat(loop().points().get(1).zM()).isCloseTo(1.9, within(ROUNDING_M));
    }

    @Test
    void aDoorIsTypedToItsWidth() {
        choose(Part.door(0));
        type("Width of the door", 0.7);
        assertThat(room().shell().doors().get(0).widthM()).isEqualTo(0.7);
    }

    @Test
    void aMachineHasItsPlaceFilterSilencerAndBleedInFields() {
        choose(Part.blower(room().blowers(Blower.Role.PLANNED).get(0).id()));
        assertThat(labels())
                .contains("From the left wall", "Inlet filter", "Silencer", "Surplus air", "Relief valve opens at");
        type("From the left wall", 2.5);
        assertThat(room().blowers(Blower.Role.PLANNED)
                        .get(0)
                        .siting()
                        .place()
                        .orElseThrow()
                        .xM())
                .isEqualTo(2.5);
    }

    @Test
    void aValveIsShutByTheMenuAndOpenedAgain() {
        RoomHand hand = new RoomHand(bench);
        hand.key("F");
        hand.click(loop().at(1.2).xM(), loop().at(1.2).yM());
        Part valve = bench.pane().view().selection().lead().orElseThrow();
        act("Shut or open the valve");
        assertThat(loop().fittings().get(valve.number()).opening()).hasValue(0);
        act("Shut or open the valve");
        assertThat(loop().fittings().get(valve.number()).opening()).hasValue(1);
    }

    @Test
    void whatIsCopiedInOneWindowIsPastedInAnother() {
        WindowPane other =
                new WindowPane(bench, bench.desk().shared().withDemo("starting-out"), bench.answers(), () -> {});
        choose(Part.rack(room().racks().get(0).id()));
        act("Copy");
        int racks = other.view().desk().room().racks().size();
        other.acts().all().stream().filter(each -> each.name().equals("Paste")).forEach(Act::act);
        assertThat(other.view().desk().room().racks()).hasSize(racks + 1);
        assertThat(other.view().desk().history().toUndo()).isNotEqualTo(Optional.empty());
    }
}
