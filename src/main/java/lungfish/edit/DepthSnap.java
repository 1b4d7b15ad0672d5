package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Tank;

/**
 * The depth at which a device that is moved up or down in the water comes to rest.
 *
 * @param depthM of its release below the water line; within the water
 * @param why what drew it there; empty where nothing is near
 */
public record DepthSnap(double depthM, Optional<Stop> why) {
    /**
     * Draws a device to the bottom, and to the depths of others, where they are near enough; else to the grid.
     *
     * @param others what others are called, and how deep they hang, m
     * @param gridM empty: none
     */
    public static DepthSnap at(
            Tank tank, Map<String, Double> others, double depthM, double toleranceM, OptionalDouble gridM) {
        double bottomM = tank.waterDepthM();
        List<Stop> stops = new ArrayList<>();
        stops.add(Stop.at(bottomM, "bottom glass"));
        others.forEach((words, otherM) -> {
            if (otherM <= bottomM) {
                stops.add(Stop.at(otherM, "as deep as " + words));
            }
        });
        Optional<Stop> why = Stop.nearest(stops, depthM, toleranceM);
        double restM = Stop.rest(why, depthM, gridM);
        return new DepthSnap(Metres.clean(Math.max(0, Math.min(bottomM, restM))), why);
    }
}
