package lungfish.drawing;

import java.util.List;
import java.util.stream.IntStream;
import lungfish.outage.Drill;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Course;

/**
 * Between which levels the oxygen of all tanks lies over time, at worst: so many lines would be mud.
 *
 * @param samples in the order of time; none where no tank was followed
 * @param topGPerM3 the highest level of any tank in either case
 */
record OxygenBand(List<Sample> samples, double topGPerM3) {
    /** As fine as a wide chart shows. */
    private static final int SAMPLES = 240;

    /** At one time the least and the most of all tanks. */
    record Sample(double atS, double leastGPerM3, double mostGPerM3) {}

    static OxygenBand of(Drill drill) {
        List<Course> courses = drill.tanks().stream()
                .flatMap(tank -> tank.courses().stream())
                .map(TankDrill.Courses::cautious)
                .toList();
        if (courses.isEmpty()) {
            return new OxygenBand(List.of(), 0);
        }
        List<Sample> samples = IntStream.rangeClosed(0, SAMPLES)
                .mapToObj(i -> sample(courses, drill.scene().untilS() * i / SAMPLES))
                .toList();
        return new OxygenBand(samples, top(drill));
    }

    private static Sample sample(List<Course> courses, double atS) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Course course : courses) {
            double level = course.atS(atS);
            least = Math.min(least, level);
            most = Math.max(most, level);
        }
        return new Sample(atS, least, most);
    }

    private static double top(Drill drill) {
        return drill.tanks().stream()
                .flatMap(tank -> tank.courses().stream())
                .mapToDouble(both -> Math.max(top(both.likely()), top(both.cautious())))
                .max()
                .orElse(0);
    }

    private static double top(Course course) {
        return Math.max(course.startGPerM3(), course.endGPerM3());
    }

    boolean isEmpty() {
        return samples.isEmpty();
    }
}
