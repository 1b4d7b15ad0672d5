package lungfish.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.catalogue.ThreadClass;
import lungfish.piping.RunMarks;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/** The taps of every run, measured from its corners and from the ends of its pieces; what is wrong with them. */
record Taps(List<Tap> taps, List<Finding> findings) {
    Taps {
        taps = List.copyOf(taps);
        findings = List.copyOf(findings);
    }

    static Taps of(List<TapPlace> places, List<RunMarks> marks, Pieces pieces, Ways ways, Walls walls) {
        return new Making(marks, pieces, ways, walls).made(places);
    }

    /** Measures the taps. */
    private static final class Making {
        private final Map<RunId, RunMarks> marks;
        private final Pieces pieces;
        private final Ways ways;
        private final Walls walls;
        private final List<Finding> findings = new ArrayList<>();
        private final Map<String, Tap.Hold> holds = new HashMap<>();
        private final Set<String> told = new HashSet<>();

        Making(List<RunMarks> marks, Pieces pieces, Ways ways, Walls walls) {
            this.marks =
                    marks.stream().collect(Collectors.toMap(each -> each.run().id(), Function.identity()));
            this.pieces = pieces;
            this.ways = ways;
            this.walls = walls;
        }

        Taps made(List<TapPlace> places) {
            List<Tap> taps = new ArrayList<>();
            for (TapPlace place : places) {
                RunMarks run = marks.get(place.run());
                if (run != null) {
                    taps.add(tap(place, run));
                }
            }
            return new Taps(taps, findings);
        }

        private Tap tap(TapPlace drawn, RunMarks run) {
            Piece piece = piece(drawn, run);
            TapPlace place = clear(drawn, run, piece);
            double alongM = onRun(place.alongM(), run);
            ThreadClass thread = ways.thread(place.boreM());
            Tap.Hold hold = holds.computeIfAbsent(place.run() + " " + thread.id(), absent -> {
                Walls.Verdict verdict = walls.of(run.run(), thread);
                verdict.findings().stream()
                        .filter(why -> told.add(run.run().size() + " " + thread.id() + " " + why.code()))
                        .forEach(findings::add);
                return verdict.hold();
            });
            return new Tap(
                    place.run(),
                    alongM,
                    run.cornerNumber(alongM),
                    alongM - run.cornerBeforeM(alongM),
                    piece.number(),
                    within(place.alongM(), piece, run) - piece.beginsM(),
                    place.holes(),
                    place.outlets(),
                    place.gang(),
                    thread,
                    hold,
                    place.alongM() - drawn.alongM());
        }

        private static double onRun(double alongM, RunMarks run) {
            double lengthM = run.run().lengthM();
            return run.run().closed() && alongM >= lengthM ? alongM - lengthM : alongM;
        }

        /** The place counted as its piece is: of a closed run's last piece on beyond the start. */
        private static double within(double alongM, Piece piece, RunMarks run) {
            return run.run().closed() && alongM < piece.start().atM()
                    ? alongM + run.run().lengthM()
                    : alongM;
        }

        private Piece piece(TapPlace place, RunMarks run) {
            List<Piece> own = pieces.pieces().stream()
                    .filter(piece -> piece.run().equals(place.run()))
                    .toList();
            return own.stream()
                    .filter(piece -> piece.holds(within(place.alongM(), piece, run)))
                    .findFirst()
                    .orElseGet(() -> own.get(own.size() - 1));
        }

        /** Clear of the sockets at both ends: moved there if the keeper has not said where it is, else told. */
        private TapPlace clear(TapPlace place, RunMarks run, Piece piece) {
            double alongM = within(place.alongM(), piece, run);
            double leastM = piece.beginsM() + piece.start().socketM() + place.halfWidthM();
            double mostM = piece.beginsM() + piece.cutM() - piece.end().socketM() - place.halfWidthM();
            if (alongM >= leastM && alongM <= mostM) {
                return place;
            }
            boolean atStart = alongM < leastM;
            double clearM = atStart ? leastM : mostM;
            if (!place.typed() && leastM <= mostM) {
                return place.at(place.alongM() + clearM - alongM);
            }
            findings.add(atFitting(place, atStart ? piece.start() : piece.end(), Math.abs(clearM - alongM)));
            return place;
        }

        private Finding atFitting(TapPlace place, Piece.End end, double missingM) {
            String outlets = place.gang().map(gang -> "gang " + gang.text()).orElseGet(() -> place.outlets().stream()
                    .map(OutletId::text)
                    .collect(Collectors.joining(", ")));
            return Finding.of(Code.TAP_AT_FITTING, place.run().part(), new Amount("missing", missingM, Dimension.DEPTH))
                    .with("outlets", outlets)
                    .with("one", Pieces.inSentence(ways, end.fitting()));
        }
    }
}
