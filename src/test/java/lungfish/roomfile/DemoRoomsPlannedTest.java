package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import lungfish.room.Seat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the demo rooms are there to show. */
final class DemoRoomsPlannedTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    static List<Path> demoRooms() throws IOException {
        return DemoRoomsTest.demoRooms();
    }

    private static Plan plan(Path file) {
        return new Planner(CATALOGUE).plan(RoomFiles.open(file, CATALOGUE).orThrow());
    }

    private static Plan plan(String name) {
        return plan(Path.of("demo-rooms", name + RoomFiles.ENDING));
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void noneOfThemIsBlocked(Path file) {
        assertThat(plan(file).isBlocked()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # as the issue that asked for them says: 6 tanks; about 30; about 70; about 320
        starting-out,       7,  3
        garage-killifish,  30,  6
        basement-rainbows, 70,  5
        club-hall,        320,  4""")
    void theyHaveTheirOutletsAndTheirPumpsOfToday(String name, int outlets, int pumps) {
        Plan plan = plan(name);
        assertThat(plan.room().seats().stream().filter(seat -> !seat.planned())).hasSize(outlets);
        assertThat(plan.room().blowers(Blower.Role.TODAY)).hasSize(pumps);
    }

    @Test
    void startingOutIsToldToKeepItsSmallPumps() {
        assertThat(plan("starting-out").findings()).extracting(Finding::code).contains(Code.KEEP_SMALL_PUMPS);
    }

    @Test
    void theOthersAreNot() {
        for (String name : List.of("garage-killifish", "basement-rainbows", "club-hall")) {
            assertThat(plan(name).keepPumps()).as(name).isFalse();
        }
    }

    @Test
    void theBasementsPlannedWallsStayOutsideTheDemand() {
        Plan plan = plan("basement-rainbows");
        assertThat(plan.demand().planned())
                .extracting(need -> need.seat().rack().id().text())
                .containsOnly("W", "X");
        assertThat(plan.outlets()).noneMatch(outlet -> outlet.need().seat().planned());
        assertThat(plan.room().seats().stream().filter(Seat::planned)).hasSize(6 + 12);
    }
}
