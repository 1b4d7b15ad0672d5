package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.room.Reading;

/**
 * Fits what is uncertain to what was read, for the likeliest happening: its size, the flows at which the valves were set, depths,
 * devices, fouling, the blowers, the gauge. Each reading counts by its doubt, and so does what was known before: weighted least
 * squares with a row for each (the most probable point of all, where every doubt is normal). Of the outlets those that were read
 * are fitted; the rest stand as the room says, since nothing tells of them.
 */
final class Fitting {
    private static final double SIZE_LOG = 1;
    private static final double STEP = 1e-4;

    private final Start start;
    private final Unknowns unknowns;
    private final Rows rows;
    private final List<Reading> readings;
    private final Weighed likeliest;
    private final int[] fitted;
    private final boolean isSized;

    Fitting(Start start, Unknowns unknowns, Rows rows, List<Reading> readings, Weighed likeliest) {
        this.start = start;
        this.unknowns = unknowns;
        this.rows = rows;
        this.readings = readings;
        this.likeliest = likeliest;
        this.fitted = fitted();
        this.isSized = !(likeliest.happening() instanceof Happening.Nothing);
    }

    private int[] fitted() {
        List<Integer> outlets = readings.stream()
                .map(Reading::measured)
                .flatMap(each -> each instanceof Reading.Jar jar
                        ? Stream.of(start.ground().outlet(jar.outlet()))
                        : Stream.empty())
                .distinct()
                .toList();
        return IntStream.range(0, unknowns.count())
                .filter(k -> unknowns.sd(k) > 0)
                .filter(k -> unknowns.outlet(k).stream().allMatch(outlets::contains))
                .toArray();
    }

    /** Empty where nothing settles. */
    Optional<Fit> fit() {
        double[] from = new double[fitted.length + (isSized ? 1 : 0)];
        return model(from).isEmpty()
                ? Optional.empty()
                : LeastSquares.of(scaled -> model(scaled).orElseThrow(), from).map(this::fit);
    }

    private Fit fit(LeastSquares.Found found) {
        double[] at = new double[unknowns.count()];
        double[] sd = IntStream.range(0, at.length).mapToDouble(unknowns::sd).toArray();
        for (int k = 0; k < fitted.length; k++) {
            at[fitted[k]] = found.at()[k] * unknowns.sd(fitted[k]);
            sd[fitted[k]] *= Math.sqrt(found.covariance()[k][k]);
        }
        int last = fitted.length;
        double sizeSd = isSized ? SIZE_LOG * Math.sqrt(found.covariance()[last][last]) : 0;
        Happening happening = happening(found.at());
        return new Fit(
                start,
                unknowns,
                happening,
                happening.size() * sizeSd,
                at,
                sd,
                likeliest.others().stream().sorted().toList());
    }

    private Happening happening(double[] scaled) {
        Happening likely = likeliest.happening();
        return isSized ? likely.sized(likely.size() * Math.exp(SIZE_LOG * scaled[fitted.length])) : likely;
    }

    private double[] at(double[] scaled) {
        double[] at = new double[unknowns.count()];
        for (int k = 0; k < fitted.length; k++) {
            at[fitted[k]] = scaled[k] * unknowns.sd(fitted[k]);
        }
        return at;
    }

    /** Every parameter in units of its doubt. */
    private Optional<LeastSquares.Model> model(double[] scaled) {
        Optional<List<Row>> here = held(scaled);
        Optional<List<Row>> further = isSized ? held(stepped(scaled)) : here;
        return here.flatMap(rowsHere -> further.map(rowsFurther -> model(scaled, rowsHere, rowsFurther)));
    }

    private double[] stepped(double[] scaled) {
        double[] stepped = scaled.clone();
        stepped[fitted.length] += STEP;
        return stepped;
    }

    private Optional<List<Row>> held(double[] scaled) {
        return rows.of(readings, happening(scaled), at(scaled)).map(held -> held.stream()
                .map(row -> likeliest.others().contains(row.outlet()) ? row.other() : row)
                .toList());
    }

    private LeastSquares.Model model(double[] scaled, List<Row> held, List<Row> further) {
        List<double[]> slopes = new ArrayList<>();
        double[] residuals = new double[held.size() + scaled.length];
        for (int a = 0; a < held.size(); a++) {
            double weight = 1 / Math.sqrt(held.get(a).variance());
            residuals[a] = held.get(a).off() * weight;
            double[] slope = new double[scaled.length];
            for (int k = 0; k < fitted.length; k++) {
                slope[k] = held.get(a).slope()[fitted[k]] * unknowns.sd(fitted[k]) * weight;
            }
            if (isSized) {
                slope[fitted.length] = (further.get(a).off() - held.get(a).off()) / STEP * weight;
            }
            slopes.add(slope);
        }
        for (int k = 0; k < scaled.length; k++) {
            residuals[held.size() + k] = scaled[k];
            double[] slope = new double[scaled.length];
            slope[k] = 1;
            slopes.add(slope);
        }
        return new LeastSquares.Model(residuals, slopes.toArray(double[][]::new));
    }
}
