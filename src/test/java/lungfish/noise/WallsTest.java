package lungfish.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.noise.Walls.Part;
import lungfish.noise.Walls.Plate;
import lungfish.room.Point;
import lungfish.room.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class WallsTest {
    private static final double TWO_DIGITS_DB = 0.05;
    private static final Plate GLASS = Plate.ofGlass(0.0032, 7.9);

    private final Catalogue catalogue = CatalogueFiles.load();

    /** By hand: 8 m² of 33 dB and 2 m² of 19 dB let through 8·10⁻³·³ + 2·10⁻¹·⁹ = 0.0292 of 10, −25.3 dB. */
    @Test
    void aDoorIsTheHoleInTheWall() {
        assertThat(Walls.togetherDb(List.of(new Part(8, 33), new Part(2, 19)))).isCloseTo(25.3, within(TWO_DIGITS_DB));
    }

    /** Mass law: 6 dB for each doubling of mass or frequency. */
    @Test
    void twiceTheMassTakesSixDecibelsMore() {
        assertThat(Walls.massLawDb(500, 20) - Walls.massLawDb(500, 10)).isCloseTo(6.02, within(0.005));
    }

    /** At coincidence the mass law would promise 20 dB more than glass gives (Springer Handbook, Table 11.4). */
    @Test
    void glassIsHeldWellBelowTheMassLawAtCoincidence() {
        assertThat(Walls.massLawDb(4000, 7.9) - Walls.plateDb(4000, GLASS)).isGreaterThan(15);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2000, 4000})
    void thePlateLawHasNoStepWhereItsPartsMeet(double frequencyHz) {
        assertThat(Walls.plateDb(frequencyHz * (1 + 1e-9), GLASS))
                .isCloseTo(Walls.plateDb(frequencyHz, GLASS), within(1e-6));
    }

    @Test
    void noPlateBeatsTheMassLaw() {
        Plate board = Plate.ofPlasterboard(0.0125, 9);
        for (double frequencyHz = 50; frequencyHz < 20_000; frequencyHz *= 1.1) {
            assertThat(Walls.plateDb(frequencyHz, board)).isLessThanOrEqualTo(Walls.massLawDb(frequencyHz, 9));
        }
    }

    /** The assumed wall takes 33 dB, a door of 0.8 by 2 m in 4 by 2.4 m brings it to about 26 (by hand: 26.0). */
    @Test
    void theWallWithTheDoorCountsForAMachineBehindIt() {
        Shell shell = new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(6, 1, 0.8)), List.of());
        Between between = new Between(shell, catalogue);
        assertThat(between.assumedDb(Optional.of(new Point(7, 2, 0)))).isCloseTo(26.0, within(0.1));
        assertThat(between.assumedDb(Optional.of(new Point(-1, 2, 0)))).isCloseTo(33, within(1e-9));
        assertThat(between.assumedDb(Optional.of(new Point(3, 2, 3)))).isCloseTo(33, within(1e-9));
    }

    /**
     * By hand: 1.6 m² of door pass 1.6 · 10⁻¹·⁹ = 0.02014. A short wall of 9.6 m² passes with it 0.02415, 26.0 dB; a long one
     * of 14.4 m² 0.02656, 27.3 dB.
     */
    @Test
    void eachSideHasItsOwnDoors() {
        Shell left = new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(0, 1, 0.8)), List.of());
        Shell back = new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(2, 4, 0.8)), List.of());
        assertThat(new Between(left, catalogue).assumedDb(Optional.of(new Point(-0.5, 2, 0))))
                .isCloseTo(26.0, within(0.1));
        assertThat(new Between(back, catalogue).assumedDb(Optional.of(new Point(3, 4.5, 0))))
                .isCloseTo(27.3, within(0.1));
    }

    @Test
    void aMachineWhosePlaceIsUnknownStandsBehindTheWeakestWall() {
        Shell shell = new Shell(6, 4, 2.4, OptionalDouble.empty(), List.of(new Shell.Door(2, 0, 0.8)), List.of());
        Between between = new Between(shell, catalogue);
        assertThat(between.assumedDb(Optional.empty())).isEqualTo(between.assumedDb(Optional.of(new Point(3, -1, 0))));
    }
}
