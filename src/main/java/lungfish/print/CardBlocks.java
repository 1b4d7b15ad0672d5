package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.report.DrillCard;

/** The parts of a drill card at one size. */
record CardBlocks(DrillCard card, CardSizes sizes) {
    static final String HEADLINE = "If the air stops";

    private static final String NEVER = "✗";
    private static final String ESSENTIAL = "★";
    private static final char NO_BREAK = '\u00A0';
    private static final String HAVE = "•";
    private static final double TANKS_SHARE = 0.66;
    private static final double BAND_PADDING_PT = 5;
    private static final int MOST_FINE_LINES = 7;
    private static final double SPACE_PT = 1; // makes one more gap below the steps
    private static final String READING =
            "Hours and minutes without air: alarm and danger by the cautious figure, danger by" + " the likely one.";

    Block body() {
        double gap = sizes.gapPt();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new TitleBand(HEADLINE, card.room(), sizes.headline(), sizes.action()));
        blocks.add(new ClockBox(card.clock(), card.tanks().stream().findFirst(), sizes.clock(), sizes.small()));
        blocks.addAll(parts());
        blocks.add(new Space(SPACE_PT));
        blocks.add(new Beside(tanks(), aside(), TANKS_SHARE, 2 * gap));
        blocks.add(blanks());
        return new Column(gap, blocks);
    }

    /** Where the help itself can hurt, that all is an estimate, and the date if one is said. */
    Block foot(Optional<String> date) {
        Block cautions = new Text(String.join(" ", card.cautions()), sizes.fine(), sizes.lines() + 1);
        Block estimates = new Text(DrillCard.ESTIMATES, sizes.smallBold(), 1);
        Block ended = date.<Block>map(said -> new Beside(estimates, new Ending(said, sizes.fine()), 0.7, sizes.gapPt()))
                .orElse(estimates);
        return new Column(sizes.gapPt() * 0.7, List.of(cautions, ended));
    }

    private List<Block> parts() {
        List<Block> blocks = new ArrayList<>();
        int number = 1;
        for (DrillCard.Part part : card.parts()) {
            List<Block> steps = new ArrayList<>();
            if (!part.title().isEmpty()) {
                steps.add(new Band(part.title(), sizes.part(), BAND_PADDING_PT));
            }
            for (DrillCard.Step step : part.steps()) {
                steps.add(new StepRow(number++, last(), step, sizes.action(), sizes.small(), sizes.lines()));
            }
            blocks.add(new Column(sizes.gapPt(), steps));
        }
        return blocks;
    }

    private int last() {
        return card.parts().stream().mapToInt(part -> part.steps().size()).sum();
    }

    private Block tanks() {
        List<DrillCard.TankRow> shown =
                card.tanks().stream().limit(sizes.tanks()).toList();
        List<List<String>> rows = shown.stream().map(CardBlocks::row).toList();
        Grid grid = new Grid(
                List.of(
                        Grid.Heading.mark(),
                        Grid.Heading.words("Tanks first"),
                        Grid.Heading.words("Where"),
                        Grid.Heading.figures("Alarm"),
                        Grid.Heading.figures("Danger"),
                        Grid.Heading.figures("Likely")),
                rows,
                sizes.smallBold(),
                sizes.small());
        return new Column(sizes.gapPt(), List.of(grid, new Text(rest(shown.size()), sizes.fine(), MOST_FINE_LINES)));
    }

    private static List<String> row(DrillCard.TankRow tank) {
        return List.of(
                tank.isEssential() ? ESSENTIAL : "",
                tank.name(),
                tank.where(),
                tank.alarm().brief(),
                tank.danger().brief(),
                tank.likely().brief());
    }

    private String rest(int shown) {
        boolean hasEssential = card.tanks().stream().limit(shown).anyMatch(DrillCard.TankRow::isEssential);
        return Stream.of(
                        shown == 0 ? "" : READING,
                        hasEssential ? ESSENTIAL + NO_BREAK + "on the essential outlets." : "",
                        card.rest(shown),
                        card.outlook())
                .filter(text -> !text.isEmpty())
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }

    private Block aside() {
        Stream<Block> have = card.atHand().stream().map(each -> item(HAVE, each.what() + ": " + each.much()));
        Stream<Block> never = card.never().stream().map(each -> item(NEVER, each));
        return new Column(sizes.gapPt(), List.of(list("At hand", have), list("Never", never)));
    }

    private Block list(String title, Stream<Block> items) {
        Block head = new Grid(List.of(Grid.Heading.words(title)), List.of(), sizes.smallBold(), sizes.small());
        return new Column(
                sizes.gapPt() * 0.55, Stream.concat(Stream.of(head), items).toList());
    }

    private Block item(String sign, String text) {
        return new Item(sign, text, sizes.smallBold(), sizes.small(), sizes.lines());
    }

    private Block blanks() {
        List<Block> lines = new ArrayList<>();
        for (int i = 0; i < card.blanks().size(); i += 2) {
            Block left = blank(i);
            lines.add(i + 1 < card.blanks().size() ? new Beside(left, blank(i + 1), 0.5, sizes.gapPt()) : left);
        }
        return new Column(0, lines);
    }

    private Block blank(int i) {
        return new Blank(card.blanks().get(i), sizes.small(), sizes.blankPt());
    }
}
