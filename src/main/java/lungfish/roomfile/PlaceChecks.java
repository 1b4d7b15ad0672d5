package lungfish.roomfile;

import static lungfish.room.Shell.NEXT_ROOM_M;
import static lungfish.room.Shell.WALL_M;

import lungfish.json.NumberText;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Run;
import lungfish.room.Shell;

/**
 * What stands in the room stands in it. A rack may stick out of it, as it does while it is being dragged, but not stand
 * wholly outside. Pipe may leave the room where a blower stands outside.
 */
final class PlaceChecks {
    private final Spots spots;
    private final Shell shell;
    private final Problems problems;

    PlaceChecks(Spots spots, Problems problems) {
        this.spots = spots;
        this.shell = spots.room().shell();
        this.problems = problems;
    }

    void tell() {
        double pipes = spots.room().blowers().stream().anyMatch(PlaceChecks::outside) ? NEXT_ROOM_M : WALL_M;
        spots.racks().forEach(this::rack);
        spots.runs().forEach(run -> run.inside("points", Run::points)
                .forEach(point -> inside(point.place(), point.value(), pipes)));
        spots.gangs()
                .forEach(gang -> inside(gang.place().key("place"), gang.value().place(), WALL_M));
        spots.blowers().forEach(this::blower);
        spots.room()
                .listener()
                .ifPresent(listener -> inside(
                        Place.ROOT.key("listener").key("place"),
                        listener.place(),
                        listener.behind().isPresent() ? NEXT_ROOM_M : WALL_M));
    }

    private static boolean outside(Blower blower) {
        return blower.siting().outside();
    }

    private void blower(Spot<Blower> blower) {
        double slack = outside(blower.value()) ? NEXT_ROOM_M : WALL_M;
        blower.value()
                .siting()
                .place()
                .ifPresent(at -> inside(blower.place().key("siting").key("place"), at, slack));
    }

    private void inside(Place place, Point point, double slackM) {
        within(place.key("x_m"), point.xM(), shell.lengthM(), "length", slackM);
        within(place.key("y_m"), point.yM(), shell.widthM(), "width", slackM);
        within(place.key("z_m"), point.zM(), shell.heightM(), "height", slackM);
    }

    private void within(Place place, double x, double most, String what, double slackM) {
        if (x < -slackM || x > most + slackM) {
            problems.add(
                    place,
                    NumberText.of(x) + " is outside the room, whose " + what + " is " + NumberText.of(most),
                    "a number from 0 to " + NumberText.of(most));
        }
    }

    private void rack(Spot<Rack> spot) {
        Rack rack = spot.value();
        touches(spot.place().key("x_m"), rack.xM(), rack.spanXM(), shell.lengthM(), "length");
        touches(spot.place().key("y_m"), rack.yM(), rack.spanYM(), shell.widthM(), "width");
    }

    private void touches(Place place, double from, double span, double most, String what) {
        if (from >= most || from + span <= 0) {
            problems.add(
                    place,
                    NumberText.of(from) + " puts the rack outside the room, whose " + what + " is "
                            + NumberText.of(most),
                    "a number from 0 to " + NumberText.of(most));
        }
    }
}
