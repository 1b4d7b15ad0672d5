package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.DrillCard;
import lungfish.report.DrillCards;

/**
 * A drill card on one page, whatever the room.
 *
 * <p>Headline and steps are read from two metres: their capitals are at least 10 minutes of arc high there, twice the
 * letter that normal sight just tells (5 minutes at an acuity of 1.0, ISO 8596), 5.8 mm. Where the page is short, tanks
 * go first, then the details of the steps, then the air between; the steps themselves stay as large.
 */
public final class DrillCardPage {
    private final DrillCard card;
    private final Paper paper;
    private final Optional<String> date;

    private DrillCardPage(DrillCard card, Paper paper, Optional<String> date) {
        this.card = card;
        this.paper = paper;
        this.date = date;
    }

    /**
     * The card, laid.
     *
     * @param date printed in the footer as it is
     */
    public static Printout of(DrillCard card, Paper paper, Optional<String> date) {
        String title = card.room() + ": " + CardBlocks.HEADLINE.toLowerCase(Locale.ROOT);
        return new Printout(title, List.of(new DrillCardPage(card, paper, date).page()));
    }

    /**
     * The card of a plan, on the paper that is usual where its reader's units are.
     *
     * @param date as above
     */
    public static Printout of(Plan plan, Catalogue catalogue, Quantities quantities, Optional<String> date) {
        return of(DrillCards.of(plan, catalogue, quantities), Paper.of(quantities.units()), date);
    }

    private PrintedPage page() {
        CardSizes first = CardSizes.ROOMIEST_FIRST.stream()
                .filter(this::isShortEnough)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a card of so many words fits no page"));
        CardSizes sizes = first.airier().takeWhile(this::isShortEnough).reduce(first, (less, more) -> more);
        CardBlocks blocks = new CardBlocks(card, sizes);
        Rectangle2D inside = paper.inside();
        double x = inside.getX();
        double wide = inside.getWidth();
        List<Mark> marks =
                new ArrayList<>(blocks.body().at(x, inside.getY(), wide).marks());
        Block foot = blocks.foot(date);
        marks.addAll(foot.at(x, inside.getMaxY() - footPt(foot), wide).marks());
        return new PrintedPage(paper, marks);
    }

    private boolean isShortEnough(CardSizes sizes) {
        CardBlocks blocks = new CardBlocks(card, sizes);
        double bodyPt = blocks.body().at(0, 0, paper.inside().getWidth()).heightPt();
        double free = paper.inside().getHeight() - footPt(blocks.foot(date));
        return bodyPt + sizes.gapPt() <= free;
    }

    /** With the tails of its last letters. */
    private double footPt(Block foot) {
        return foot.at(0, 0, paper.inside().getWidth()).heightPt() + 3;
    }
}
