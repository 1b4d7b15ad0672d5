package lungfish.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lungfish.catalogue.Catalogue;
import lungfish.piping.RunMarks;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;

/**
 * What is bought, cut, drilled and set to build a room as planned.
 *
 * @param pieces of pipe, run by run
 * @param cuts by pipe size: the pieces of that size, in the order of {@code pieces}, packed into stock
 * @param taps run by run, along each
 * @param order in which outlets are set; empty where there is nothing to set
 * @param findings what will be in the way while building
 * @param assumptions what was taken where the room is silent
 */
public record BuildPlan(
        PartsList parts,
        List<Piece> pieces,
        Map<String, Cutting> cuts,
        List<Tap> taps,
        List<SettingOrder.Turn> order,
        Placing placing,
        List<Finding> findings,
        List<Assumption> assumptions) {
    public BuildPlan {
        pieces = List.copyOf(pieces);
        cuts = new TreeMap<>(cuts);
        taps = List.copyOf(taps);
        order = List.copyOf(order);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** The pieces of one size, as its cutting counts them. */
    public List<Piece> pieces(String size) {
        return pieces.stream().filter(piece -> piece.size().equals(size)).toList();
    }

    /** What a class of fitting is called in a shop; its id where the catalogue has none. */
    public static String partName(Catalogue catalogue, String fitting) {
        return catalogue.fitting(fitting).map(PartNames::of).orElse(fitting);
    }

    /** How a planned room is built. */
    public static BuildPlan of(Plan plan, Catalogue catalogue) {
        Ways ways = new Ways(plan.room(), catalogue);
        Optional<Hung> hung = plan.piped().map(piped -> new Hung(plan.room(), piped));
        List<TapPlace> places = hung.map(Hung::taps).orElse(List.of());
        List<RunMarks> marks = RunMarks.of(plan.room(), hung.map(Hung::feeds).orElse(List.of()));
        Pieces pieces = Pieces.of(marks, ways, places);
        Taps taps = Taps.of(places, marks, pieces, ways, new Walls(ways, plan.findings()));
        Map<String, Cutting> cuts = cuts(pieces, ways);
        Placing placing = Placing.of(plan, hung);
        List<Finding> findings = new ArrayList<>(taps.findings());
        findings.addAll(pieces.findings());
        findings.addAll(openEnds(marks));
        return new BuildPlan(
                parts(plan, ways, hung, marks, pieces, taps.taps(), cuts, placing),
                pieces.pieces(),
                cuts,
                taps.taps(),
                hung.map(each -> SettingOrder.of(
                                plan, each, plan.piped().orElseThrow().needs()))
                        .orElse(List.of()),
                placing,
                findings,
                ways.assumptions());
    }

    private static Map<String, Cutting> cuts(Pieces pieces, Ways ways) {
        Map<String, List<Double>> lengths = new TreeMap<>();
        pieces.pieces().forEach(piece -> lengths.computeIfAbsent(piece.size(), absent -> new ArrayList<>())
                .add(piece.cutM()));
        Map<String, Cutting> cuts = new TreeMap<>();
        lengths.forEach((size, each) -> cuts.put(size, Cutting.of(each, ways.stockM(size), ways.kerfM())));
        return cuts;
    }

    private static PartsList parts(
            Plan plan,
            Ways ways,
            Optional<Hung> hung,
            List<RunMarks> marks,
            Pieces pieces,
            List<Tap> taps,
            Map<String, Cutting> cuts,
            Placing placing) {
        Tally tally = new Tally(ways);
        PipeParts pipe = new PipeParts(ways, tally, marks, pieces);
        pipe.pipe(cuts);
        pipe.fittings();
        hung.ifPresent(each -> {
            AirParts air = new AirParts(ways, tally, plan.piped().orElseThrow(), each);
            air.taps(taps);
            air.outlets();
        });
        new BlowerParts(ways, tally, placing).add();
        pipe.joining(taps.stream().mapToLong(Tap::holes).sum());
        return tally.list();
    }

    private static List<Finding> openEnds(List<RunMarks> marks) {
        return marks.stream()
                .flatMap(run -> run.marks().stream()
                        .filter(mark -> mark.kind() == RunMarks.Kind.OPEN)
                        .map(mark -> Finding.of(
                                Code.OPEN_END,
                                run.run().id().part(),
                                new Amount("found", mark.alongM(), Dimension.LENGTH))))
                .toList();
    }
}
