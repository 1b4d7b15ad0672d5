package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Severity;
import lungfish.room.Blower;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Facts about the rooms that three questions make. */
final class QuickStartTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final Room EMPTY = QuickStart.emptyRoom("New room", DisplayUnits.METRIC);

    /** Any room that a person may have, with any common tank, device and pump. */
    @Provide
    Arbitrary<QuickStart> asked() {
        Arbitrary<Shell> shells = Combinators.combine(
                        Arbitraries.doubles().between(1, 15),
                        Arbitraries.doubles().between(1, 12),
                        Arbitraries.doubles().between(1.9, 4))
                .as(QuickStart::shell);
        return Combinators.combine(
                        shells,
                        Arbitraries.integers().between(1, 60),
                        Arbitraries.of(CATALOGUE.tankSizes()),
                        Arbitraries.of(CATALOGUE.devices()),
                        Arbitraries.integers().between(0, 6),
                        Arbitraries.of(pumps()))
                .as(QuickStart::new);
    }

    private static List<BlowerClass> pumps() {
        return CATALOGUE.blowers().stream().filter(each -> each.kind().isPump()).toList();
    }

    private static QuickStart garage(int tanks, int pumps) {
        TankSize size = CATALOGUE.tankSize("cm-60-30-30").orElseThrow();
        DeviceClass sponge = CATALOGUE.device("sponge-medium").orElseThrow();
        BlowerClass pump = CATALOGUE.blower("small-diaphragm-5").orElseThrow();
        return new QuickStart(QuickStart.shell(5, 3.5, 2.4), tanks, size, sponge, pumps, pump);
    }

    private static Optional<Room> made(QuickStart asked) {
        return asked.in(EMPTY, CATALOGUE).edit().map(edit -> edit.of(EMPTY));
    }

    private static Room madeAtOnce(QuickStart asked) {
        return made(asked).orElseThrow();
    }

    /** A room whose pumps do not share its tanks, or which does not hold them, is refused and counts for nothing here. */
    private static Room madeOrNot(QuickStart asked) {
        Optional<Room> room = made(asked);
        Assume.that(room.isPresent());
        return room.orElseThrow();
    }

    @Property(tries = 200)
    void everyRoomIsReadBackAsItWasWritten(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        byte[] written = RoomWriter.bytes(room);
        assertThat(new RoomReader(CATALOGUE).read(written).orThrow()).isEqualTo(room);
    }

    @Property(tries = 200)
    void itHasAsManyTanksEachWithOneOutlet(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        assertThat(room.racks().stream().flatMap(Rack::tanks)).hasSize(asked.tanks());
        assertThat(room.seats())
                .hasSize(asked.tanks())
                .allMatch(seat -> seat.outlet().device().equals(asked.device().id()));
    }

    @Property(tries = 200)
    void everyRackStandsWithinTheWallsAndClearOfTheOthers(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        Box walls = new Box(0, 0, room.shell().lengthM(), room.shell().widthM());
        List<Box> racks = room.racks().stream().map(Box::of).toList();
        assertThat(racks).allMatch(walls::holds);
        for (int i = 0; i < racks.size(); i++) {
            assertThat(racks.subList(i + 1, racks.size())).noneMatch(racks.get(i)::touches);
        }
    }

    /** The highest tank stays below the ceiling, and the pipe above its water. */
    @Property(tries = 200)
    void noWaterStandsAboveTheMain(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        double mainM = room.runs().get(0).points().get(0).zM();
        assertThat(mainM).isLessThan(room.shell().heightM());
        for (Rack rack : room.racks()) {
            rack.shelves().forEach(shelf -> shelf.tanks()
                    .forEach(tank -> assertThat(shelf.heightM() + tank.outside().heightM())
                            .isLessThan(mainM)));
        }
    }

    @Property(tries = 200)
    void everyOutletIsServedByOneOfTodaysPumpsIfThereAreAny(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        List<Blower> today = room.blowers(Blower.Role.TODAY);
        assertThat(today).hasSize(asked.pumps());
        Set<Object> served =
                today.stream().flatMap(pump -> pump.serves().stream()).collect(Collectors.toSet());
        assertThat(served).hasSize(asked.pumps() == 0 ? 0 : asked.tanks());
    }

    /** The plan solves it, and finds no mistake of the drawing. What a room lacks, such as a battery, it may well say. */
    @Property(tries = 40)
    void thePlanOfItIsThereAndBlamesNoDrawing(@ForAll("asked") QuickStart asked) {
        Room room = madeOrNot(asked);
        Plan plan = new Planner(CATALOGUE).plan(room);
        assertThat(plan.demand().needs()).hasSize(asked.tanks());
        assertThat(plan.findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKING)
                .allMatch(finding -> finding.code().name().contains("BLOWER"));
    }

    @Test
    void aGarageOfTwelveTanksHasABlowerThatFits() {
        Plan plan = new Planner(CATALOGUE).plan(madeAtOnce(garage(12, 3)));
        assertThat(plan.duty()).isPresent();
        assertThat(plan.headroom()).isPresent();
        assertThat(plan.today().dba()).isPresent();
    }

    @Test
    void thePumpsThatAreSoldHereTellTheMains() {
        assertThat(madeAtOnce(garage(12, 0)).supply().voltageV()).hasValue(230);
        assertThat(madeAtOnce(garage(12, 0)).supply().frequencyHz()).hasValue(50);
    }

    @Test
    void moreTanksThanTheWallsHoldAreRefusedWithTheNumberThatFits() {
        String said = garage(400, 0)
                .in(EMPTY, CATALOGUE)
                .refused()
                .orElseThrow()
                .sentence(Quantities.in(DisplayUnits.METRIC));
        assertThat(said).matches("Only \\d+ such tanks fit on racks along the walls\\. Take smaller .*");
        int fit = Integer.parseInt(said.replaceAll("\\D", ""));
        assertThat(made(garage(fit, 0))).isPresent();
        assertThat(made(garage(fit + 1, 0))).isEmpty();
    }

    @Test
    void moreRoomIsNeverLessRoomForTanks() {
        assertThat(made(garage(30, 0))).isPresent();
        QuickStart small = garage(30, 0);
        QuickStart large = new QuickStart(
                QuickStart.shell(9, 7, 3), small.tanks(), small.size(), small.device(), small.pumps(), small.pump());
        assertThat(made(large)).isPresent();
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        assertThat(garage(0, 0).in(EMPTY, CATALOGUE).refused()).isPresent();
        assertThat(garage(3, 4).in(EMPTY, CATALOGUE).refused()).isPresent();
        TankSize high = CATALOGUE.tankSize("cm-200-60-60").orElseThrow();
        QuickStart low = new QuickStart(
                QuickStart.shell(8, 6, 0.9),
                1,
                high,
                garage(1, 0).device(),
                0,
                garage(1, 0).pump());
        assertThat(low.in(EMPTY, CATALOGUE).refused().orElseThrow().sentence(Quantities.in(DisplayUnits.METRIC)))
                .startsWith("Under a ceiling of 90 cm");
    }

    @Test
    void itIsOneEditThatKeepsWhatTheRoomSaid() {
        Room named = EMPTY.withName("Cellar");
        Edit edit = garage(12, 3).in(named, CATALOGUE).edit().orElseThrow();
        assertThat(edit.done()).isEqualTo("Set up the room");
        assertThat(edit.of(named).name()).isEqualTo("Cellar");
    }
}
