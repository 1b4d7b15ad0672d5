package lungfish.edit;

import static lungfish.edit.DraftLook.Complaint.at;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.edit.DraftLook.Complaint;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** Reads the points of a draft and checks that they are a curve that a machine can have. */
final class DraftCurve {
    /** No small machine puts more of its watts into the air; most are below a third. */
    private static final double MOST_EFFICIENT = 0.7;
    /** One that puts less is no blower but a heater, or the units are wrong. */
    private static final double LEAST_EFFICIENT = 0.01;
    /** Stands for the watts of a curve that says none yet. */
    private static final double UNKNOWN_WATTS = 1;

    private static final double MOST_PA = 2e5;
    private static final double MOST_M3_PER_S = 1;
    private static final int PRESSURE = 0;
    private static final int FLOW = 1;
    private static final int WATTS = 2;

    private final BlowerDraft draft;
    private final Quantities quantities;
    private final OptionalDouble wattsOfAll;
    private final List<Complaint> complaints = new ArrayList<>();
    private final List<CurvePoint> points = new ArrayList<>();
    private final List<Integer> rows = new ArrayList<>();
    private boolean hasAllWatts = true;

    DraftCurve(BlowerDraft draft, Quantities quantities, OptionalDouble wattsOfAll) {
        this.draft = draft;
        this.quantities = quantities;
        this.wattsOfAll = wattsOfAll;
        for (int row = 0; row < draft.points().size(); row++) {
            if (draft.points().get(row).stream().anyMatch(cell -> !cell.isBlank())) {
                read(row);
            }
        }
        if (complaints.isEmpty()) {
            checkWhole();
        }
    }

    List<Complaint> complaints() {
        return complaints;
    }

    /** Fit to be drawn: two or more that fall; empty where they are not. */
    Optional<List<CurvePoint>> points() {
        boolean isCurve = points.size() >= 2 && complaints.stream().noneMatch(Complaint::isOfPoint);
        return isCurve ? Optional.of(List.copyOf(points)) : Optional.empty();
    }

    boolean hasAllWatts() {
        return hasAllWatts && !points.isEmpty();
    }

    private void read(int row) {
        OptionalDouble pa = cell(row, PRESSURE, MOST_PA, true);
        OptionalDouble flow = cell(row, FLOW, MOST_M3_PER_S, true);
        OptionalDouble watts = cell(row, WATTS, 1e6, false);
        hasAllWatts &= watts.isPresent();
        if (pa.isPresent() && flow.isPresent()) {
            double drawn = watts.orElse(wattsOfAll.orElse(UNKNOWN_WATTS));
            CurvePoint point = new CurvePoint(pa.getAsDouble(), flow.getAsDouble(), drawn);
            check(row, point);
            points.add(point);
            rows.add(row);
        }
    }

    private OptionalDouble cell(int row, int column, double most, boolean isNeeded) {
        String text = draft.points().get(row).get(column).strip();
        Dimension dimension = BlowerDraft.COLUMNS.get(column);
        if (text.isEmpty()) {
            if (isNeeded) {
                complaints.add(at(
                        row,
                        column,
                        "Row " + (row + 1) + " has no " + (column == PRESSURE ? "pressure" : "flow")
                                + ": type it, or clear the row."));
            }
            return OptionalDouble.empty();
        }
        Optional<Double> kept = asBefore(row, column, text);
        return kept.isPresent()
                ? OptionalDouble.of(kept.get())
                : quantities.parse(text, dimension).match(si -> possible(row, column, si, most), problem -> {
                    complaints.add(at(
                            row,
                            column,
                            "Row " + (row + 1) + ": " + problem.found() + ". Expected " + problem.expected() + "."));
                    return OptionalDouble.empty();
                });
    }

    private Optional<Double> asBefore(int row, int column, String text) {
        return draft.before()
                .filter(kind -> row < kind.points().size())
                .map(kind -> kind.points().get(row))
                .filter(point ->
                        BlowerDraft.shown(point, quantities).get(column).equals(text))
                .map(point ->
                        column == PRESSURE ? point.gaugePa() : column == FLOW ? point.freeM3PerS() : point.watts());
    }

    private OptionalDouble possible(int row, int column, double si, double most) {
        Dimension dimension = BlowerDraft.COLUMNS.get(column);
        boolean isTooLittle = column == WATTS ? si <= 0 : si < 0;
        if (!isTooLittle && si <= most) {
            return OptionalDouble.of(si);
        }
        complaints.add(at(
                row,
                column,
                "Row " + (row + 1) + ": " + quantities.show(si, dimension) + " is "
                        + (isTooLittle ? "too little" : "more than any such machine")
                        + ". Check the number and its unit."));
        return OptionalDouble.empty();
    }

    private void check(int row, CurvePoint point) {
        if (points.isEmpty()) {
            return;
        }
        CurvePoint before = points.get(points.size() - 1);
        String line = "Row " + (row + 1) + ": ";
        if (point.gaugePa() <= before.gaugePa()) {
            complaints.add(at(
                    row,
                    PRESSURE,
                    line + pressure(point.gaugePa()) + " is no more than the " + pressure(before.gaugePa())
                            + " of the row before. Begin in the open, and let the pressure rise."));
        } else if (point.freeM3PerS() > before.freeM3PerS()) {
            complaints.add(at(
                    row,
                    FLOW,
                    line + "the flow rises from " + flow(before.freeM3PerS()) + " to "
                            + flow(point.freeM3PerS())
                            + " though the pressure rises too. Against more pressure a blower gives"
                            + " less: mend one of the two."));
        }
    }

    private void checkWhole() {
        if (points.size() < 2) {
            complaints.add(Complaint.ofWhole(
                    "Type two points of its curve or more: the flow in the open, and what is left at pressure."));
            return;
        }
        if (points.get(0).freeM3PerS() <= 0) {
            complaints.add(at(
                    rows.get(0),
                    FLOW,
                    "Row " + (rows.get(0) + 1) + ": it gives nothing at its lowest pressure."
                            + " Type what it gives in the open."));
            return;
        }
        if (hasAllWatts || wattsOfAll.isPresent()) {
            checkPower();
        }
    }

    private void checkPower() {
        for (int i = 0; i < points.size(); i++) {
            CurvePoint point = points.get(i);
            double efficiency = Rated.efficiency(point.gaugePa(), point.freeM3PerS(), point.watts());
            if (efficiency > MOST_EFFICIENT) {
                complaints.add(at(
                        rows.get(i),
                        WATTS,
                        "Row " + (rows.get(i) + 1) + ": to push " + flow(point.freeM3PerS())
                                + " against " + pressure(point.gaugePa()) + " takes "
                                + power(Rated.airWatts(point.gaugePa(), point.freeM3PerS())) + " in the air alone; "
                                + power(point.watts())
                                + " from the mains cannot do that. Check the watts and the units."));
                return;
            }
        }
        Rated rated = Rated.of(points);
        if (rated.efficiency() < LEAST_EFFICIENT) {
            complaints.add(at(
                    rows.get(0),
                    WATTS,
                    "Of its watts less than a hundredth would get into the air, even at "
                            + pressure(rated.gaugePa()) + " and " + flow(rated.freeM3PerS())
                            + ". Check the units of flow and pressure."));
        }
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }

    private String power(double watts) {
        return quantities.show(watts, Dimension.POWER);
    }
}
