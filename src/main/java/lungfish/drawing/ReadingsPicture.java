package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import lungfish.logbook.Forecast;
import lungfish.logbook.Logbook;
import lungfish.logbook.Point;
import lungfish.logbook.Trend;
import lungfish.quantity.Dimension;
import lungfish.room.Service;

/**
 * What was read over time: what the blower gives as a share of new, with its trend, the band in which eight of ten lie and the
 * line of what the room needs; then gauge, watts, level and jars, each in a lane of its own; below them what was done.
 */
public final class ReadingsPicture {
    private static final double LEFT_PX = 76;
    private static final double RIGHT_PX = 14;
    private static final double FIRST_PX = 130;
    private static final double NAME_PX = 26;
    private static final double SERVICES_PX = 44;
    private static final double AXIS_PX = 24;
    private static final int BAND_STEPS = 40;

    private final Ink ink;
    private final Logbook logbook;
    private final Rectangle2D area;
    private final ReadingsTime time;

    private ReadingsPicture(Ink ink, Logbook logbook, Rectangle2D area) {
        this.ink = ink;
        this.logbook = logbook;
        this.area = area;
        this.time = new ReadingsTime(logbook, left(), Math.max(1, right() - left()));
    }

    /** Whether anything was read or done that it shows. */
    public static boolean isWorthIt(Logbook logbook) {
        return !ReadingsLanes.of(logbook).isEmpty();
    }

    public static double height(Logbook logbook, Look look) {
        double first = logbook.shares().isEmpty() ? 0 : NAME_PX + FIRST_PX;
        double lanes = ReadingsLanes.of(logbook).stream()
                .mapToDouble(lane -> NAME_PX + lane.heightPx())
                .sum();
        return look.px(first + lanes + SERVICES_PX + AXIS_PX);
    }

    /** Paints it from the top of the area. */
    public static void paint(Logbook logbook, Rectangle2D area, Look look, Graphics2D g) {
        new ReadingsPicture(Ink.flat(look, g), logbook, area).paint();
    }

    private double left() {
        return area.getX() + ink.px(LEFT_PX);
    }

    private double right() {
        return area.getMaxX() - ink.px(RIGHT_PX);
    }

    private Font font() {
        return ink.type().drawing();
    }

    private void paint() {
        double y = area.getY();
        double bottom = area.getY() + height(logbook, ink.look()) - ink.px(SERVICES_PX + AXIS_PX);
        days(bottom);
        if (!logbook.shares().isEmpty()) {
            shares(plot(y, FIRST_PX));
            y += ink.px(NAME_PX + FIRST_PX);
        }
        for (ReadingsLanes.Lane lane : ReadingsLanes.of(logbook)) {
            lane(lane, plot(y, lane.heightPx()));
            y += ink.px(NAME_PX + lane.heightPx());
        }
        services(bottom);
    }

    private Rectangle2D plot(double top, double heightPx) {
        return new Rectangle2D.Double(left(), top + ink.px(NAME_PX), right() - left(), ink.px(heightPx));
    }

    private void lane(ReadingsLanes.Lane lane, Rectangle2D plot) {
        ReadingsLane drawn = new ReadingsLane(
                ink, plot, time, lane.dimension(), lane.points().stream().mapToDouble(Point::si));
        drawn.frame(lane.name());
        drawn.points(lane.points(), lane.mark());
    }

    private void shares(Rectangle2D plot) {
        List<Point> points = logbook.shares().stream()
                .map(share -> new Point(share.on(), share.share()))
                .toList();
        DoubleStream shown = DoubleStream.concat(
                points.stream().mapToDouble(Point::si),
                DoubleStream.of(1, logbook.need().orElse(1)));
        ReadingsLane lane = new ReadingsLane(ink, plot, time, Dimension.SHARE, shown);
        lane.frame("What the blower gives, of what it gives new");
        logbook.trend().ifPresent(trend -> trend(trend, lane, plot));
        logbook.need().ifPresent(need -> need(need, lane));
        lane.points(points, ReadingsLane.Mark.DOT);
        if (logbook.forecast().kind() == Forecast.Kind.FALLS) {
            logbook.forecast().likely().filter(day -> day.isBefore(time.to())).ifPresent(day -> falls(day, lane));
        }
    }

    private void trend(Trend trend, ReadingsLane lane, Rectangle2D plot) {
        List<LocalDate> days = new ArrayList<>();
        long span = ChronoUnit.DAYS.between(trend.from(), time.to());
        for (int i = 0; i <= BAND_STEPS; i++) {
            days.add(trend.from().plusDays(span * i / BAND_STEPS));
        }
        Path2D upper = path(days, day -> lane.y(trend.at(day) + trend.bandAt(day)));
        Path2D lower = path(days, day -> lane.y(trend.at(day) - trend.bandAt(day)));
        Shape before = ink.g().getClip();
        ink.g().clip(plot);
        ink.draw(upper, ink.palette().air(), ink.dashed(0.9, 2));
        ink.draw(lower, ink.palette().air(), ink.dashed(0.9, 2));
        ink.draw(path(days, day -> lane.y(trend.at(day))), ink.palette().air(), 1.8);
        ink.g().setClip(before);
    }

    private Path2D path(List<LocalDate> days, ToDoubleFunction<LocalDate> y) {
        Path2D path = new Path2D.Double();
        for (LocalDate day : days) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(time.x(day), y.applyAsDouble(day));
            } else {
                path.lineTo(time.x(day), y.applyAsDouble(day));
            }
        }
        return path;
    }

    private void need(double need, ReadingsLane lane) {
        double y = lane.y(need);
        ink.draw(new Line2D.Double(left(), y, right(), y), ink.palette().accent(), ink.dashed(1.6, 6));
        ink.text(
                "the room needs",
                left() + ink.px(6),
                y - ink.px(4),
                font(),
                ink.palette().accent());
    }

    private void falls(LocalDate day, ReadingsLane lane) {
        double y = lane.y(logbook.need().orElse(0));
        Color accent = ink.palette().accent();
        ink.draw(StateMark.circle(time.x(day), y, ink.px(5)), accent, 1.8);
        Font name = ink.type().drawingName();
        double wide = ink.width(day.toString(), name);
        double left = Math.min(time.x(day) + ink.px(9), right() - wide);
        double baseline = y - ink.px(10);
        ink.fill(
                new Rectangle2D.Double(
                        left - ink.px(2),
                        baseline - ink.letters(name) - ink.px(2),
                        wide + ink.px(4),
                        ink.letters(name) + ink.px(4)),
                ink.palette().sheet());
        ink.text(day.toString(), left, baseline, name, accent);
    }

    private void days(double bottom) {
        double axis = bottom + ink.px(SERVICES_PX);
        ink.line(left(), axis, right(), axis, ink.palette().softInk(), 1);
        for (LocalDate day : time.labelled(ink)) {
            double x = time.x(day);
            ink.line(
                    x,
                    area.getY() + ink.px(NAME_PX),
                    x,
                    axis + ink.px(4),
                    ink.palette().floor(),
                    1);
            ink.line(x, axis, x, axis + ink.px(4), ink.palette().softInk(), 1);
            ink.textAround(
                    day.toString().substring(0, 7),
                    x,
                    axis + ink.px(17),
                    font(),
                    ink.palette().softInk());
        }
        double today = time.x(logbook.today());
        ink.draw(
                new Line2D.Double(today, area.getY() + ink.px(NAME_PX), today, axis),
                ink.palette().softInk(),
                ink.dashed(1, 2));
        ink.textEnding(
                "today",
                today - ink.px(4),
                axis - ink.px(4),
                font(),
                ink.palette().softInk());
    }

    /** Each a diamond, over two rows of words; words that would lie on others are left out. */
    private void services(double bottom) {
        double[] free = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Service service : logbook.services()) {
            double x = time.x(service.on());
            double y = bottom + ink.px(10);
            ink.fill(
                    ReadingsLane.shape(ReadingsLane.Mark.DIAMOND, x, y, ink.px(3.2)),
                    ink.palette().ink());
            String word = word(service.kind());
            int row = free[0] <= x ? 0 : 1;
            if (free[row] <= x) {
                ink.text(
                        word,
                        x,
                        y + ink.px(14 + 12 * row),
                        font(),
                        ink.palette().softInk());
                free[row] = x + ink.width(word, font()) + ink.px(6);
            }
        }
    }

    private static String word(Service.Kind kind) {
        return switch (kind) {
            case BLOWER_NEW -> "new blower";
            case BLOWER_REBUILT -> "rebuilt";
            case FILTER_CHANGED -> "filter";
            case DEVICE_CLEANED -> "cleaned";
            case DEVICE_EXCHANGED -> "exchanged";
            case CHECK_VALVE_EXCHANGED -> "check valves";
            case VALVES_SET -> "valves set";
            case LEAK_MENDED -> "leak mended";
            case DRAINED -> "drained";
            case ALARM_TRIED -> "alarm";
        };
    }
}
