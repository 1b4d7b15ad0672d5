package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lungfish.build.Tap;
import lungfish.room.Point;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;

/** A room from above for paper: running dimensions from its upper left corner, numbers of the taps. */
final class PaperRoom {
    private static final double MARGIN_PX = 14;
    /** For the figures above it and left of it. */
    private static final double BESIDE_PX = 92;

    private static final double TAP_PX = 5;
    /** From a tap to its number. */
    private static final double NUMBER_PX = 17;
    /** Numbers closer together than this would run into each other. */
    private static final double APART_PX = 16;

    private final RoomScene scene;
    private final List<Tap> taps;
    private final Look look;

    PaperRoom(RoomScene scene, List<Tap> taps, Look look) {
        this.scene = scene;
        this.taps = taps;
        this.look = look;
    }

    FigurePainter.Fitted fitted(double mostWidthPt, double mostHeightPt) {
        Rectangle2D bounds = scene.boundsM();
        double roomPt = look.px(BESIDE_PX);
        PaperScale scale = PaperScale.of(
                look.quantities().units(),
                bounds.getWidth(),
                bounds.getHeight(),
                mostWidthPt - roomPt,
                mostHeightPt - roomPt);
        double widthPt = Math.min(mostWidthPt, bounds.getWidth() * scale.ptPerM() + roomPt);
        double heightPt = bounds.getHeight() * scale.ptPerM() + roomPt;
        return new FigurePainter.Fitted(
                widthPt, heightPt, Optional.of(scale.words()), (area, g) -> paint(area, scale, g));
    }

    private void paint(Rectangle2D area, PaperScale scale, Graphics2D g) {
        Rectangle2D bounds = scene.boundsM();
        double right = area.getMaxX() - look.px(MARGIN_PX);
        double bottom = area.getMaxY() - look.px(MARGIN_PX);
        Viewport view = new Viewport(
                scale.ptPerM(), right - scale.ptPerM() * bounds.getMaxX(), bottom - scale.ptPerM() * bounds.getMaxY());
        Shape before = g.getClip();
        g.clip(area);
        RoomPainter.paint(scene, view, area, Marked.NOTHING, look, g);
        Ink ink = new Ink(look, view, g);
        dimensions(ink);
        taps(ink);
        g.setClip(before);
    }

    private void dimensions(Ink ink) {
        Shell shell = scene.room().shell();
        double top = ink.view().yPx(Math.min(0, scene.boundsM().getY())) - ink.px(8);
        double left = ink.view().xPx(Math.min(0, scene.boundsM().getX())) - ink.px(8);
        edges(true, shell.lengthM(), ink).above(top);
        edges(false, shell.widthM(), ink).leftOf(left);
    }

    private Ordinates edges(boolean isAcross, double toM, Ink ink) {
        DoubleStream racks = scene.room().racks().stream()
                .flatMapToDouble(rack -> isAcross
                        ? DoubleStream.of(rack.xM(), rack.xM() + rack.spanXM())
                        : DoubleStream.of(rack.yM(), rack.yM() + rack.spanYM()));
        DoubleStream pipe = scene.room().runs().stream()
                .flatMap(run -> run.points().stream())
                .mapToDouble(isAcross ? Point::xM : Point::yM);
        return Ordinates.of(DoubleStream.concat(racks, pipe), toM, ink);
    }

    /** A ring on the pipe for each tap; its number in the list where there is room for it. */
    private void taps(Ink ink) {
        Map<RunId, Integer> numbers = new HashMap<>();
        Map<RunId, double[]> last = new HashMap<>();
        for (Tap tap : taps) {
            int number = numbers.merge(tap.run(), 1, Integer::sum);
            run(tap.run()).ifPresent(run -> tap(run, tap, number, last, ink));
        }
    }

    private void tap(Run run, Tap tap, int number, Map<RunId, double[]> last, Ink ink) {
        Point at = run.at(tap.alongM());
        double x = ink.view().xPx(at.xM());
        double y = ink.view().yPx(at.yM());
        double size = ink.px(TAP_PX);
        Ellipse2D ring = new Ellipse2D.Double(x - size / 2, y - size / 2, size, size);
        ink.fill(ring, ink.palette().sheet());
        ink.draw(ring, ink.palette().ink(), 0.8);
        double[] before = last.get(run.id());
        if (before == null || Math.hypot(x - before[0], y - before[1]) >= ink.px(APART_PX)) {
            last.put(run.id(), new double[] {x, y});
            number(String.valueOf(number), x, y, ink);
        }
    }

    /** On the side of the pipe that looks into the room, on white: the ground there is free. */
    private void number(String number, double x, double y, Ink ink) {
        Rectangle2D room = ink.view().px(scene.boundsM());
        double inX = Math.signum(room.getCenterX() - x);
        double inY = Math.signum(room.getCenterY() - y);
        boolean isAcross =
                Math.abs(room.getCenterY() - y) * room.getWidth() >= Math.abs(room.getCenterX() - x) * room.getHeight();
        double atX = isAcross ? x : x + inX * ink.px(NUMBER_PX);
        double atY = isAcross ? y + inY * ink.px(NUMBER_PX) : y;
        Font font = ink.type().drawingName();
        double wide = ink.width(number, font);
        double high = ink.letters(font);
        ink.fill(
                new Rectangle2D.Double(
                        atX - wide / 2 - ink.px(2), atY - high / 2 - ink.px(2), wide + ink.px(4), high + ink.px(4)),
                ink.palette().sheet());
        ink.textAround(number, atX, atY + high / 2, font, ink.palette().ink());
    }

    private Optional<Run> run(RunId id) {
        return scene.room().runs().stream().filter(run -> run.id().equals(id)).findFirst();
    }
}
