package lungfish.noise;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import lungfish.room.BlowerBuilder;
import lungfish.room.Listener;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Shell;
import lungfish.room.Wishes;
import org.junit.jupiter.api.Test;

final class NoiseTest {
    private static final double ROUNDING_DB = 1e-9;
    private static final double TWO_DIGITS_DB = 0.05;

    private final Catalogue catalogue = CatalogueFiles.load();
    private final BlowerClass piston = catalogue.blower("linear-piston-80").orElseThrow();

    /**
     * By hand: 42 dB(A) at 1 m is a power of 49.98. Box of 6 by 4 by 2.4 m: S = 96 m², assumed ᾱ 0.1, R = 10.67 m²,
     * 4/R = 0.375. On the floor, 2 m away: Q/(4πr²) = 2/50.27 = 0.0398. 10 lg 0.4148 = −3.82; 46.16 dB(A).
     */
    @Test
    void aMachineReachesTheEarStraightAndByTheWalls() {
        Room room = heardFrom(3, 2, 0).build();
        NoiseAnswer answer = at(room, source(aBlower("b").at(1, 2, 0)));
        assertThat(answer.dba().orElseThrow()).isCloseTo(46.16, within(TWO_DIGITS_DB));
        assertThat(answer.at()).isEqualTo("chair");
    }

    @Test
    void theTermsOfTheWhyAddUpToTheLevel() {
        Room room = heardFrom(3, 2, 1).build();
        NoiseAnswer answer =
                at(room, source(aBlower("b").at(1, 2, 0)), source(aBlower("c").at(5, 1, 2)));
        assertThat(answer.why().orElseThrow().sumSi()).isCloseTo(answer.dba().orElseThrow(), within(ROUNDING_DB));
        assertThat(answer.why().orElseThrow().terms()).hasSize(2);
    }

    @Test
    void threeAlikeInOnePlaceAddTenTimesTheLogarithmOfThree() {
        Room room = heardFrom(3, 2, 1).build();
        double one = dba(room, source(aBlower("b").at(1, 2, 0)));
        double three = dba(room, source(aBlower("b").at(1, 2, 0).count(3)));
        assertThat(three - one).isCloseTo(4.77, within(0.005));
    }

    @Test
    void theOrderOfTheMachinesDoesNotMatter() {
        Room room = heardFrom(3, 2, 1).build();
        SoundSource near = source(aBlower("b").at(2, 2, 0));
        SoundSource far = source(aBlower("c").at(6, 4, 0).count(2));
        assertThat(dba(room, near, far)).isCloseTo(dba(room, far, near), within(ROUNDING_DB));
    }

    @Test
    void aCornerThrowsMoreSoundAtTheEarThanTheOpenFloor() {
        Room room = heardFrom(3, 2, 0).build();
        NoiseAnswer answer = at(
                room,
                source(aBlower("floor").at(2, 2, 0)),
                source(aBlower("corner").at(0, 0, 0)));
        assertThat(answer.heard()).extracting(Heard::directivity).containsExactly(2.0, 8.0);
    }

    /** The class's level is that of half a sphere: half its power by the air path, 12 dB off that; 10 lg(0.5 + 0.0315) = −2.74. */
    @Test
    void aSilencerWorksOnTheAirPathOnly() {
        Room room = heardFrom(3, 2, 0).build();
        SoundSource bare = source(aBlower("b").at(1, 2, 0));
        SoundSource silenced = source(aBlower("b").at(1, 2, 0).fitted(fitted("inlet-silencer")));
        assertThat(dba(room, bare) - dba(room, silenced)).isCloseTo(2.74, within(0.01));
        assertThat(at(room, silenced).assumptions())
                .extracting(Assumption::what)
                .anyMatch(what -> what.contains("air path"));
    }

    @Test
    void aMachineOutsideLosesTheWallThatIsTyped() {
        Room room = heardFrom(3, 2, 0).build();
        SoundSource inside = source(aBlower("b").at(1, 2, 1));
        Blower.Siting siting =
                new Blower.Siting(inside.siting().place(), true, OptionalDouble.of(30), OptionalDouble.empty());
        SoundSource outside = new SoundSource("b", inside.part(), piston, 1, siting, List.of());
        Heard heard = at(room, outside).heard().get(0);
        assertThat(heard.reductionDb()).isEqualTo(30);
        assertThat(heard.dba()).isLessThan(dba(room, inside) - 28);
    }

    @Test
    void aListenerBehindAWallHearsSoMuchLess() {
        SoundSource source = source(aBlower("b").at(1, 2, 0));
        Listener.Partition wall = new Listener.Partition("wall", 33);
        Room behind = aRoom().with(new Listener("bed", new Point(3, 2, 0), Optional.of(wall)))
                .build();
        double less = dba(heardFrom(3, 2, 0).build(), source) - dba(behind, source);
        assertThat(less).isCloseTo(33, within(ROUNDING_DB));
    }

    @Test
    void aMachineOutsideWhoseWallIsUnknownStandsBehindAnAssumedOne() {
        Room room = heardFrom(3, 2, 0).build();
        NoiseAnswer answer = at(room, source(aBlower("b").at(7, 2, 0).outside()));
        assertThat(answer.heard().get(0).reductionDb()).isCloseTo(33, within(ROUNDING_DB));
        assertThat(answer.heard().get(0).directivity()).isEqualTo(2);
        assertThat(said(answer)).anyMatch(what -> what.startsWith("what the wall between"));
    }

    @Test
    void aDoorInTheWallIsAssumedHollowAndSaid() {
        Shell shell = new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(6, 1, 0.8)), List.of());
        NoiseAnswer answer = at(
                heardFrom(3, 2, 0).with(shell).build(),
                source(aBlower("b").at(7, 2, 0).outside()));
        assertThat(said(answer)).contains("what a door takes off the sound", "height of a door");
    }

    @Test
    void whatIsTypedIsNotAssumed() {
        Shell shell = new Shell(6, 4, 2.4, OptionalDouble.of(0.2), List.of(), List.of());
        Wishes wishes = wishing(50);
        Room room = heardFrom(3, 2, 0).with(shell).with(wishes).build();
        assertThat(at(room, source(aBlower("b").at(1, 2, 0))).assumptions()).isEmpty();
    }

    @Test
    void anUnwishedLevelIsAssumedAndSaid() {
        Room room = heardFrom(3, 2, 0).build();
        assertThat(said(at(room, source(aBlower("b").at(1, 2, 0))))).contains("level that the listener will bear");
    }

    @Test
    void anEarOnTheMachineIsNoInfinity() {
        Room room = heardFrom(1, 2, 0).build();
        assertThat(at(room, source(aBlower("b").at(1, 2, 0))).heard().get(0).distanceM())
                .isEqualTo(0.3);
    }

    @Test
    void aMachineInMidAirIsBesideNoWall() {
        Room room = heardFrom(3, 2, 0).build();
        NoiseAnswer answer = at(
                room,
                source(aBlower("air").at(3, 2, 1.2)),
                source(aBlower("far").at(5.8, 2, 2.3)));
        assertThat(answer.heard()).extracting(Heard::directivity).containsExactly(1.0, 4.0);
    }

    @Test
    void whereNobodySitsAListenerIsAssumedAndSaid() {
        Room room = aRoom().build();
        NoiseAnswer answer = at(room, source(aBlower("b").at(1, 2, 0)));
        assertThat(answer.heard().get(0).distanceM()).isEqualTo(2);
        assertThat(answer.at()).startsWith("an assumed listener");
        assertThat(answer.assumptions())
                .extracting(Assumption::what)
                .anyMatch(what -> what.contains("to the listener"));
    }

    @Test
    void anUnknownLevelIsLeftOutAndSaid() {
        Room room = heardFrom(3, 2, 0).build();
        SoundSource silent = source(aBlower("b").at(1, 2, 0), withLevel(piston, Optional.empty()));
        NoiseAnswer answer = at(room, silent);
        assertThat(answer.dba()).isEmpty();
        assertThat(answer.why()).isEmpty();
        assertThat(answer.findings()).extracting(Finding::code).containsExactly(Code.LEVEL_UNKNOWN);
        assertThat(at(room, silent, source(aBlower("c").at(1, 2, 0))).dba()).isPresent();
    }

    @Test
    void louderThanWishedIsAFinding() {
        Room room = heardFrom(3, 2, 0).with(wishing(40)).build();
        assertThat(at(room, source(aBlower("b").at(1, 2, 0))).findings())
                .extracting(Finding::code)
                .containsExactly(Code.LOUDER_THAN_WISHED);
    }

    /** NIOSH 98-126: 85 dB(A) over 8 h. */
    @Test
    void eightyFiveDecibelsAreAHazardToHearing() {
        Room room = heardFrom(3, 2, 0).build();
        BlowerClass roaring = withLevel(piston, Optional.of(new BlowerClass.Level(85, 1)));
        assertThat(at(room, source(aBlower("b").at(1, 2, 0), roaring)).findings())
                .extracting(Finding::code)
                .contains(Code.HEARING);
    }

    private static RoomBuilder heardFrom(double xM, double yM, double zM) {
        return aRoom().with(new Listener("chair", new Point(xM, yM, zM), Optional.empty()));
    }

    private static Wishes wishing(double loudestDba) {
        return new Wishes(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(loudestDba),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of());
    }

    private static List<String> said(NoiseAnswer answer) {
        return answer.assumptions().stream().map(Assumption::what).toList();
    }

    private SoundSource source(BlowerBuilder blower) {
        return source(blower, piston);
    }

    private SoundSource source(BlowerBuilder blower, BlowerClass kind) {
        return SoundSource.of(blower.build(), kind, catalogue);
    }

    private NoiseAnswer at(Room room, SoundSource... sources) {
        return Noise.at(room, new ArrayList<>(List.of(sources)), catalogue);
    }

    private double dba(Room room, SoundSource... sources) {
        return at(room, sources).dba().orElseThrow();
    }

    private static Blower.Fittings fitted(String silencer) {
        return new Blower.Fittings(
                Optional.empty(),
                Optional.of(silencer),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static BlowerClass withLevel(BlowerClass kind, Optional<BlowerClass.Level> level) {
        return new BlowerClass(
                kind.id(),
                kind.name(),
                kind.kind(),
                kind.ratedM3PerS(),
                kind.ratedPa(),
                kind.points(),
                kind.continuousPa(),
                level,
                kind.portM(),
                kind.priceLow(),
                kind.priceHigh(),
                kind.rebuildPrice(),
                kind.rebuildS(),
                kind.lifeS(),
                kind.tiredShare(),
                kind.leastShare(),
                kind.efficiency(),
                kind.surgeFactor(),
                kind.voltageV(),
                kind.frequencyHz(),
                kind.source());
    }
}
