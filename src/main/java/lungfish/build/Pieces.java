package lungfish.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.catalogue.FittingClass;
import lungfish.piping.RunMarks;
import lungfish.piping.RunMarks.Kind;
import lungfish.piping.RunMarks.Mark;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Point;
import lungfish.room.Run;
import lungfish.room.RunId;

/**
 * The runs of a room as pieces of pipe. A piece goes from centre to centre of two neighbouring fittings, less what each takes
 * off; one that is longer than the stock is made of several with couplings between.
 *
 * @param pieces run by run, along each
 * @param couplings how many joints in mid-piece each size of pipe needs
 */
record Pieces(List<Piece> pieces, Map<String, Integer> couplings, List<Finding> findings) {
    static final String COUPLING = "coupling";

    Pieces {
        pieces = List.copyOf(pieces);
        couplings = Map.copyOf(couplings);
        findings = List.copyOf(findings);
    }

    /**
     * The pieces of all runs.
     *
     * @param taps where something is tapped into the pipe, so that no coupling is put there
     */
    static Pieces of(List<RunMarks> marks, Ways ways, List<TapPlace> taps) {
        return new Making(marks, ways, taps).made();
    }

    /** Cuts the runs. */
    private static final class Making {
        private final Map<RunId, RunMarks> marks;
        private final Ways ways;
        private final List<TapPlace> taps;
        private final List<Piece> pieces = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
        private int number;

        Making(List<RunMarks> marks, Ways ways, List<TapPlace> taps) {
            this.marks =
                    marks.stream().collect(Collectors.toMap(each -> each.run().id(), Function.identity()));
            this.ways = ways;
            this.taps = taps;
            marks.forEach(this::cut);
        }

        Pieces made() {
            Map<String, Integer> couplings = pieces.stream()
                    .filter(piece -> piece.end().fitting().equals(COUPLING) && isMidPiece(piece))
                    .collect(Collectors.toMap(Piece::size, piece -> 1, Integer::sum));
            return new Pieces(pieces, couplings, findings);
        }

        private boolean isMidPiece(Piece piece) {
            return marks(piece.run()).marks().stream()
                    .noneMatch(mark -> mark.fitting().equals(COUPLING)
                            && Math.abs(mark.alongM() - piece.end().atM()) < 1e-6);
        }

        private RunMarks marks(RunId run) {
            RunMarks known = marks.get(run);
            if (known == null) {
                throw new IllegalArgumentException("no run '" + run + "'");
            }
            return known;
        }

        private void cut(RunMarks of) {
            Run run = of.run();
            List<Mark> all = of.marks();
            number = 0;
            for (int i = 1; i < all.size(); i++) {
                piece(run, end(run, all.get(i - 1), 0), end(run, all.get(i), 0));
            }
            if (run.closed() && !all.isEmpty()) {
                piece(run, end(run, all.get(all.size() - 1), 0), end(run, all.get(0), run.lengthM()));
            }
        }

        private Piece.End end(Run run, Mark mark, double furtherM) {
            String fitting = mark.kind() == Kind.INTO_OTHER ? counterpart(run, mark) : mark.fitting();
            String size = mark.kind() == Kind.INTO_OTHER
                    ? mark.other().map(other -> marks(other).run().size()).orElse(run.size())
                    : run.size();
            return new Piece.End(
                    fitting,
                    mark.alongM() + furtherM,
                    ways.takeOffM(fitting, size),
                    ways.joints(run).socketM());
        }

        /** The fitting of the other run that this run's end is in: the nearest that is there for it. */
        private String counterpart(Run run, Mark mark) {
            Point here = run.at(mark.alongM());
            RunMarks other = marks(mark.other().orElseThrow());
            return other.marks().stream()
                    .filter(each -> each.kind() == Kind.FITTING && each.other().isPresent())
                    .min(Comparator.comparingDouble(
                            each -> other.run().at(each.alongM()).distanceM(here)))
                    .map(Mark::fitting)
                    .orElse(mark.fitting());
        }

        private void piece(Run run, Piece.End start, Piece.End end) {
            double cutM = end.atM() - start.atM() - start.takeOffM() - end.takeOffM();
            double beginsM = start.atM() + start.takeOffM();
            Piece whole = new Piece(run.id(), number + 1, run.size(), start, end, beginsM, cutM);
            if (whole.bareM() < 0) {
                findings.add(tooShort(whole));
                number++;
                pieces.add(new Piece(run.id(), number, run.size(), start, end, beginsM, whole.leastM()));
                return;
            }
            split(whole);
        }

        /** Takes full lengths off the stock until the rest fits; a coupling keeps clear of the taps, and of the last end. */
        private void split(Piece whole) {
            double stockM = ways.stockM(whole.size());
            double takeOffM = ways.takeOffM(COUPLING, whole.size());
            Piece rest = whole;
            while (rest.cutM() > stockM) {
                double firstM = firstM(rest, stockM, takeOffM);
                Piece.End joint = new Piece.End(
                        COUPLING,
                        rest.beginsM() + firstM + takeOffM,
                        takeOffM,
                        rest.start().socketM());
                number++;
                pieces.add(new Piece(rest.run(), number, rest.size(), rest.start(), joint, rest.beginsM(), firstM));
                double beginsM = joint.atM() + takeOffM;
                rest = new Piece(
                        rest.run(),
                        number + 1,
                        rest.size(),
                        joint,
                        rest.end(),
                        beginsM,
                        rest.cutM() - firstM - 2 * takeOffM);
            }
            number++;
            pieces.add(rest);
        }

        private double firstM(Piece rest, double stockM, double takeOffM) {
            double leastM = Math.max(rest.leastM() * 2, stockM / 2);
            double longestM = Math.min(stockM, rest.cutM() - 2 * takeOffM - 2 * rest.leastM());
            for (double lengthM = longestM; lengthM >= leastM; lengthM -= 0.01) {
                if (isClear(
                        rest.run(),
                        rest.beginsM() + lengthM + takeOffM,
                        rest.start().socketM())) {
                    return lengthM;
                }
            }
            return longestM;
        }

        private boolean isClear(RunId run, double jointM, double socketM) {
            return taps.stream()
                    .filter(tap -> tap.run().equals(run))
                    .allMatch(tap -> Math.abs(tap.alongM() - jointM) > socketM + tap.halfWidthM());
        }

        private Finding tooShort(Piece piece) {
            double leftM = Math.max(0, piece.cutM());
            return Finding.of(
                            Code.PIECE_TOO_SHORT,
                            piece.run().part(),
                            new Amount("found", leftM, Dimension.DEPTH),
                            new Amount("allowed", piece.leastM(), Dimension.DEPTH),
                            new Amount("missing", piece.leastM() - piece.cutM(), Dimension.DEPTH))
                    .with("piece", Integer.toString(piece.number()))
                    .with("one", name(piece.start()))
                    .with("other", name(piece.end()));
        }

        private String name(Piece.End end) {
            return inSentence(ways, end.fitting());
        }
    }

    /** What a fitting is called in a sentence. */
    static String inSentence(Ways ways, String fitting) {
        Optional<FittingClass> known = ways.catalogue().fitting(fitting);
        if (known.isEmpty()) {
            return "the hose of the blower";
        }
        String name = PartNames.of(known.get());
        return "the " + name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
