package lungfish.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** How much a place that the keeper has typed holds on to where it is, against a hole that is not. */
    private static final double TYPED = 1e9;

    /** No tape tells less. */
    private static final double TENTH_M = 1e-4;

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
            Map<Piece, List<TapPlace>> byPiece = new LinkedHashMap<>();
            for (TapPlace place : places) {
                piece(place).ifPresent(piece -> byPiece.computeIfAbsent(piece, absent -> new ArrayList<>())
                        .add(place));
            }
            List<Tap> taps = new ArrayList<>();
            byPiece.forEach((piece, drawn) -> taps.addAll(taps(piece, drawn)));
            return new Taps(taps, findings);
        }

        /** The taps of one piece, along it. */
        private List<Tap> taps(Piece piece, List<TapPlace> drawn) {
            RunMarks run = marks(piece);
            List<TapPlace> places = new ArrayList<>(drawn);
            places.replaceAll(place -> place.at(within(place.alongM(), piece, run)));
            places.sort(Comparator.comparingDouble(TapPlace::alongM));
            double[] goM = spaced(piece, places);
            List<Tap> taps = new ArrayList<>();
            for (int i = 0; i < goM.length; i++) {
                TapPlace place = places.get(i);
                double alongM = place.typed() ? place.alongM() : goM[i];
                look(place.at(alongM), piece);
                taps.add(tap(place, alongM, piece, run));
            }
            return taps;
        }

        /** Apart from each other and clear of the sockets at both ends; a place that is typed hardly gives way. */
        private static double[] spaced(Piece piece, List<TapPlace> places) {
            int n = places.size();
            double[] wanted = places.stream().mapToDouble(TapPlace::alongM).toArray();
            double[] weights = places.stream()
                    .mapToDouble(place -> place.typed() ? TYPED : place.holes())
                    .toArray();
            double[] gaps = new double[n];
            for (int i = 1; i < n; i++) {
                gaps[i] = TapPlace.APART_M
                        * (places.get(i - 1).holes() + places.get(i).holes())
                        / 2.0;
            }
            return Spacing.spread(wanted, gaps, weights, leastM(piece, places.get(0)), mostM(piece, places.get(n - 1)));
        }

        private static double leastM(Piece piece, TapPlace place) {
            return piece.beginsM() + piece.start().socketM() + place.halfWidthM();
        }

        private static double mostM(Piece piece, TapPlace place) {
            return piece.beginsM() + piece.cutM() - piece.end().socketM() - place.halfWidthM();
        }

        /** Tells what comes too close to a socket, where it is typed or the piece is too short for it. */
        private void look(TapPlace place, Piece piece) {
            double underM = leastM(piece, place) - place.alongM();
            double overM = place.alongM() - mostM(piece, place);
            if (Math.max(underM, overM) > TENTH_M) {
                findings.add(atFitting(place, underM > overM ? piece.start() : piece.end(), Math.max(underM, overM)));
            }
        }

        private Tap tap(TapPlace place, double placedM, Piece piece, RunMarks run) {
            double alongM = onRun(placedM, run);
            ThreadClass thread = ways.thread(place.boreM());
            return new Tap(
                    place.run(),
                    alongM,
                    run.cornerNumber(alongM),
                    alongM - run.cornerBeforeM(alongM),
                    piece.number(),
                    placedM - piece.beginsM(),
                    place.holes(),
                    place.outlets(),
                    place.gang(),
                    thread,
                    hold(run, thread),
                    placedM - place.alongM());
        }

        private Tap.Hold hold(RunMarks run, ThreadClass thread) {
            return holds.computeIfAbsent(run.run().id() + " " + thread.id(), absent -> {
                Walls.Verdict verdict = walls.of(run.run(), thread);
                verdict.findings().stream()
                        .filter(why -> told.add(run.run().size() + " " + thread.id() + " " + why.code()))
                        .forEach(findings::add);
                return verdict.hold();
            });
        }

        private RunMarks marks(Piece piece) {
            RunMarks known = marks.get(piece.run());
            if (known == null) {
                throw new IllegalArgumentException("no run '" + piece.run() + "'");
            }
            return known;
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

        private Optional<Piece> piece(TapPlace place) {
            List<Piece> own = pieces.pieces().stream()
                    .filter(piece -> piece.run().equals(place.run()))
                    .toList();
            Optional<Piece> last = own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() - 1));
            return own.stream()
                    .filter(piece -> piece.holds(within(place.alongM(), piece, marks(piece))))
                    .findFirst()
                    .or(() -> last);
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
