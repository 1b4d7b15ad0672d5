package lungfish.drawing;

import java.awt.Font;
import java.awt.geom.Path2D;
import java.util.List;

/** Paints what runs when: a lane for each thing, its bars as high as its share, its name at the left. */
final class OutageLanes {
    static final double LANE_PX = 20;
    private static final double BAR_PX = 14;
    private static final double INSIDE_PX = 6;

    private final List<OutageLane> lanes;
    private final OutageTime time;
    private final double topPx;
    private final Ink ink;

    OutageLanes(List<OutageLane> lanes, OutageTime time, double topPx, Ink ink) {
        this.lanes = lanes;
        this.time = time;
        this.topPx = topPx;
        this.ink = ink;
    }

    /** How wide their names are. */
    static double namesPx(List<OutageLane> lanes, Ink ink) {
        return lanes.stream()
                .mapToDouble(lane -> ink.width(lane.name(), ink.type().drawing()))
                .max()
                .orElse(0);
    }

    void paint() {
        for (int i = 0; i < lanes.size(); i++) {
            lane(lanes.get(i), topPx + i * ink.px(LANE_PX));
        }
    }

    private Font font() {
        return ink.type().drawing();
    }

    private void lane(OutageLane lane, double y) {
        double bottom = y + ink.px(LANE_PX - 3);
        double baseline = bottom - ink.px(BAR_PX) / 2 + ink.letters(font()) / 2;
        ink.textEnding(
                lane.name(),
                time.leftPx() - ink.px(8),
                baseline,
                font(),
                ink.palette().softInk());
        ink.line(time.leftPx(), bottom, time.rightPx(), bottom, ink.palette().line(), 1);
        double s = 0;
        for (OutageLane.Bar bar : lane.bars()) {
            gap(lane, s, bar.fromS(), baseline);
            bar(lane, bar, bottom);
            s = bar.toS();
        }
        gap(lane, s, time.untilS(), baseline);
    }

    /** Says what it means that nothing is drawn there. */
    private void gap(OutageLane lane, double fromS, double toS, double baseline) {
        if (toS > fromS) {
            inside(lane.isOff(), fromS, toS, baseline, ink.palette().softInk());
        }
    }

    private void bar(OutageLane lane, OutageLane.Bar bar, double bottom) {
        double high = ink.px(BAR_PX);
        Path2D shape = new Path2D.Double();
        shape.moveTo(time.x(bar.fromS()), bottom);
        shape.lineTo(time.x(bar.fromS()), bottom - high * bar.from());
        shape.lineTo(time.x(bar.toS()), bottom - high * bar.to());
        shape.lineTo(time.x(bar.toS()), bottom);
        shape.closePath();
        if (bar.draws() && isFilled(lane, bar)) {
            ink.fill(shape, ink.palette().good());
        } else {
            ink.fill(shape, ink.palette().waterFill());
            ink.draw(shape, ink.palette().good(), 1.2);
        }
        boolean isLow = Math.min(bar.from(), bar.to()) < 0.95;
        double baseline = bottom - high / 2 + ink.letters(font()) / 2;
        boolean isInked = bar.draws() && !isLow;
        inside(
                bar.says(),
                bar.fromS(),
                bar.toS(),
                baseline,
                isInked ? ink.palette().sheet() : ink.palette().ink());
    }

    /** What is lower than its lane, or only there, is a tint: words stand over it. */
    private static boolean isFilled(OutageLane lane, OutageLane.Bar bar) {
        return !lane.isCharge() && Math.min(bar.from(), bar.to()) >= 0.95;
    }

    private void inside(String says, double fromS, double toS, double baseline, java.awt.Color colour) {
        double room = time.x(toS) - time.x(fromS) - ink.px(2 * INSIDE_PX);
        if (!says.isEmpty() && ink.width(says, font()) <= room) {
            ink.text(says, time.x(fromS) + ink.px(INSIDE_PX), baseline, font(), colour);
        }
    }
}
