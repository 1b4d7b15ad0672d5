package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.plan.Duty;
import lungfish.quantity.Dimension;

/** A whole-room picture for a page: title line, the room with its rulers, legend. */
public final class RoomSheet {
    private static final double MARGIN_PX = 24;
    private static final double TITLE_PX = 60;
    private static final double RULER_PX = 36;
    private static final double MOST_LEGEND = 0.2; // of the sheet's height

    private RoomSheet() {}

    /** Fills the area with the sheet. */
    public static void paint(RoomScene scene, Rectangle2D area, Marked marked, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        ink.fill(area, look.palette().sheet());
        Rectangle2D inside = Marks.outset(area, -ink.px(MARGIN_PX));
        title(scene, inside, ink);
        double legendHigh = LegendPainter.height(scene, inside.getWidth(), MOST_LEGEND * inside.getHeight(), look, g);
        Rectangle2D drawing = new Rectangle2D.Double(
                inside.getX() + ink.px(RULER_PX),
                inside.getY() + ink.px(TITLE_PX + RULER_PX),
                inside.getWidth() - ink.px(2 * RULER_PX),
                inside.getHeight() - ink.px(TITLE_PX + 2 * RULER_PX) - legendHigh);
        Viewport view = Viewport.fit(scene.boundsM(), drawing);
        RulerPainter.paint(scene, inside, view, look, g);
        Shape before = g.getClip();
        Rectangle2D frame = Marks.outset(drawing, ink.px(RULER_PX)); // labels keep off title and legend
        g.clip(frame);
        RoomPainter.paint(scene, view, frame, marked, look, g);
        g.setClip(before);
        LegendPainter.paint(
                scene,
                new Rectangle2D.Double(inside.getX(), inside.getMaxY() - legendHigh, inside.getWidth(), legendHigh),
                look,
                g);
    }

    private static void title(RoomScene scene, Rectangle2D inside, Ink ink) {
        double x = inside.getX();
        double y = inside.getY();
        String name =
                ink.fitting(scene.room().name(), inside.getWidth(), ink.type().headline());
        ink.text(name, x, y + ink.px(22), ink.type().headline(), ink.palette().ink());
        String reason = ink.fitting(
                reason(scene, ink.look()), inside.getWidth(), ink.type().body());
        ink.text(reason, x, y + ink.px(44), ink.type().body(), ink.palette().softInk());
    }

    private static String reason(RoomScene scene, Look look) {
        List<String> parts = new ArrayList<>();
        long outlets = scene.outlets().stream()
                .filter(outlet -> outlet.state() != OutletState.PLANNED)
                .count();
        parts.add(outlets == 1 ? "1 outlet" : outlets + " outlets");
        scene.plan().flatMap(plan -> plan.duty()).ifPresent(duty -> addDuty(parts, duty, look));
        scene.plan()
                .flatMap(plan -> plan.trials())
                .ifPresent(trials -> parts.add(scene.shown().words()));
        return String.join(" · ", parts);
    }

    private static void addDuty(List<String> parts, Duty duty, Look look) {
        parts.add("needs " + look.quantities().show(duty.needed().freeM3PerS(), Dimension.AIR_FLOW) + " at "
                + look.quantities().show(duty.needed().pressurePa(), Dimension.PRESSURE));
        parts.add(duty.candidate().fleet().name());
    }
}
