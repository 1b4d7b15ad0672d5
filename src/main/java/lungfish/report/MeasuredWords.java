package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lungfish.measured.Culprit;
import lungfish.measured.Fitted;
import lungfish.measured.Happening;
import lungfish.measured.MeasuredRoom;
import lungfish.measured.NextReading;
import lungfish.measured.Suspect;
import lungfish.measured.Verdict;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.PartId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;

/** What a measured room says, in a keeper's words. */
public final class MeasuredWords {
    /** Where nothing was read that could be held against the room. */
    public static final String NOTHING_READ =
            "Nothing is in the log yet that tells how the room is: write down the gauge at the blower and a few jars when the valves"
                    + " are set, and the same again later.";

    private static final double WORTH_A_LINE = 0.02;

    private static final String HOW_TO_SHUT =
            " Switch the blower off at the plug first. Pinch or plug the airlines at the devices rather than turn the taps, so that"
                    + " the valves stay as they were set, and shut the bleed; open it again before the blower starts. No tank gets"
                    + " air meanwhile.";

    private final Quantities quantities;
    private final Names names;
    private final LogWords log;

    public MeasuredWords(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
        this.log = new LogWords(quantities, names);
    }

    /** The answer in a few words. */
    public String headline(MeasuredRoom measured) {
        return switch (measured.verdict()) {
            case LIKELY ->
                measured.fitted()
                        .map(fitted -> says(fitted))
                        .orElseGet(() -> culprit(measured.likeliest().culprit()));
            case NOTHING_WRONG -> "Nothing seems wrong";
            case CANNOT_TELL -> "Cannot tell yet what changed";
            case CONTRADICTION -> "The readings do not go together";
        };
    }

    private String says(Fitted fitted) {
        Happening happening = fitted.happening();
        if (happening instanceof Happening.Wear) {
            return "The blower gives "
                    + share(1 - fitted.blower().share() / fitted.blower().whenSet())
                    + " less than when the valves were set";
        }
        if (happening instanceof Happening.Leak) {
            return "About " + quantities.show(fitted.leakM3PerS(), Dimension.AIR_FLOW) + " leaks somewhere";
        }
        return happening instanceof Happening.Clog clog
                ? Sentences.capital(outlet(clog.id())) + " is clogging"
                : "Nothing seems wrong";
    }

    /** What it may be, in a few words. */
    public String culprit(Culprit culprit) {
        return switch (culprit.kind()) {
            case NOTHING -> "Nothing: all as it ages";
            case BLOWER -> "The blower gives less than its age explains";
            case LEAK -> "The pipe leaks";
            case CLOG -> Sentences.capital(outlet(culprit.outlet().orElseThrow())) + " is clogging";
        };
    }

    /** How sure that is, and what it rests on. */
    public String sure(MeasuredRoom measured) {
        String rests = Sentences.counted(measured.readings(), "reading") + " of " + measured.on()
                + ", held against the room as its valves were set on " + measured.setOn() + ".";
        return switch (measured.verdict()) {
            case LIKELY -> "Sure to " + odds(measured.likeliest().probability()) + " in 100, by " + rests;
            case NOTHING_WRONG ->
                "No leak, no weak blower and no clogged outlet stands out, by " + rests
                        + " Outlets that were not read may still be clogged.";
            case CANNOT_TELL -> "Several things would explain it, by " + rests;
            case CONTRADICTION -> "Nothing that can happen explains all of the " + rests;
        };
    }

    /** "97", never a hundred: nothing is that sure. */
    public static String odds(double probability) {
        long whole = (long) Math.floor(100 * probability + 1e-9);
        return probability > 0.99 ? "more than 99" : whole < 1 ? "less than 1" : String.valueOf(whole);
    }

    /** Those that are worth a line. */
    public static List<Suspect> worth(MeasuredRoom measured) {
        return measured.suspects().stream()
                .filter(suspect -> suspect.probability() >= WORTH_A_LINE)
                .limit(5)
                .toList();
    }

    /** What the fit found beside the answer, a sentence each. */
    public List<String> corrections(MeasuredRoom measured) {
        List<String> all = new ArrayList<>();
        measured.fitted().ifPresent(fitted -> {
            all.add(blower(fitted.blower()));
            if (measured.verdict() == Verdict.LIKELY) {
                size(fitted).ifPresent(all::add);
            }
            fitted.devices().forEach(takes -> all.add(takes(takes)));
            if (!fitted.others().isEmpty()) {
                all.add(others(fitted.others()));
            }
        });
        return List.copyOf(all);
    }

    private String blower(Fitted.BlowerGives gives) {
        return "At the pressure at which the valves were set the blower gives " + share(gives.share())
                + " of its data sheet, give or take " + share(gives.sd()) + "; it was " + share(gives.whenSet())
                + " then, and its age explains a loss of " + share(1 - gives.byAge()) + ".";
    }

    private Optional<String> size(Fitted fitted) {
        Happening happening = fitted.happening();
        if (happening instanceof Happening.Leak) {
            return Optional.of("The leak lets out " + quantities.show(fitted.leakM3PerS(), Dimension.AIR_FLOW)
                    + " at that pressure, give or take "
                    + quantities.show(fitted.leakSdM3PerS(), Dimension.AIR_FLOW) + ".");
        }
        return happening instanceof Happening.Clog clog
                ? Optional.of(Sentences.capital(outlet(clog.id())) + " takes " + share(clog.left())
                        + " of its air, give or take " + share(fitted.sizeSd()) + ".")
                : Optional.empty();
    }

    private String takes(Fitted.DeviceTakes takes) {
        String more = takes.morePa() >= 0 ? " more" : " less";
        return "Your devices of the class " + takes.name() + " take "
                + quantities.show(Math.abs(takes.morePa()), Dimension.PRESSURE) + more
                + " than their class, give or take "
                + quantities.show(takes.sdPa(), Dimension.PRESSURE) + ".";
    }

    private String others(List<OutletId> others) {
        String which = others.stream().map(this::outlet).collect(Collectors.joining(", "));
        return Sentences.capital(which) + (others.size() == 1 ? " answers" : " answer")
                + " as if another device hung there than the room says: look.";
    }

    /** Where a leak may be, a sentence each; none where it is not what happened. */
    public List<String> places(MeasuredRoom measured) {
        if (measured.places().size() < 2) {
            return measured.places().isEmpty()
                    ? List.of()
                    : List.of("No valve parts the pipe, so that only soap tells where it leaks.");
        }
        return measured.places().stream()
                .filter(place -> place.probability() >= 0.01)
                .map(place -> odds(place.probability()) + " in 100: " + new StretchWords(quantities, names).says(place))
                .toList();
    }

    /** What to read next, and how; empty where no reading would tell more. */
    public Optional<String> next(MeasuredRoom measured) {
        return measured.next().map(next -> {
            if (next instanceof NextReading.Jar jar) {
                return "Fill a jar at " + outlet(jar.outlet()) + ".";
            }
            return next instanceof NextReading.Fall fall
                    ? fall(fall.shut())
                    : "Read the gauge at the blower, all open as it always is.";
        });
    }

    private String fall(List<Outlet.OnRun> shut) {
        String which = shut.size() == 1 ? "the valve at " : "the valves at ";
        String valves = shut.isEmpty()
                ? ""
                : " and " + which + shut.stream().map(this::valve).collect(Collectors.joining(" and at "));
        return "Watch the gauge fall, with the blower off, every outlet" + valves
                + " shut: what it reads at first, in the end, and the seconds between. A pipe is small and may be empty in a second or two: film the gauge."
                + HOW_TO_SHUT;
    }

    private String valve(Outlet.OnRun at) {
        return quantities.show(at.atM(), Dimension.LENGTH) + " of "
                + names.of(at.run().part());
    }

    /** Readings that do not go with the rest, a sentence; empty where they all do. */
    public Optional<String> doubtful(MeasuredRoom measured) {
        if (measured.verdict() != Verdict.CONTRADICTION) {
            return Optional.empty();
        }
        return Optional.of(
                measured.doubtful().isEmpty()
                        ? "No single reading is to blame: read all of them again, and look whether the room's file says how"
                                + " the valves stand."
                        : "Without one of these the rest go together, the first before all: "
                                + measured.doubtful().stream()
                                        .limit(3)
                                        .map(log::says)
                                        .collect(Collectors.joining("; "))
                                + ". Read it again.");
    }

    /** What was read and does not count, a sentence; empty where all counts. */
    public Optional<String> unused(MeasuredRoom measured) {
        if (measured.unused().isEmpty()) {
            return Optional.empty();
        }
        String which =
                measured.unused().stream().map((Reading each) -> log.says(each)).collect(Collectors.joining("; "));
        return Optional.of("Not used, since nothing of it tells what changed: " + which + ".");
    }

    private String outlet(OutletId id) {
        return names.of(new PartId(PartId.Kind.OUTLET, id.text()));
    }

    private String share(double share) {
        return quantities.show(Math.round(share * 100) / 100.0, Dimension.SHARE);
    }
}
