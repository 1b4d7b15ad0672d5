package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * What a disturbance does to every outlet, in the order drawn and rack by rack: a tooth up for more air and down for less, as
 * long as the change, a mark at its end where the outlet no longer stands well, and a bar under those that it happens to.
 */
public final class ChangesPicture {
    /** Of the longest tooth, and the mark at its end. */
    private static final double TOOTH_PX = 26;

    /** Where no tooth points. */
    private static final double NO_TOOTH_PX = 7;

    private static final double NAME_PX = 14;
    private static final double GAP_PX = 12;
    private static final double WIDE_STEP_PX = 8;
    private static final double NARROW_STEP_PX = 5;
    private static final double LEGEND_LINE_PX = 16;

    /** Racks of fewer are given room for a name. */
    private static final int LEAST_TEETH = 6;

    /** With more outlets the teeth stand closer. */
    private static final int MANY = 120;

    /** A tooth of a smaller change lies inside the line that it stands on. */
    private static final double LEAST_SEEN = 0.01;

    /** The scale ends here, so that one outlet that doubles does not flatten all others; longer teeth are cut off. */
    private static final double MOST_SHARE = 1;

    /** A change of less than this still has a scale. */
    private static final double LEAST_SHARE = 0.1;

    /**
     * One outlet.
     *
     * @param rack the name of its rack
     * @param share by which its air changes
     * @param state how it then stands
     * @param isHit whether it happens to this one
     */
    public record Tooth(String rack, double share, OutletState state, boolean isHit) {}

    private ChangesPicture() {}

    /** Height that a width needs, for all teeth and the legend. */
    public static double height(List<Tooth> teeth, double widthPx, Look look) {
        int rows = new Rows(teeth, widthPx, look).count();
        return look.px(rows * rowPx(teeth) + 2 * LEGEND_LINE_PX + 4);
    }

    /** Paints the teeth, row under row, and what the marks mean. */
    public static void paint(List<Tooth> teeth, String longest, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double scale = ink.px(TOOTH_PX - 6) / scaleShare(teeth);
        Rows rows = new Rows(teeth, area.getWidth(), look);
        rows.each((tooth, x, row, isFirst, roomPx) -> {
            double base = area.getY() + ink.px(upPx(teeth) + row * rowPx(teeth));
            tooth(tooth, area.getX() + x, base, rows.stepPx(), scale, ink);
            if (isFirst) {
                name(tooth.rack(), area.getX() + x, base + ink.px(downPx(teeth)), roomPx, ink);
            }
        });
        double y = area.getY() + ink.px(rows.count() * rowPx(teeth) + LEGEND_LINE_PX);
        legend(teeth, longest, area.getX(), y, ink);
    }

    private static double upPx(List<Tooth> teeth) {
        return teeth.stream().anyMatch(tooth -> tooth.share() >= LEAST_SEEN) ? TOOTH_PX : NO_TOOTH_PX;
    }

    private static double downPx(List<Tooth> teeth) {
        return teeth.stream().anyMatch(tooth -> tooth.share() <= -LEAST_SEEN) ? TOOTH_PX : NO_TOOTH_PX;
    }

    /** The name stands right under its teeth, and apart from those of the next row. */
    private static double rowPx(List<Tooth> teeth) {
        return upPx(teeth) + downPx(teeth) + NAME_PX + NO_TOOTH_PX;
    }

    private static double scaleShare(List<Tooth> teeth) {
        double most = teeth.stream()
                .mapToDouble(tooth -> Math.abs(tooth.share()))
                .max()
                .orElse(0);
        return Math.min(MOST_SHARE, Math.max(LEAST_SHARE, most));
    }

    private static void tooth(Tooth tooth, double x, double base, double step, double scale, Ink ink) {
        double middle = x + step / 2;
        double share = Math.max(-MOST_SHARE, Math.min(MOST_SHARE, tooth.share()));
        double end = base - share * scale;
        ink.line(x, base, x + step, base, ink.palette().line(), 1);
        if (tooth.isHit()) {
            ink.line(x, base, x + step, base, ink.palette().ink(), 3);
        }
        ink.line(
                middle,
                base,
                middle,
                end,
                share >= 0 ? ink.palette().air() : ink.palette().accent(),
                share >= 0 ? 3 : 2);
        if (tooth.state() != OutletState.SERVED) {
            StateMark.paint(tooth.state(), middle, end, ink.px(2.4), ink);
        }
    }

    private static void name(String rack, double x, double top, double roomPx, Ink ink) {
        String fits = ink.fitting(rack, roomPx, ink.type().drawing());
        ink.text(
                fits,
                x,
                top + ink.px(NAME_PX - 6),
                ink.type().drawing(),
                ink.palette().softInk());
    }

    /** Explains the marks that are there. */
    private static void legend(List<Tooth> teeth, String longest, double left, double y, Ink ink) {
        told("up more air, down less; the longest " + longest, left, y, ink);
        double next = y + ink.px(LEGEND_LINE_PX);
        double x = left;
        if (teeth.stream().anyMatch(Tooth::isHit)) {
            ink.line(
                    x,
                    next - ink.px(4),
                    x + ink.px(14),
                    next - ink.px(4),
                    ink.palette().ink(),
                    3);
            x = told("it happens here", x + ink.px(20), next, ink);
        }
        for (OutletState state : List.of(OutletState.STARVED, OutletState.GREEDY, OutletState.CLOSED)) {
            if (teeth.stream().anyMatch(tooth -> tooth.state() == state)) {
                StateMark.paint(state, x + ink.px(4), next - ink.px(4), ink.px(2.8), ink);
                x = told(word(state), x + ink.px(12), next, ink);
            }
        }
    }

    private static String word(OutletState state) {
        return state == OutletState.GREEDY ? "more than asked" : state.word();
    }

    private static double told(String what, double x, double y, Ink ink) {
        ink.text(what, x, y, ink.type().drawing(), ink.palette().softInk());
        return x + ink.width(what, ink.type().drawing()) + ink.px(12);
    }

    /** Where each tooth stands: racks side by side with a gap between, on the next row where a tooth has no more room. */
    private record Rows(List<Tooth> teeth, double widthPx, Look look) {
        /** Is told of each tooth. */
        private interface Told {
            void at(Tooth tooth, double x, int row, boolean isFirst, double roomPx);
        }

        double stepPx() {
            return look.px(teeth.size() > MANY ? NARROW_STEP_PX : WIDE_STEP_PX);
        }

        int count() {
            int[] last = {0};
            each((tooth, x, row, isFirst, roomPx) -> last[0] = row);
            return last[0] + 1;
        }

        void each(Told told) {
            double x = 0;
            int row = 0;
            double start = 0;
            String rack = "";
            for (int i = 0; i < teeth.size(); i++) {
                boolean isFirst = !teeth.get(i).rack().equals(rack);
                x += isFirst && x > 0 ? look.px(GAP_PX) : 0;
                if (x + stepPx() > widthPx || (isFirst && x > 0 && x + rackPx(i) > widthPx)) {
                    x = 0;
                    row++;
                }
                start = isFirst ? x : Math.min(start, x);
                told.at(teeth.get(i), x, row, isFirst, roomPx(i, x));
                rack = teeth.get(i).rack();
                x += isLastOfRack(i) ? Math.max(stepPx(), start + LEAST_TEETH * stepPx() - x) : stepPx();
            }
        }

        private boolean isLastOfRack(int i) {
            return i + 1 == teeth.size()
                    || !teeth.get(i + 1).rack().equals(teeth.get(i).rack());
        }

        /** From the first tooth of a rack to the next rack, or to the end of the row. */
        private double roomPx(int first, double x) {
            return Math.min(widthPx - x, rackPx(first) + look.px(GAP_PX) - 2);
        }

        /** How wide the rack of a tooth is from there on; at the least as wide as a short name. */
        private double rackPx(int first) {
            int end = first;
            while (end < teeth.size()
                    && teeth.get(end).rack().equals(teeth.get(first).rack())) {
                end++;
            }
            return Math.max(end - first, LEAST_TEETH) * stepPx();
        }
    }
}
