package lungfish.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.air.FreeAir;
import lungfish.blower.Accessories;
import lungfish.blower.Machine;
import lungfish.blower.MachineTest;
import lungfish.blower.Wear;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import org.junit.jupiter.api.Test;

/** Several machines at several places; each new one gives 100 L/min × (1 − p/20 kPa) and bears 15 kPa all day. */
final class FleetTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final FreeAir ROOM_AIR = FreeAir.at(0, 297.15);
    private static final BlowerClass PISTON = MachineTest.straight("piston", BlowerClass.Kind.LINEAR_PISTON);
    private static final BlowerClass OTHER = MachineTest.straight("other", BlowerClass.Kind.ROTARY_VANE);

    private static Machine machine(String id, Accessories accessories, OptionalDouble intakeK) {
        return new Machine(id, new PartId(PartId.Kind.BLOWER, id), PISTON, 1, accessories, intakeK);
    }

    private static Machine plain(String id) {
        return machine(id, Accessories.NONE, OptionalDouble.empty());
    }

    private static Fleet fleet(Fleet.Placed... placed) {
        return new Fleet(List.of(placed), new Blower.Unsaid(), ROOM_AIR);
    }

    private static List<String> kinds(Fleet fleet) {
        return fleet.placed().stream().map(each -> each.machine().kind().id()).toList();
    }

    @Test
    void aCandidateTakesOnlyThePlacesThatTheRoomLeavesOpen() {
        Fleet fleet = fleet(new Fleet.Placed(plain("named"), "a", true), new Fleet.Placed(plain("open"), "b", false));

        assertThat(kinds(fleet.as(OTHER))).containsExactly("piston", "other");
        assertThat(fleet.as(OTHER).kind()).isEqualTo(OTHER);
    }

    @Test
    void whereEveryMachineIsNamedACandidateIsLookedAtInAllPlaces() {
        Fleet fleet = fleet(new Fleet.Placed(plain("one"), "a", true), new Fleet.Placed(plain("two"), "b", true));

        assertThat(kinds(fleet.as(OTHER))).containsExactly("other", "other");
    }

    @Test
    void itsNameTellsEveryMachineAndHowManyOfEach() {
        Fleet one = fleet(new Fleet.Placed(plain("piston"), "a"));
        Fleet five = fleet(
                new Fleet.Placed(plain("piston").withCount(3), "a"),
                new Fleet.Placed(plain("vane"), "b"),
                new Fleet.Placed(plain("piston"), "c"));

        assertThat(one.name()).isEqualTo("piston");
        assertThat(five.name()).isEqualTo("4 × piston and vane");
    }

    @Test
    void itsPriceCountsEveryMachine() {
        Fleet three = fleet(new Fleet.Placed(plain("a").withCount(2), "a"), new Fleet.Placed(plain("b"), "b"));

        assertThat(three.price()).isEqualTo(3 * PISTON.price());
    }

    @Test
    void whatTheSilencerTakesCountsAgainstTheRating() {
        // at 14 900 Pa a new machine gives 100 × (1 − 0.745) = 25.5 L/min or a little less: 255 Pa of a silencer that
        // takes 255 Pa there lifts the machine to 15 155 Pa or a little less, above its 15 000
        double flow = 25.5 * L_PER_MIN;
        AccessoryClass silencer = new AccessoryClass(
                "s", "s", AccessoryClass.Kind.OUTLET_SILENCER, 255 / (flow * flow), 10, 5, "made up for a test");
        Fleet silenced =
                fleet(new Fleet.Placed(machine("m", new Accessories(List.of(silencer)), OptionalDouble.empty()), "a"));

        assertThat(fleet(new Fleet.Placed(plain("m"), "a")).overRating(14_900, Wear.NEW))
                .isEmpty();
        assertThat(silenced.overRating(14_900, Wear.NEW).orElseThrow().foundSi())
                .isBetween(15_100.0, 15_155.0);
    }

    @Test
    void ofMachinesInTwoPlacesTheHotterOneIsTold() {
        Machine attic = machine("attic", Accessories.NONE, OptionalDouble.of(313.15));
        Fleet fleet = fleet(new Fleet.Placed(plain("cellar"), "a"), new Fleet.Placed(attic, "b"));

        assertThat(fleet.discharge(5000, Wear.NEW).machine()).isEqualTo(attic.part());
        assertThat(fleet.discharge(5000, Wear.NEW).inletK()).isEqualTo(313.15, within(1e-9));
    }
}
