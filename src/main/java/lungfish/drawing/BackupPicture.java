package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.backup.BackupAnswer;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.room.Rack;
import lungfish.room.Tank;

/**
 * Backup as a time line from the moment the mains fail: how long the battery carries all, how long the essential outlets,
 * how long is wished for, and the first vessel that is in trouble without air.
 */
public final class BackupPicture {
    private static final double BAR_PX = 8;
    private static final double TOP_PX = 20;
    private static final double[] STEPS_H = {0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96};
    private static final double HOUR_S = 3600;
    private static final double LABELS = 5;

    private final Ink ink;
    private final Rectangle2D area;
    private final double fullS;

    private BackupPicture(Ink ink, Rectangle2D area, double fullS) {
        this.ink = ink;
        this.area = area;
        this.fullS = fullS;
    }

    public static double height(Look look) {
        return look.px(TOP_PX + BAR_PX + 40);
    }

    /** Paints it from the top of the area; nothing where there is no answer. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        plan.backup().ifPresent(backup -> {
            Optional<Tank> first = firstInTrouble(plan);
            double survival = first.map(tank -> tank.survivalS().orElse(0)).orElse(0.0);
            BackupPicture picture = new BackupPicture(Ink.flat(look, g), area, full(backup, survival));
            picture.scale();
            picture.bars(backup);
            picture.wish(backup.wishedS().si());
            first.ifPresent(picture::trouble);
        });
    }

    /** The vessel with the shortest typed survival, of the racks in place. */
    static Optional<Tank> firstInTrouble(Plan plan) {
        return plan.room().racks().stream()
                .filter(rack -> !rack.isPlanned())
                .flatMap(Rack::tanks)
                .filter(tank -> tank.survivalS().isPresent())
                .min(Comparator.comparingDouble(tank -> tank.survivalS().orElse(0)));
    }

    private static double full(BackupAnswer backup, double survivalS) {
        double all = backup.runtimeS().orElse(0);
        double wished = backup.wishedS().si();
        double furthest = Math.max(Math.max(wished, survivalS), all);
        // Essential outlets may run for days on the same battery: the line goes on, its end says so.
        double essential = Math.min(backup.essentialRuntimeS().orElse(0), 2 * furthest);
        return 1.1 * Math.max(furthest, essential);
    }

    private double x(double s) {
        return area.getX() + ink.px(2) + (area.getWidth() - ink.px(4)) * Math.min(1, s / fullS);
    }

    private double top() {
        return area.getY() + ink.px(TOP_PX);
    }

    private void scale() {
        double stepS = Stream.of(0)
                .flatMapToDouble(start -> java.util.Arrays.stream(STEPS_H))
                .map(hours -> hours * HOUR_S)
                .filter(step -> fullS / step <= LABELS)
                .findFirst()
                .orElse(fullS);
        Font font = ink.type().drawing();
        for (double s = 0; s <= fullS; s += stepS) {
            String text = s == 0 ? "0" : ink.look().quantities().show(s, Dimension.DURATION);
            double left = Math.min(
                    Math.max(area.getX(), x(s) - ink.width(text, font) / 2), area.getMaxX() - ink.width(text, font));
            ink.text(text, left, area.getY() + ink.px(10), font, ink.palette().softInk());
            ink.line(x(s), area.getY() + ink.px(14), x(s), top(), ink.palette().softInk(), 1);
        }
        ink.fill(bar(0, fullS), ink.palette().line());
    }

    private void bars(BackupAnswer backup) {
        OptionalDouble all = backup.runtimeS();
        backup.essentialRuntimeS().ifPresent(essential -> {
            if (essential > all.orElse(0)) {
                ink.draw(bar(all.orElse(0), essential), ink.palette().good(), 1.4);
            }
        });
        all.ifPresent(s -> ink.fill(bar(0, s), ink.palette().good()));
    }

    private RoundRectangle2D bar(double fromS, double toS) {
        double high = ink.px(BAR_PX);
        return new RoundRectangle2D.Double(x(fromS), top(), Math.max(1, x(toS) - x(fromS)), high, high, high);
    }

    /** A flag on the line: so long it should hold. */
    private void wish(double s) {
        double bottom = top() + ink.px(BAR_PX);
        ink.line(
                x(s), top() - ink.px(3), x(s), bottom + ink.px(3), ink.palette().ink(), 2);
        under("wished", s, 0, ink.palette().ink());
    }

    private void trouble(Tank tank) {
        double s = tank.survivalS().orElse(0);
        double bottom = top() + ink.px(BAR_PX);
        Path2D mark = new Path2D.Double();
        mark.moveTo(x(s), bottom + ink.px(1));
        mark.lineTo(x(s) + ink.px(4), bottom + ink.px(8));
        mark.lineTo(x(s) - ink.px(4), bottom + ink.px(8));
        mark.closePath();
        ink.fill(mark, ink.palette().accent());
        String after = ink.look().quantities().show(s, Dimension.DURATION);
        under(
                "without air, trouble after " + after + ": " + tank.name(),
                s,
                1,
                ink.palette().accent());
    }

    private void under(String saying, double s, int row, java.awt.Color colour) {
        Font font = ink.type().drawing();
        String text = ink.fitting(saying, area.getWidth(), font);
        double wide = ink.width(text, font);
        double left = Math.min(Math.max(area.getX(), x(s) - wide / 2), area.getMaxX() - wide);
        ink.text(text, left, top() + ink.px(BAR_PX + 15 + 14 * row), font, colour);
    }
}
