package lungfish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Facts about the page of laws: it names what the build asks, and what one would look for is among it. */
final class LawsPageTest {
    private static final Path WRITTEN = Path.of("target", "laws.md");
    private static final Path COMMITTED = Path.of("docs", "laws.md");
    private static final int AT_LEAST = 40;

    /** What anybody would ask first, and the test that asks it. */
    private record Usual(String what, String test, String name) {}

    private static final List<Usual> USUAL = List.of(
            new Usual("units there and back", "QuantityReaderTest", "whatIsShownIsReadBackToTheSameText"),
            new Usual("files there and back", "RoomFileTest", "whatWasWrittenReadsBackEqual"),
            new Usual("mass balance", "LawsTest", "massIsBalancedAndEveryLawIsMet"),
            new Usual("one answer from two starts", "LawsTest", "twoStartsComeToOneAnswer"),
            new Usual("monotony: blower", "LawsTest", "moreBlowerNeverGivesLessAir"),
            new Usual("monotony: pipe", "FrictionTest", "moreFlowNeedsMorePressureInEveryRegime"),
            new Usual("symmetry", "LikenessTest", "onARingTheTwoSidesOfWhichAreAlikeBothSidesGetTheSame"),
            new Usual("direction", "LawsTest", "turningAPipeAroundTurnsOnlyTheSignOfItsFlow"),
            new Usual("scale", "LikenessTest", "whereOnlySquaresResistFourTimesTheResistanceIsHalfTheAir"),
            new Usual("order of the parts", "LawsTest", "theOrderOfThePartsChangesNothing"),
            new Usual("order of the racks", "RoomLawsTest", "theOrderOfTheRacksChangesNothing"),
            new Usual("tuned flows are the targets", "RoomLawsTest", "withExactOpeningsEveryOutletGetsItsTarget"),
            new Usual("one more tap", "LawsTest", "anotherTapNeverRaisesAnyPressure"),
            new Usual("levels add in any order", "LevelsTest", "levelsAddInAnyOrder"),
            new Usual("a bigger battery", "BatteryRuntimeTest", "aBiggerBatteryNeverRunsShorter"),
            new Usual("oxygen without air", "CoursesTest", "withoutAirNoTankComesAboveSaturation"));

    private final LawsPage page = LawsPage.ofTheBuild();

    @Test
    void thePageInDocsNamesWhatTheBuildAsks() throws IOException {
        String text = page.text(USUAL.stream()
                .map(each -> "- " + each.what() + ": `" + each.test() + "." + each.name() + "`")
                .toList());
        Files.writeString(WRITTEN, text);
        assertThat(Files.readString(COMMITTED))
                .as("docs/laws.md is out of date: read target/laws.md and, when it is right, cp target/laws.md"
                        + " docs/laws.md")
                .isEqualTo(text);
    }

    @Test
    void thereAreAtLeastFortyAndTheUsualOnesAreAmongThem() {
        assertThat(page.size()).isGreaterThanOrEqualTo(AT_LEAST);
        assertThat(USUAL).allMatch(each -> page.has(each.test(), each.name()));
    }
}
