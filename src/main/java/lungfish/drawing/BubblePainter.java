package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lungfish.drawing.SceneParts.StretchPart;
import lungfish.room.Point;
import lungfish.room.Run;

/**
 * Paints the bubbles in the pipe: the more air, the closer they are; every so often one is an arrow head, the way the air
 * goes. They are spaced along the whole run, so that a tap does not shift those behind it.
 */
final class BubblePainter {
    private static final double CLOSEST_PX = 6;
    private static final double FARTHEST_PX = 60;
    private static final double BUBBLE_PX = 1.6;
    private static final int ARROW_EVERY = 7;

    /** Air below this share of the greatest flow stands still, as far as a drawing can tell. */
    private static final double STILL = 0.002;

    private final Ink ink;
    private final double greatest;

    private BubblePainter(Ink ink, double greatest) {
        this.ink = ink;
        this.greatest = greatest;
    }

    static void paint(List<StretchPart> stretches, Ink ink) {
        double greatest = stretches.stream()
                .mapToDouble(stretch -> Math.abs(stretch.freeM3PerS()))
                .max()
                .orElse(0);
        if (greatest > 0) {
            BubblePainter painter = new BubblePainter(ink, greatest);
            byRun(stretches).values().forEach(painter::run);
        }
    }

    private static Map<Run, List<StretchPart>> byRun(List<StretchPart> stretches) {
        Map<Run, List<StretchPart>> byRun = new LinkedHashMap<>();
        stretches.stream()
                .sorted(Comparator.comparingDouble(StretchPart::fromM))
                .forEach(stretch -> byRun.computeIfAbsent(stretch.run(), run -> new ArrayList<>())
                        .add(stretch));
        return byRun;
    }

    private void run(List<StretchPart> stretches) {
        double due = 0.5; // bubbles owed at the start of a stretch
        int count = ARROW_EVERY / 2;
        for (StretchPart stretch : stretches) {
            double lengthPx = ink.view().lengthPx(stretch.toM() - stretch.fromM());
            double apartPx = apartPx(stretch);
            double bubbles = lengthPx / apartPx;
            for (double at = Math.ceil(due) - due; at <= bubbles && apartPx < Double.POSITIVE_INFINITY; at++) {
                bubble(stretch, stretch.fromM() + ink.view().lengthM(at * apartPx), count++);
            }
            due = (due + bubbles) % 1.0;
        }
    }

    private double apartPx(StretchPart stretch) {
        double share = Math.abs(stretch.freeM3PerS()) / greatest;
        if (share < STILL) {
            return Double.POSITIVE_INFINITY;
        }
        return ink.mark(Math.min(FARTHEST_PX, CLOSEST_PX / share));
    }

    private void bubble(StretchPart stretch, double alongM, int count) {
        double lengthM = stretch.run().lengthM();
        double atM = stretch.run().closed() ? alongM % lengthM : alongM;
        Point point = stretch.run().at(atM);
        double x = ink.view().xPx(point.xM());
        double y = ink.view().yPx(point.yM());
        if (!ink.isSeen(Boxes.around(x, y, ink.mark(4)))) {
            return;
        }
        if (count % ARROW_EVERY == 0) {
            arrow(stretch, atM, x, y);
        } else {
            ink.fill(StateMark.circle(x, y, ink.mark(BUBBLE_PX)), ink.palette().air());
        }
    }

    private void arrow(StretchPart stretch, double atM, double x, double y) {
        Point before = stretch.run().at(Math.max(0, atM - 0.01));
        Point after = stretch.run().at(atM + 0.01);
        double way = Math.signum(stretch.freeM3PerS());
        double angle = Math.atan2(way * (after.yM() - before.yM()), way * (after.xM() - before.xM()));
        double size = ink.mark(2.4);
        Path2D head = new Path2D.Double();
        head.moveTo(-size * 0.7, -size);
        head.lineTo(size * 0.6, 0);
        head.lineTo(-size * 0.7, size);
        head.transform(java.awt.geom.AffineTransform.getRotateInstance(angle));
        head.transform(java.awt.geom.AffineTransform.getTranslateInstance(x, y));
        BasicStroke round = new BasicStroke((float) ink.mark(1.4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        ink.draw(head, ink.palette().air(), round);
    }
}
