package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Run;
import lungfish.room.Seat;
import lungfish.room.Tank;

/** The parts that a scene is made of, each with its place in metres. */
final class SceneParts {
    private SceneParts() {}

    /** A rack and its tanks. */
    record RackPart(Rack rack, Rectangle2D outlineM, boolean across, List<TankPart> tanks) {}

    /** A tank in its strip. */
    record TankPart(Tank tank, boolean planned, Rectangle2D boxM) {
        PartId part() {
            return tank.id().part();
        }
    }

    /** An outlet's mark. */
    record OutletPart(Seat seat, double xM, double yM, OutletState state, boolean index, OptionalDouble sparePa) {
        PartId part() {
            return seat.outlet().id().part();
        }

        Outlet outlet() {
            return seat.outlet();
        }
    }

    /** A piece of a run with one flow in it: positive from its first end to its second. */
    record StretchPart(Run run, double fromM, double toM, double freeM3PerS) {}

    /**
     * A tap: its tooth stands square to the pipe and is as long as the least spare pressure that hangs on it.
     *
     * @param towardsX unit direction of the tooth
     * @param towardsY unit direction of the tooth
     * @param hangs what it leads to: an outlet, or a gang
     */
    record TapPart(
            double xM,
            double yM,
            double towardsX,
            double towardsY,
            OptionalDouble sparePa,
            boolean index,
            List<PartId> hangs) {}

    /**
     * A fitting in a run.
     *
     * @param number among those of the run
     * @param alongX unit direction of the pipe there, on the drawing
     * @param alongY unit direction of the pipe there
     */
    record FittingPart(Run run, int number, double xM, double yM, double alongX, double alongY) {
        Run.Fitting fitting() {
            return run.fittings().get(number);
        }
    }

    /** A gang valve or a string of tees, and the point of the pipe that feeds it. */
    record GangPart(PartId part, double xM, double yM, Optional<double[]> tapM) {}

    /**
     * A machine.
     *
     * @param figure what the trade names it by
     * @param feedsM where its hose joins the pipe
     */
    record BlowerPart(Blower blower, double xM, double yM, String figure, Optional<double[]> feedsM) {
        PartId part() {
            return blower.id().part();
        }
    }
}
