package lungfish.terminal;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.measured.AsMeasured;
import lungfish.measured.Fitted;
import lungfish.measured.MeasuredRoom;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.MeasuredJson;
import lungfish.report.MeasuredReport;
import lungfish.report.MeasuredWords;
import lungfish.report.Names;
import lungfish.roomfile.RoomWriter;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Fits a room to what its keeper read, and tells what changed. */
@CommandLine.Command(
        name = "fit",
        description =
                "What the log says of the room: what most likely changed, how sure that is, and what to read next.")
final class FitCommand extends RoomCommand {
    @Option(
            names = "--as-measured",
            paramLabel = "FILE",
            description =
                    "Also write the room as measured, for every other question: a name that ends with .room.json.")
    private Optional<Path> asMeasured = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "Pass over what was written for later days, as 2026-03-01; left out: all counts.")
    private Optional<String> date = Optional.empty();

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        Optional<LocalDate> day = date.map(FitCommand::day).orElse(Optional.of(LocalDate.MAX));
        if (day.isEmpty()) {
            return Outcome.refused(
                    List.of(new Problem("", "--date is \"" + date.orElse("") + '"', "a day such as 2026-03-01")));
        }
        Catalogue catalogue = CatalogueFiles.load();
        Optional<MeasuredRoom> measured = MeasuredRoom.of(plan, catalogue, day.get());
        return asMeasured
                .flatMap(file -> trouble(file, plan, measured.flatMap(MeasuredRoom::fitted)))
                .map(problem -> Outcome.refused(List.of(problem)))
                .orElseGet(() -> told(plan, text(plan, quantities, measured)));
    }

    private static Optional<Problem> trouble(Path file, Plan plan, Optional<Fitted> fitted) {
        if (fitted.isEmpty()) {
            return Optional.of(new Problem("", "--as-measured: nothing was measured", "a log with readings that tell"));
        }
        Written written = new Written("--as-measured", file, List.of(".room.json"));
        return written.trouble(() -> RoomWriter.bytes(AsMeasured.room(plan, fitted.get())));
    }

    private String text(Plan plan, Quantities quantities, Optional<MeasuredRoom> measured) {
        if (isJson()) {
            return MeasuredJson.text(plan, quantities, measured);
        }
        return measured.map(found -> new MeasuredReport(quantities, new Names(plan.room())).text(found))
                .orElse(MeasuredWords.NOTHING_READ + "\n");
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
