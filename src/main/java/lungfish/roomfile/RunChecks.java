package lungfish.roomfile;

import java.util.HashMap;
import java.util.Map;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import lungfish.json.NumberText;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Outlet;
import lungfish.room.Run;
import lungfish.room.RunId;

/** A run has corners enough, what sits on it sits within its length, and only valves have an opening. */
final class RunChecks {
    private static final double ROUNDING_M = 0.001;

    private final Spots spots;
    private final Catalogue catalogue;
    private final Problems problems;
    private final Map<RunId, Double> lengths = new HashMap<>();

    RunChecks(Spots spots, Catalogue catalogue, Problems problems) {
        this.spots = spots;
        this.catalogue = catalogue;
        this.problems = problems;
        spots.runs()
                .forEach(
                        run -> lengths.putIfAbsent(run.value().id(), run.value().lengthM()));
    }

    void tell() {
        spots.runs().forEach(this::run);
        spots.outlets().forEach(outlet -> outlet.value().tap().ifPresent(tap -> {
            if (tap instanceof Outlet.OnRun onRun) {
                within(outlet.place().key("tap"), onRun);
            }
        }));
        spots.gangs()
                .forEach(gang ->
                        gang.value().tap().ifPresent(tap -> within(gang.place().key("tap"), tap)));
        spots.blowers().forEach(blower -> blower.value()
                .feeds()
                .ifPresent(feeds -> within(blower.place().key("feeds"), feeds)));
    }

    private void run(Spot<Run> spot) {
        Run run = spot.value();
        int least = run.closed() ? 3 : 2;
        if (run.points().size() < least) {
            problems.add(
                    spot.place().key("points"),
                    (run.closed() ? "a closed run has " : "a run has ")
                            + run.points().size() + " corners",
                    least + " or more");
        }
        spot.inside("fittings", Run::fittings).forEach(fitting -> fitting(fitting, run.id()));
    }

    private void fitting(Spot<Run.Fitting> spot, RunId run) {
        Run.Fitting fitting = spot.value();
        within(spot.place(), new Outlet.OnRun(run, fitting.atM()));
        boolean cannotShut =
                catalogue.fitting(fitting.kind()).filter(each -> !each.valve()).isPresent();
        if (cannotShut && fitting.opening().isPresent()) {
            problems.add(
                    spot.place().key("opening"),
                    "\"" + fitting.kind() + "\" is no valve and has no opening",
                    "no opening here, or a valve: " + valves());
        }
    }

    private String valves() {
        return String.join(
                ", ",
                Catalogue.ids(
                        catalogue.fittings().stream()
                                .filter(FittingClass::valve)
                                .toList(),
                        FittingClass::id));
    }

    private void within(Place place, Outlet.OnRun onRun) {
        double length = lengths.getOrDefault(onRun.run(), Double.NaN);
        if (onRun.atM() > length + ROUNDING_M) {
            problems.add(
                    place.key("at_m"),
                    NumberText.of(onRun.atM()) + " is beyond the end of the run \"" + onRun.run() + '"',
                    "at most " + NumberText.of(Math.floor(length * 1e4) / 1e4));
        }
    }
}
