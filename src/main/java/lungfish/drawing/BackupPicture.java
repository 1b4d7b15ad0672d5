package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.oxygen.TankTime;
import lungfish.plan.Plan;
import lungfish.plan.Safe;
import lungfish.quantity.Dimension;

/**
 * Backup as two time lines from the moment the mains fail: with what there is (the battery, then the oxygen that is left in the
 * water), and with nothing but the water. Each ends where the first tank is in danger at worst; a thin line goes on to where
 * that is likely. A flag stands where it should hold.
 */
public final class BackupPicture {
    private static final double BAR_PX = 9;
    private static final double CAPTION_PX = 14;
    private static final double ROW_PX = 30;
    private static final double AXIS_PX = 20;
    private static final double[] STEPS_H = {0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96, 168};
    private static final double HOUR_S = 3600;
    private static final double LABELS = 5;

    private final Ink ink;
    private final Rectangle2D area;
    private final BackupAnswer backup;
    private final Optional<TankTime> first;
    private final double fullS;

    private BackupPicture(Ink ink, Rectangle2D area, BackupAnswer backup, Optional<TankTime> first) {
        this.ink = ink;
        this.area = area;
        this.backup = backup;
        this.first = first;
        this.fullS = full();
    }

    public static double height(Look look) {
        return look.px(2 * ROW_PX + AXIS_PX);
    }

    /** Paints it from the top of the area; nothing where there is no answer. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        plan.backup().ifPresent(backup -> {
            Optional<TankTime> first = Safe.of(plan).flatMap(Safe::first);
            new BackupPicture(Ink.flat(look, g), area, backup, first).paint();
        });
    }

    private void paint() {
        scale();
        double runtime = runtimeS();
        caption(runtime > 0 ? "with the battery" : "no battery", runtime + worstS(), 0);
        backup.essentialRuntimeS().ifPresent(essential -> {
            if (essential > runtime) {
                ink.draw(bar(runtime, essential, 0), ink.palette().good(), ink.dashed(1.2, 3));
            }
        });
        water(runtime, 0);
        if (runtime > 0) {
            ink.fill(bar(0, runtime, 0), ink.palette().good());
        }
        if (runtime > 0 && first.isPresent()) {
            caption("without it", worstS(), 1);
            water(0, 1);
        }
        wish(backup.wishedS().si());
    }

    private double runtimeS() {
        return backup.runtimeS().orElse(0);
    }

    private double worstS() {
        return first.stream()
                .flatMapToDouble(tank -> tank.cautiousS().stream())
                .findFirst()
                .orElse(0);
    }

    private double full() {
        double furthest = Math.max(backup.wishedS().si(), runtimeS() + worstS());
        // Essential outlets may run for days on the same battery: the line goes on, its end says so.
        double essential = Math.min(backup.essentialRuntimeS().orElse(0), 2 * furthest);
        return 1.1 * Math.max(furthest, essential);
    }

    private double x(double s) {
        return area.getX() + ink.px(2) + (area.getWidth() - ink.px(4)) * Math.min(1, s / fullS);
    }

    private double top(int row) {
        return area.getY() + ink.px(row * ROW_PX + CAPTION_PX);
    }

    private Rectangle2D bar(double fromS, double toS, int row) {
        return new Rectangle2D.Double(x(fromS), top(row), Math.max(1, x(toS) - x(fromS)), ink.px(BAR_PX));
    }

    private Font font() {
        return ink.type().drawing();
    }

    private String time(double s) {
        return ink.look().quantities().show(s, Dimension.DURATION);
    }

    /** "with the battery: danger after 8 h 45 min at worst". */
    private void caption(String which, double dangerS, int row) {
        String says = first.isEmpty() ? which : which + ": danger after " + time(dangerS) + " at worst";
        ink.text(
                ink.fitting(says, area.getWidth(), font()),
                area.getX() + ink.px(2),
                top(row) - ink.px(4),
                font(),
                ink.palette().softInk());
    }

    /** What the water still holds, from a time on; danger at its end, and a thin line to where that is likely. */
    private void water(double fromS, int row) {
        if (first.isEmpty()) {
            return;
        }
        double worst = fromS + worstS();
        Rectangle2D box = bar(fromS, worst, row);
        ink.fillWater(box);
        ink.draw(box, ink.palette().waterEdge(), 1);
        double middle = box.getCenterY();
        OptionalDouble likely = first.get().likelyS();
        double end = likely.isPresent() ? fromS + likely.getAsDouble() : fullS;
        ink.draw(
                new java.awt.geom.Line2D.Double(x(worst), middle, x(end), middle),
                ink.palette().waterEdge(),
                ink.dashed(1.2, 3));
        triangle(x(worst), middle);
    }

    /** Points at the moment of danger. */
    private void triangle(double x, double middle) {
        double half = ink.px(4.5);
        Path2D mark = new Path2D.Double();
        mark.moveTo(x, middle);
        mark.lineTo(x + 2 * half, middle - half);
        mark.lineTo(x + 2 * half, middle + half);
        mark.closePath();
        ink.fill(mark, ink.palette().accent());
    }

    /** A flag across each line: so long it should hold. Captions stay free of it. */
    private void wish(double s) {
        double bottom = area.getY() + ink.px(2 * ROW_PX);
        double over = ink.px(2.5);
        for (int row = 0; row < 2; row++) {
            double end = row == 0 ? top(row) + ink.px(BAR_PX) + over : bottom + ink.px(3);
            ink.line(x(s), top(row) - over, x(s), end, ink.palette().ink(), 2);
        }
        ink.textIn("wished", wished(s), ink.type().drawingName(), ink.palette().ink());
    }

    private Rectangle2D wished(double s) {
        double wide = ink.width("wished", ink.type().drawingName());
        double left = Math.min(Math.max(area.getX(), x(s) - wide / 2), area.getMaxX() - wide);
        double high = ink.height(font());
        return new Rectangle2D.Double(left, area.getY() + ink.px(2 * ROW_PX + 16) - high, wide, high);
    }

    private void scale() {
        double step = Arrays.stream(STEPS_H)
                .map(hours -> hours * HOUR_S)
                .filter(each -> fullS / each <= LABELS)
                .findFirst()
                .orElse(fullS);
        double bottom = area.getY() + ink.px(2 * ROW_PX);
        Color soft = ink.palette().softInk();
        Rectangle2D wished = wished(backup.wishedS().si());
        ink.line(x(0), bottom, x(fullS), bottom, ink.palette().line(), 1);
        for (double s = 0; s <= fullS; s += step) {
            String text = s == 0 ? "0" : time(s);
            double wide = ink.width(text, font());
            double left = Math.min(Math.max(area.getX(), x(s) - wide / 2), area.getMaxX() - wide);
            boolean isFree = left + wide + ink.px(4) < wished.getX() || left > wished.getMaxX() + ink.px(4);
            ink.line(x(s), bottom, x(s), bottom + ink.px(3), soft, 1);
            if (isFree) {
                ink.textIn(text, new Rectangle2D.Double(left, wished.getY(), wide, wished.getHeight()), font(), soft);
            }
        }
    }
}
