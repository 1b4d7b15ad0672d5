package lungfish.edit;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.CatalogueFiles;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;

final class BlowerEditsTest {
    private static final BlowerClass LINEAR =
            CatalogueFiles.load().blower("linear-diaphragm-80").orElseThrow();

    /** A pump of today, two planned blowers that differ, and a standby. */
    private static final Room MANY = aRoom().with(aBlower("hum").today().machine("small-diaphragm-5"))
            .with(aBlower("left").machine("side-channel-200").count(2))
            .with(aBlower("right").bleed(new Blower.Unbled()))
            .with(aBlower("spare").standby().machine("linear-diaphragm-40"))
            .build();

    private static List<Optional<String>> machines(Room room) {
        return room.blowers().stream().map(Blower::machine).toList();
    }

    private static Blower only(Room room) {
        assertThat(room.blowers()).hasSize(1);
        return room.blowers().get(0);
    }

    @Test
    void choosingChangesEveryPlannedBlowerAndNoOther() {
        assertThat(machines(BlowerEdits.choose(LINEAR).of(MANY)))
                .containsExactly(
                        Optional.of("small-diaphragm-5"),
                        Optional.of("linear-diaphragm-80"),
                        Optional.of("linear-diaphragm-80"),
                        Optional.of("linear-diaphragm-40"));
    }

    @Test
    void choosingTouchesNothingButTheMachine() {
        Room chosen = BlowerEdits.choose(LINEAR).of(MANY);
        assertThat(chosen.blowers().get(1)).isEqualTo(MANY.blowers().get(1).withMachine(Optional.of(LINEAR.id())));
        assertThat(chosen.withBlowers(MANY.blowers())).isEqualTo(MANY);
    }

    @Test
    void choosingWhereNoneIsDrawnDrawsOne() {
        assertThat(only(BlowerEdits.choose(LINEAR).of(Rooms.empty())))
                .isEqualTo(Blower.planned(new BlowerId("planned")).withMachine(Optional.of(LINEAR.id())));
    }

    @Test
    void theOneThatIsDrawnTakesAnIdThatIsFree() {
        Room taken = aRoom().with(aBlower("planned").standby())
                .with(aBlower("planned-2").today())
                .build();
        assertThat(BlowerEdits.choose(LINEAR).of(taken).blowers().get(2).id()).isEqualTo(new BlowerId("planned-3"));
    }

    @Test
    void letThePlanChooseTakesTheMachineAway() {
        Room free = BlowerEdits.letThePlanChoose().of(MANY);
        assertThat(machines(free).subList(1, 3)).containsOnly(Optional.empty());
        assertThat(free.blowers(Blower.Role.STANDBY)).isEqualTo(MANY.blowers(Blower.Role.STANDBY));
    }

    @Test
    void letThePlanChooseDrawsNothingInARoomThatIsSilentAnyway() {
        assertThat(BlowerEdits.letThePlanChoose().of(Rooms.empty())).isEqualTo(Rooms.empty());
    }

    @Test
    void theBleedIsShutOrAsNeededOrSet() {
        assertThat(only(BlowerEdits.shutTheBleed().of(Rooms.small())).bleed()).isEqualTo(new Blower.Unbled());
        assertThat(only(BlowerEdits.bleedAsNeeded().of(Rooms.small())).bleed())
                .isEqualTo(new Blower.BledTo(OptionalDouble.empty()));
        assertThat(only(BlowerEdits.bleedTo(7500).of(Rooms.small())).bleed())
                .isEqualTo(new Blower.BledTo(OptionalDouble.of(7500)));
    }

    @Test
    void bleedingWhereNoneIsDrawnDrawsABlowerWithoutAMachine() {
        Blower drawn = only(BlowerEdits.bleedTo(7500).of(Rooms.empty()));
        assertThat(drawn.role()).isEqualTo(Blower.Role.PLANNED);
        assertThat(drawn.machine()).isEmpty();
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(BlowerEdits.choose(LINEAR).done()).startsWith("Choose linear diaphragm blower, 80 L/min");
        assertThat(BlowerEdits.bleedAsNeeded().done()).isEqualTo("Bleed as needed");
    }
}
