package lungfish.terminal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.outage.Drill;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.plan.Plan;
import lungfish.plan.Progress;
import lungfish.print.DrillCardPage;
import lungfish.print.Printout;
import lungfish.quantity.Quantities;
import lungfish.report.OutageJson;
import lungfish.report.OutageText;
import lungfish.report.RescueJson;
import lungfish.report.RescueText;
import lungfish.rescue.Rescue;
import lungfish.rescue.Rescuing;
import lungfish.rescue.SecondLine;
import lungfish.rescue.SecondLines;
import lungfish.rescue.Ways;
import lungfish.standing.StandingAnswer;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Plays an outage through. */
@CommandLine.Command(
        name = "outage",
        description =
                "Play an outage through: what runs when, every tank's oxygen, and which tank is first in trouble.")
final class OutageCommand extends RoomCommand {
    private static final double HOUR_S = 3600;
    private static final double MOST_HOURS = 31 * 24;

    @Option(
            names = "--fail",
            paramLabel = "WHAT",
            description =
                    "What fails: mains, blower:ID, circuit:ID, branch:ID (a pipe), check:ID (of an outlet), airline:ID (of"
                            + " an outlet) or hose:ID (of a blower); left out: mains.")
    private String fail = FailWord.MAINS;

    @Option(names = "--hours", paramLabel = "H", description = "So many hours are looked at; left out: 24.")
    private double hours = 24;

    @Option(
            names = "--back",
            paramLabel = "H",
            description =
                    "All is well again after so many hours; left out: when the room's habits mend it; the mains stay"
                            + " off.")
    private Optional<Double> back = Optional.empty();

    @Option(names = "--as-set", description = "Every valve as filed, not at its coarse start.")
    private boolean asSet;

    @Option(
            names = "--card",
            paramLabel = "FILE",
            description = "Write the drill card of the room too: a page for its wall, as PDF.")
    private Optional<Path> card = Optional.empty();

    @Option(
            names = "--means",
            description =
                    "Not the outage but what helps: every means tried in it, the cheapest set that keeps all tanks and the"
                            + " essential ones, which filters beside the air may go, and how each way to give air stands"
                            + " up to failures.")
    private boolean means;

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        Catalogue catalogue = CatalogueFiles.load();
        Outcome played = played(plan, quantities, catalogue);
        if (card.isEmpty() || !(played instanceof Outcome.Answer told)) {
            return played;
        }
        Printout pages = DrillCardPage.of(plan, catalogue, quantities, Optional.empty());
        return new CardFile(card.get()).after(told, pages, !isJson());
    }

    private Outcome played(Plan plan, Quantities quantities, Catalogue catalogue) {
        List<Problem> problems = wrongHours();
        if (!problems.isEmpty()) {
            return Outcome.refused(problems);
        }
        if (means) {
            return told(plan, means(plan, catalogue, quantities));
        }
        Optional<Drills> drills = plan.trials()
                .filter(trials -> asSet)
                .map(trials -> Drills.of(plan, catalogue, trials.is()))
                .orElseGet(() -> Drills.of(plan, catalogue));
        if (drills.isEmpty()) {
            return told(
                    plan, isJson() ? OutageJson.text(plan, Optional.empty(), asSet, quantities) : OutageText.NO_AIR);
        }
        Reading<Failing> what = FailWord.read(fail, drills.get().possible());
        return Outcome.of(
                what, failing -> told(plan, text(plan, quantities, drills.get().play(scene(failing)))));
    }

    private String means(Plan plan, Catalogue catalogue, Quantities quantities) {
        Optional<Rescue> rescue = Rescuing.of(plan, catalogue, Progress.UNHEARD);
        Optional<SecondLine> second = rescue.flatMap(
                there -> SecondLines.of(plan, catalogue, there.wantedS().si(), Progress.UNHEARD));
        StandingAnswer ways = Ways.of(plan, catalogue);
        return isJson()
                ? RescueJson.text(plan.room(), rescue, second, ways, quantities)
                : new RescueText(plan.room(), quantities).text(rescue, second, ways);
    }

    private Scene scene(Failing what) {
        OptionalDouble backS = back.stream().mapToDouble(each -> each * HOUR_S).findFirst();
        return new Scene(what, backS, hours * HOUR_S);
    }

    private List<Problem> wrongHours() {
        if (!(hours > 0 && hours <= MOST_HOURS)) {
            return List.of(wrong("--hours is " + hours));
        }
        double end = back.orElse(1.0);
        return end > 0 && end <= MOST_HOURS ? List.of() : List.of(wrong("--back is " + end));
    }

    private static Problem wrong(String found) {
        return new Problem("", found, "hours, above 0 and up to " + (int) MOST_HOURS);
    }

    private String text(Plan plan, Quantities quantities, Drill drill) {
        return isJson()
                ? OutageJson.text(plan, Optional.of(drill), asSet, quantities)
                : new OutageText(plan.room(), quantities).text(drill);
    }
}
