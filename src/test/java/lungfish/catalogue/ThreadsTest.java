package lungfish.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ThreadsTest {
    private static final double INCH = 0.0254;

    /** Drill charts give a thousandth of an inch. */
    private static final double MIL = 0.0005 * INCH;

    private final BuildingClasses classes = CatalogueFiles.load().building();

    private ThreadClass thread(String id) {
        return classes.thread(id).orElseThrow();
    }

    /**
     * NPT: threads per inch and L1 in inches from a published copy of the table of basic dimensions of ASME B1.20.1; tap drills
     * from a published table for NPT without a reamer (letter R 0.339 in, 7/16, 37/64, 23/32 in).
     */
    @ParameterizedTest
    @CsvSource({
        "npt-1-8, 0.405, 27, 0.162, 0.3390",
        "npt-1-4, 0.540, 18, 0.228, 0.4375",
        "npt-3-8, 0.675, 18, 0.240, 0.5781",
        "npt-1-2, 0.840, 14, 0.320, 0.7188"
    })
    void taperThreadsAreAsPublished(String id, double outsideIn, double perInch, double engagementIn, double drillIn) {
        ThreadClass thread = thread(id);
        assertThat(thread.majorM()).isEqualTo(outsideIn * INCH, within(MIL));
        assertThat(thread.pitchM()).isEqualTo(INCH / perInch, within(1e-8));
        assertThat(thread.engagementM()).isEqualTo(engagementIn * INCH, within(0.0006 * INCH));
        assertThat(thread.drillM()).isEqualTo(drillIn * INCH, within(MIL));
        assertThat(thread.taper()).isTrue();
    }

    /** Published tables of tapping drills: G 1/8 8.8, G 1/4 11.8, M5 4.2, M6 5.0 mm; 10-32 number 21, 0.159 in. */
    @ParameterizedTest
    @CsvSource({"g-1-8, 8.8", "g-1-4, 11.8", "m5, 4.2", "m6, 5.0", "unf-10-32, 4.0386"})
    void straightThreadsAreDrilledAsPublished(String id, double drillMm) {
        assertThat(thread(id).drillM()).isEqualTo(drillMm / 1000, within(1e-9));
        assertThat(thread(id).engagementM()).isEqualTo(4 * thread(id).pitchM(), within(1e-6));
    }

    /** ISO 2306: the drill of a metric thread is its diameter less its pitch. */
    @Test
    void metricDrillsAreDiameterLessPitch() {
        for (String id : new String[] {"m5", "m6"}) {
            assertThat(thread(id).drillM())
                    .isEqualTo(thread(id).majorM() - thread(id).pitchM(), within(1e-9));
        }
    }

    @Test
    void everyPipeSizeHasItsJoints() {
        Catalogue catalogue = CatalogueFiles.load();
        assertThat(catalogue.pipes()).allSatisfy(pipe -> {
            PipeJoints joints = classes.joints(pipe.id()).orElseThrow();
            assertThat(joints.cementM3() > 0).isEqualTo(pipe.material() == PipeSize.Material.PVC);
            assertThat(joints.socketM()).isLessThan(1.2 * pipe.outsideM());
        });
        assertThat(classes.joints()).hasSameSizeAs(catalogue.pipes());
    }

    /**
     * Cup depths of solder joint fittings, published table of a copper tube handbook: 1/2 in 0.50, 1 1/4 in 0.97, 2 in 1.34 in;
     * taper sockets of Schedule 40, a published copy of ASTM D2468: 1/2 in 0.688, 1 1/4 in 0.938, 2 in 1.156 in.
     */
    @ParameterizedTest
    @CsvSource({
        "copper-l-1-2in, 0.50",
        "copper-l-1-1-4in, 0.97",
        "copper-l-2in, 1.34",
        "pvc-sch40-1-2in, 0.688",
        "pvc-sch40-1-1-4in, 0.938",
        "pvc-sch40-2in, 1.156"
    })
    void socketsAreAsDeepAsPublished(String pipe, double inches) {
        assertThat(classes.joints(pipe).orElseThrow().socketM()).isEqualTo(inches * INCH, within(5e-6));
    }

    /** A pipe maker's table: a quart (946 mL) makes 300 joints of 1/2 in, 125 of 1 in, 60 of 2 in. */
    @ParameterizedTest
    @CsvSource({"pvc-sch40-1-2in, 300", "pvc-sch40-1in, 125", "pvc-sch40-2in, 60"})
    void cementGoesAsFarAsPublished(String pipe, int joints) {
        assertThat(classes.joints(pipe).orElseThrow().cementM3()).isEqualTo(946e-6 / joints, within(1e-8));
    }
}
