package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.room.Blower;
import lungfish.room.Climate;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

/** Compared with what the reader says of the file of the same room. */
final class RoomChangeTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final Room BEFORE = Rooms.small();

    private static List<Problem> problems(Room after) {
        return RoomChange.problems(BEFORE, after, CATALOGUE);
    }

    private static void isRefusedAsTheReaderDoes(Room after) {
        assertThat(problems(after))
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(
                        new RoomReader(CATALOGUE).read(RoomWriter.bytes(after)).problems());
    }

    private static Room atAltitude(double altitudeM) {
        return BEFORE.withClimate(Climate.UNKNOWN.withAltitudeM(OptionalDouble.of(altitudeM)));
    }

    private static Room blowers(Blower... those) {
        return BEFORE.withBlowers(List.of(those));
    }

    @Test
    void aSoundChangeHasNoProblem() {
        assertThat(problems(BEFORE)).isEmpty();
        assertThat(problems(atAltitude(1600))).isEmpty();
        assertThat(problems(BEFORE.withRacks(List.of()))).isEmpty();
    }

    @Test
    void aNumberOutOfItsRangeIsTold() {
        isRefusedAsTheReaderDoes(atAltitude(20_000));
        isRefusedAsTheReaderDoes(blowers(BEFORE.blowers().get(0).withBleed(new Blower.BledTo(OptionalDouble.of(-1)))));
    }

    @Test
    void aNameThatLeadsNowhereIsTold() {
        isRefusedAsTheReaderDoes(blowers(BEFORE.blowers().get(0).withMachine(Optional.of("no-such-class"))));
    }

    @Test
    void anIdThatIsTakenIsTold() {
        isRefusedAsTheReaderDoes(
                blowers(BEFORE.blowers().get(0), BEFORE.blowers().get(0)));
    }

    @Test
    void aRackThatWasChangedIsReadThrough() {
        Rack rack = BEFORE.racks().get(0);
        Rack thin = new Rack(
                rack.id(),
                rack.name(),
                rack.stage(),
                rack.xM(),
                rack.yM(),
                rack.turn(),
                rack.widthM(),
                -1,
                rack.ownMassKg(),
                rack.shelves());
        assertThat(problems(BEFORE.withRacks(List.of(thin))))
                .extracting(Problem::path)
                .contains("/racks/0/depth_m");
    }

    @Test
    void aNumberThatIsNoneIsTold() {
        assertThat(problems(atAltitude(Double.NaN))).isNotEmpty();
    }
}
