package lungfish.blower;

import java.util.ArrayList;
import java.util.List;
import lungfish.air.FreeAir;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.network.Curve;

/**
 * The curve of a class, corrected for where and how it runs.
 *
 * <ol>
 *   <li>Wear: a tired machine moves its tired share of the flow at each pressure.
 *   <li>Altitude: a machine that displaces air moves the same volume of thinner air against the same gauge pressure. A
 *       side-channel machine makes pressure in proportion to density, and takes power so (similarity laws of
 *       turbomachines: ISO 5801, from memory).
 *   <li>Intake: air drawn warmer than the room is less free air, by the ratio of absolute temperatures.
 *   <li>Filter and silencer: each takes {@code k q²} off the pressure; what is lost before the machine also thins the
 *       air that it draws, by the ratio of absolute pressures.
 * </ol>
 */
final class Corrected {
    private static final int HALVINGS = 60;

    /** Filter and silencer take more than the whole curve gives: nothing comes out. */
    private static final Curve CHOKED = Curve.of(List.of(new Curve.Point(0, 0), new Curve.Point(1, 0)));

    /** Pieces into which each stretch between two points is cut where filter or silencer bend the curve. */
    private static final int BETWEEN = 4;

    private final Machine machine;
    private final FreeAir room;
    private final double flowFactor;
    private final double pressureFactor;
    private final double inletLoss;
    private final double outletLoss;
    private final Curve raw;

    Corrected(Machine machine, Wear wear, FreeAir room) {
        this.machine = machine;
        BlowerClass kind = machine.kind();
        this.room = room;
        double worn = wear == Wear.TIRED ? kind.tiredShare() : 1;
        double warm = room.temperatureK() / machine.intakeK().orElse(room.temperatureK());
        this.flowFactor = worn * warm;
        this.inletLoss = machine.accessories().inletLoss();
        this.outletLoss = machine.accessories().outletLoss();
        this.pressureFactor = Power.pressureFactor(kind, room);
        this.raw = Curve.of(kind.points().stream().map(this::rawPoint).toList());
    }

    private Curve.Point rawPoint(CurvePoint point) {
        return new Curve.Point(point.gaugePa() * pressureFactor, point.freeM3PerS() * flowFactor);
    }

    Curve curve() {
        List<Curve.Point> points = new ArrayList<>();
        for (Curve.Point point : sampled()) {
            Curve.Point behind = behindAccessories(point);
            if (behind.gaugePa() >= 0) {
                points.add(behind);
            }
        }
        if (!points.isEmpty() && points.get(0).gaugePa() > 0) {
            points.add(0, behindAccessories(freePoint()));
        }
        return points.size() < 2 ? CHOKED : Curve.of(points);
    }

    /** The points; between them some more where something bends the curve, so that the bend is not lost. */
    private List<Curve.Point> sampled() {
        List<Curve.Point> points = raw.points();
        if (machine.accessories().fitted().isEmpty()) {
            return points;
        }
        List<Curve.Point> more = new ArrayList<>(List.of(points.get(0)));
        for (int i = 1; i < points.size(); i++) {
            double from = points.get(i - 1).gaugePa();
            double step = (points.get(i).gaugePa() - from) / BETWEEN;
            for (int j = 1; j < BETWEEN; j++) {
                more.add(at(from + j * step));
            }
            more.add(points.get(i));
        }
        return more;
    }

    private Curve.Point behindAccessories(Curve.Point point) {
        double q = point.freeM3PerS();
        double before = inletLoss * q * q;
        double behind = outletLoss * q * q;
        return new Curve.Point(point.gaugePa() - before - behind, q * (1 - before / room.pressurePa()));
    }

    /** The point of the bare curve whose whole pressure is spent on filter and silencer. */
    private Curve.Point freePoint() {
        double low = 0;
        double high = raw.points().get(raw.points().size() - 1).gaugePa();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean spent = behindAccessories(at(middle)).gaugePa() < 0;
            low = spent ? middle : low;
            high = spent ? high : middle;
        }
        return new Curve.Point(high, raw.flowAt(high));
    }

    private Curve.Point at(double gaugePa) {
        return new Curve.Point(gaugePa, raw.flowAt(gaugePa));
    }
}
