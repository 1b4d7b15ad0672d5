package lungfish.backup;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Room;

/** The set point of a low-pressure alarm in the main. */
public final class LowPressureAlarm {
    /** Set point as a share of the pressure that the room needs: common practice, no source. */
    private static final double SHARE = 0.7;

    /** A switch set outside these shares rings at every water change, or too late. Common practice, no source. */
    private static final double LOWEST = 0.5;

    private static final double HIGHEST = 0.85;

    private static final PartId ALARM = new PartId(PartId.Kind.ALARM, "");

    private LowPressureAlarm() {}

    /** Where to set it, gauge Pa. */
    public static double setPa(double neededPa) {
        return SHARE * neededPa;
    }

    /**
     * What is wrong with the alarm of a room.
     *
     * @param neededPa gauge pressure that the room needs at the blower
     */
    public static List<Finding> check(Room room, double neededPa) {
        if (room.backup().alarm().isEmpty()) {
            return List.of(Finding.of(Code.ALARM_MISSING, PartId.ROOM, pressure("found", setPa(neededPa))));
        }
        OptionalDouble set = room.backup().alarm().get().setPa();
        if (set.isEmpty() || isSound(set.getAsDouble() / neededPa)) {
            return List.of();
        }
        return List.of(Finding.of(
                Code.ALARM_SET_WRONG,
                ALARM,
                pressure("found", set.getAsDouble()),
                pressure("allowed", setPa(neededPa))));
    }

    private static boolean isSound(double share) {
        return share >= LOWEST && share <= HIGHEST;
    }

    private static Amount pressure(String name, double pa) {
        return new Amount(name, pa, Dimension.PRESSURE);
    }
}
