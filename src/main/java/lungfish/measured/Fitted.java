package lungfish.measured;

import java.util.List;
import lungfish.room.OutletId;

/**
 * The room's uncertain numbers, fitted to what was read.
 *
 * @param happening what happened, of the size that fits best
 * @param sizeSd doubt about that size (standard deviation), in its unit
 * @param devices classes that take more or less than the catalogue says, beyond doubt
 * @param others outlets that answer as if they had another device than the room says
 * @param leakM3PerS free air that leaks at the pressure when the valves were set; 0 where that is not what happened
 * @param leakSdM3PerS doubt about it
 * @param setPa gauge at the blowers when the valves were set
 * @param clogPaSPerM3 what a clog adds to its device; 0 where that is not what happened
 */
public record Fitted(
        Happening happening,
        double sizeSd,
        BlowerGives blower,
        List<DeviceTakes> devices,
        List<OutletId> others,
        double leakM3PerS,
        double leakSdM3PerS,
        double setPa,
        double clogPaSPerM3) {
    /**
     * A class of devices that takes otherwise than the catalogue says.
     *
     * @param id of the class
     * @param factor on all that it takes
     * @param morePa at the flow of the first outlet that has one, clean; negative: less
     * @param sdPa doubt about it
     */
    public record DeviceTakes(String id, String name, double factor, double morePa, double sdPa) {}

    /**
     * What the blowers give, as a share of their data sheet, at the pressure when the valves were set.
     *
     * @param whenSet when the valves were set
     * @param share today
     * @param sd doubt about that
     * @param byAge what is left of it by their age alone, as a share of what they gave when the valves were set
     */
    public record BlowerGives(double whenSet, double share, double sd, double byAge) {}

    public Fitted {
        devices = List.copyOf(devices);
        others = List.copyOf(others);
    }
}
