package lungfish.report;

import java.util.Optional;
import lungfish.quantity.Quantities;
import lungfish.rescue.Cheapest;
import lungfish.rescue.Rescue;
import lungfish.rescue.Second;
import lungfish.rescue.SecondLine;
import lungfish.room.Room;
import lungfish.standing.StandingAnswer;

/** What keeps the tanks of a room alive, its second line and its redundancy, as a page of text. */
public final class RescueText {
    private final Room room;
    private final Quantities quantities;
    private final Page page = new Page();

    public RescueText(Room room, Quantities quantities) {
        this.room = room;
        this.quantities = quantities;
    }

    /** A page for people; where nothing gives air, a line that says so. */
    public String text(Optional<Rescue> rescue, Optional<SecondLine> second, StandingAnswer ways) {
        if (rescue.isEmpty()) {
            return OutageText.NO_AIR;
        }
        RescueWords words = new RescueWords(rescue.get(), quantities, new Names(room));
        page.heading(room.name() + ". What keeps them alive");
        page.paragraph(words.hazards());
        rescue.get().sets().forEach(set -> cheapest(set, words));
        page.heading("Each by itself");
        page.item("–", words.line(rescue.get().now()));
        rescue.get().tried().forEach(tried -> page.item("+", words.line(tried)));
        words.unfit().forEach(says -> page.item("!", says));
        second.ifPresent(this::second);
        new StandingReport(quantities).on(page, ways);
        page.heading("Take care");
        words.cautions(room).forEach(caution -> page.item("!", caution));
        page.paragraph(OutageWords.ESTIMATES);
        return page.text();
    }

    private void cheapest(Cheapest cheapest, RescueWords words) {
        page.item(cheapest.keepsAll() ? "✓" : "✗", words.headline(cheapest));
        if (!cheapest.isNothing()) {
            cheapest.set()
                    .means()
                    .forEach(each -> page.item("", "+ " + words.says(each) + ", " + words.price(each.price())));
        }
        words.lost(cheapest).forEach(lost -> page.item("", lost));
    }

    private void second(SecondLine line) {
        SecondWords words = new SecondWords(quantities);
        page.heading("Second line: " + words.headline(line));
        for (Second second : line.all()) {
            page.item(
                    second.mayGo() ? "–" : "●",
                    words.called(second) + ": " + words.verdict(second) + ". " + words.outages(second));
        }
    }
}
