package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;

/** Paints the legend of a room: only what the drawing shows, in lines that fit the width. */
public final class LegendPainter {
    private static final double SIGN_PX = 20;
    private static final double BETWEEN_PX = 18;
    private static final double LINE_PX = 18;

    /** One entry: a sign, and what it means. */
    private record Entry(Sign sign, String text) {
        interface Sign {
            void paint(double x, double y, Ink ink);
        }
    }

    private LegendPainter() {}

    /**
     * Height that the legend takes at a width, pixels: whole lines, at least one, and otherwise no more than there is room
     * for.
     */
    public static double height(RoomScene scene, double width, double most, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double line = ink.px(LINE_PX);
        double all = lay(scene, new Rectangle2D.Double(0, 0, width, Double.MAX_VALUE), ink, false);
        return Math.min(all, Math.max(line, Math.floor(most / line) * line));
    }

    /** Paints it from the top of the area; what matters most comes first, and what does not fit is left out. */
    public static void paint(RoomScene scene, Rectangle2D area, Look look, Graphics2D g) {
        lay(scene, area, Ink.flat(look, g), true);
    }

    private static double lay(RoomScene scene, Rectangle2D area, Ink ink, boolean draws) {
        double line = ink.px(LINE_PX);
        double x = area.getX();
        double y = area.getY();
        for (Entry entry : entries(scene, ink.look().quantities())) {
            double wide = ink.px(SIGN_PX) + ink.width(entry.text(), ink.type().drawing());
            if (x > area.getX() && x + wide > area.getMaxX()) {
                x = area.getX();
                y += line;
            }
            if (draws && y + line <= area.getMaxY() + 1) {
                paint(entry, x, y, ink);
            }
            x += wide + ink.px(BETWEEN_PX);
        }
        return y + line - area.getY();
    }

    private static void paint(Entry entry, double x, double y, Ink ink) {
        entry.sign().paint(x + ink.px(7), y + ink.px(LINE_PX) / 2, ink);
        ink.text(
                entry.text(),
                x + ink.px(SIGN_PX),
                y + ink.px(13),
                ink.type().drawing(),
                ink.palette().softInk());
    }

    private static List<Entry> entries(RoomScene scene, Quantities quantities) {
        List<Entry> entries = new ArrayList<>();
        if (scene.growing().isPresent()) {
            entries.add(new Entry(LegendPainter::band, "band and figures: how many more outlets fit there"));
        }
        scene.water()
                .ifPresent(water -> entries.add(new Entry(
                        (x, y, ink) -> WaterLine.fromAbove(ink).sign(x, y), WaterPainter.saying(water, quantities))));
        scene.breathing().ifPresent(laid -> oxygen(laid, entries));
        if (scene.plan().flatMap(Plan::trials).isPresent()) {
            entries.add(new Entry(LegendPainter::valve, scene.shown().words()));
        }
        for (OutletState state : OutletState.values()) {
            if (scene.outlets().stream().anyMatch(outlet -> outlet.state() == state)) {
                entries.add(new Entry((x, y, ink) -> StateMark.paint(state, x, y, ink.px(3), ink), state.word()));
            }
        }
        if (scene.index().filter(outlet -> outlet.state() != OutletState.INDEX).isPresent()) {
            entries.add(new Entry(LegendPainter::ring, OutletState.INDEX.word()));
        }
        if (scene.taps().stream().anyMatch(tap -> tap.sparePa().isPresent())) {
            entries.add(new Entry(LegendPainter::tooth, "a tap: its length is the spare pressure there"));
        }
        if (scene.stretches().stream().anyMatch(stretch -> stretch.freeM3PerS() != 0)) {
            entries.add(new Entry(LegendPainter::bubbles, "closer bubbles: more air"));
        }
        if (!scene.room().blowers(Blower.Role.TODAY).isEmpty()) {
            entries.add(new Entry(LegendPainter::pump, "pump of today"));
        }
        if (!scene.racks().isEmpty()) {
            entries.add(new Entry(LegendPainter::strips, "a strip is a shelf, top shelf first"));
        }
        pipeSaying(scene).ifPresent(saying -> entries.add(new Entry(LegendPainter::pipe, saying)));
        return entries;
    }

    /** The same entries at every time of the outage, so that the room stays where it is. */
    private static void oxygen(OxygenLaid laid, List<Entry> entries) {
        for (OxygenState state : OxygenState.values()) {
            String says = state == OxygenState.FINE
                    ? "the fuller, the more oxygen (" + OxygenLaid.words(laid.how()) + ")"
                    : state.word();
            boolean isAny = state != OxygenState.UNKNOWN || laid.played().count(state, laid.how(), laid.atS()) > 0;
            if (isAny) {
                entries.add(new Entry((x, y, ink) -> OxygenSign.sample(state, oxygenBox(x, y, ink), ink), says));
            }
        }
    }

    private static Rectangle2D oxygenBox(double x, double y, Ink ink) {
        return new Rectangle2D.Double(x - ink.px(7), y - ink.px(5), ink.px(14), ink.px(10));
    }

    /** What the pipe has to say, where it is known. */
    static Optional<String> pipeSaying(RoomScene scene) {
        return scene.plan()
                .flatMap(plan -> plan.duty())
                .filter(duty -> !duty.pipeMatters())
                .map(duty -> "the pipe does not matter");
    }

    /** A piece of the band that widens to where more fit. */
    private static void band(double x, double y, Ink ink) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(x - ink.px(7), y - ink.px(2.5));
        wedge.lineTo(x + ink.px(7), y - ink.px(6));
        wedge.lineTo(x + ink.px(7), y + ink.px(6));
        wedge.lineTo(x - ink.px(7), y + ink.px(2.5));
        wedge.closePath();
        ink.fill(wedge, GrowthBand.tint(ink));
        ink.draw(wedge, ink.palette().planned(), 1);
    }

    /** Two triangles that meet, as valves are drawn on plans of pipework. */
    private static void valve(double x, double y, Ink ink) {
        double wide = ink.px(6);
        double high = ink.px(4);
        Path2D bow = new Path2D.Double();
        bow.moveTo(x - wide, y - high);
        bow.lineTo(x + wide, y + high);
        bow.lineTo(x + wide, y - high);
        bow.lineTo(x - wide, y + high);
        bow.closePath();
        ink.draw(bow, ink.palette().ink(), 1.2);
    }

    /** Around an outlet that is not served, and has the least spare all the same. */
    private static void ring(double x, double y, Ink ink) {
        ink.draw(StateMark.circle(x, y, ink.px(6.6)), ink.palette().accent(), 1.5);
    }

    private static void tooth(double x, double y, Ink ink) {
        Line2D line = new Line2D.Double(x, y - ink.px(6), x, y + ink.px(6));
        ink.draw(line, ink.palette().air(), new BasicStroke((float) ink.px(1.8)));
    }

    private static void bubbles(double x, double y, Ink ink) {
        for (double at = -6; at <= 6; at += 4) {
            ink.fill(
                    StateMark.circle(x + ink.px(at), y, ink.px(1.5)),
                    ink.palette().air());
        }
    }

    private static void pump(double x, double y, Ink ink) {
        ink.draw(
                new Rectangle2D.Double(x - ink.px(4), y - ink.px(4), ink.px(8), ink.px(8)),
                ink.palette().softInk(),
                1.2);
    }

    private static void strips(double x, double y, Ink ink) {
        for (int i = -1; i <= 1; i++) {
            Rectangle2D strip = new Rectangle2D.Double(x - ink.px(7), y + ink.px(4.5 * i - 2), ink.px(14), ink.px(4));
            ink.draw(strip, ink.palette().waterEdge(), 0.9);
        }
    }

    private static void pipe(double x, double y, Ink ink) {
        ink.line(
                x - ink.px(7),
                y - ink.px(3),
                x + ink.px(7),
                y - ink.px(3),
                ink.palette().ink(),
                1.2);
        ink.line(
                x - ink.px(7),
                y + ink.px(3),
                x + ink.px(7),
                y + ink.px(3),
                ink.palette().ink(),
                1.2);
    }
}
