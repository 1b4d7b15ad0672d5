package lungfish.outage;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.oxygen.Case;
import lungfish.oxygen.Course;
import lungfish.oxygen.Levels;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * What becomes of one tank in an outage.
 *
 * @param essential whether one of its outlets is to be kept going
 * @param courses of its oxygen; absent where nothing is known of what lives in it
 * @param typed when the time that the room says for it runs out; absent where none is said, and where it does not
 */
public record TankDrill(
        Rack rack,
        Shelf shelf,
        Tank tank,
        boolean essential,
        Levels levels,
        Optional<Courses> courses,
        OptionalDouble typed) {
    /** Its oxygen, likely and cautious: never one figure. */
    public record Courses(Course likely, Course cautious) {
        public Course of(Case how) {
            return switch (how) {
                case LIKELY -> likely;
                case CAUTIOUS -> cautious;
            };
        }
    }

    /** Whether anything is known of what lives in it. */
    public boolean isJudged() {
        return courses.isPresent() || tank.survivalS().isPresent();
    }

    /** When it comes down to the alarm level, or its typed time runs out. */
    public OptionalDouble alarmS(Case how) {
        return reachedS(how, levels.alarmGPerM3());
    }

    /** When it comes down to the danger level, or its typed time runs out. */
    public OptionalDouble dangerS(Case how) {
        return reachedS(how, levels.dangerGPerM3());
    }

    private OptionalDouble reachedS(Case how, double gPerM3) {
        if (tank.survivalS().isPresent()) {
            return typed;
        }
        return courses.map(both -> both.of(how).downToS(gPerM3)).orElse(OptionalDouble.empty());
    }
}
