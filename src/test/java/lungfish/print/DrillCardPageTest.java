package lungfish.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.DrillCard;
import lungfish.report.DrillCards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds what one wants of a card on the wall: one page, all of it seen, the steps from afar. */
final class DrillCardPageTest {
    /** Half a point of ink over a margin is nothing that a printer loses. */
    private static final double HAIR_PT = 0.5;

    private static PrintedPage page(DrillCard card, Paper paper) {
        List<PrintedPage> pages =
                DrillCardPage.of(card, paper, Optional.of("28 August")).pages();
        assertThat(pages).hasSize(1);
        return pages.get(0);
    }

    private static List<Mark.Words> words(PrintedPage page) {
        return page.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void nothingLiesOutsideTheMargins(Paper paper) {
        for (DrillCard card : List.of(Cards.usual(), Cards.crowded(), Cards.bare())) {
            Rectangle2D inside = paper.inside();
            Rectangle2D with = new Rectangle2D.Double(
                    inside.getX() - HAIR_PT,
                    inside.getY() - HAIR_PT,
                    inside.getWidth() + 2 * HAIR_PT,
                    inside.getHeight() + 2 * HAIR_PT);
            assertThat(page(card, paper).marks()).allMatch(mark -> isIn(mark.box(), with), "inside the margins");
        }
    }

    private static boolean isIn(Rectangle2D box, Rectangle2D area) {
        return box.getMinX() >= area.getMinX()
                && box.getMaxX() <= area.getMaxX()
                && box.getMinY() >= area.getMinY()
                && box.getMaxY() <= area.getMaxY();
    }

    @ParameterizedTest
    @EnumSource
    void noTextLiesOnAnother(Paper paper) {
        for (DrillCard card : List.of(Cards.usual(), Cards.crowded(), Cards.bare())) {
            List<Mark.Words> words = words(page(card, paper));
            for (int i = 0; i < words.size(); i++) {
                for (int j = i + 1; j < words.size(); j++) {
                    assertThat(words.get(i).box().intersects(words.get(j).box()))
                            .as("%s on %s", words.get(i), words.get(j))
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aUsualCardShowsAllItsWords(Paper paper) {
        String shown =
                words(page(Cards.usual(), paper)).stream().map(Mark.Words::text).collect(Collectors.joining(" "));
        assertThat(shown).doesNotContain("…");
        DrillCard card = Cards.usual();
        assertThat(card.parts().stream()
                        .flatMap(part -> part.steps().stream())
                        .flatMap(step -> Stream.of(step.action(), step.detail())))
                .allMatch(shown::contains);
        assertThat(Stream.of(card.never(), card.cautions(), card.blanks()).flatMap(List::stream))
                .allMatch(shown::contains);
        assertThat(shown)
                .contains(card.room(), card.clock().figure(), card.clock().saying(), DrillCard.ESTIMATES, "28 August");
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void noStepOfADemoRoomIsCut(String demo) {
        Plan plan = DemoPlans.plan(demo);
        DrillCard card = DrillCards.of(
                plan, DemoPlans.CATALOGUE, Quantities.in(plan.room().displayUnits()));
        for (Paper paper : Paper.values()) {
            String shown =
                    words(page(card, paper)).stream().map(Mark.Words::text).collect(Collectors.joining(" "));
            assertThat(card.parts().stream()
                            .flatMap(part -> part.steps().stream())
                            .flatMap(step -> Stream.of(step.action(), step.detail())))
                    .allMatch(shown::contains);
            assertThat(Stream.of(card.never(), card.cautions()).flatMap(List::stream))
                    .allMatch(shown::contains);
        }
    }

    /** 10 minutes of arc at 2 m, by hand: 2 m × tan(1/6°) = 2 × 0.002 909 = 5.82 mm = 16.5 points. */
    @ParameterizedTest
    @EnumSource
    void headlineAndStepsAreReadFromTwoMetres(Paper paper) {
        for (DrillCard card : List.of(Cards.usual(), Cards.crowded())) {
            List<Mark.Words> words = words(page(card, paper));
            List<String> afar = words.stream()
                    .filter(each -> each.lettering().capitalsPt() >= 16.5)
                    .map(Mark.Words::text)
                    .toList();
            assertThat(afar).contains("If the air stops", card.clock().figure());
            assertThat(String.join(" ", afar))
                    .contains(card.parts().stream()
                            .flatMap(part -> part.steps().stream())
                            .map(DrillCard.Step::action)
                            .toList());
        }
    }

    @Test
    void aLongNameSaysThatItIsCut() {
        assertThat(words(page(Cards.crowded(), Paper.A4)))
                .extracting(Mark.Words::text)
                .noneMatch(Cards.LONG_NAME::equals)
                .contains("Old dairy, north wing:")
                .anyMatch(text -> text.startsWith("rainbowfish and killi") && text.endsWith("…"));
    }

    @Test
    void aCrowdedCardSaysHowManyTanksItDoesNotShow() {
        List<Mark.Words> words = words(page(Cards.crowded(), Paper.A4));
        long shown = words.stream().filter(each -> each.text().equals("★")).count();
        String all = words.stream().map(Mark.Words::text).collect(Collectors.joining(" "));
        assertThat(shown).isBetween(3L, 12L);
        assertThat(all).contains(12 - shown + 308 + " tanks more", "12 tanks not judged");
    }

    @Test
    void stepsAreNumberedThroughAllParts() {
        assertThat(words(page(Cards.usual(), Paper.A4)))
                .extracting(Mark.Words::text)
                .containsSubsequence("1", "2", "3", "4", "5", "6", "7", "8");
    }

    @Test
    void figuresOfOneColumnEndAtOnePlace() {
        List<Mark.Words> words = words(page(Cards.usual(), Paper.A4));
        List<Double> ends = words.stream()
                .filter(each -> Cards.usual().tanks().stream()
                        .anyMatch(tank -> tank.danger().brief().equals(each.text())))
                .filter(each -> each.lettering().weight() == Weight.REGULAR)
                .map(each -> Math.rint(10 * (each.x() + each.lettering().width(each.text()))))
                .toList();
        assertThat(ends.stream().distinct().count()).isLessThanOrEqualTo(3); // alarm, danger, likely
        assertThat(Lettering.regular(10).width("1111"))
                .isEqualTo(Lettering.regular(10).width("8888"));
    }
}
