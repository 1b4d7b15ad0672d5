package lungfish.logbook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * A straight line through shares over time, each weighted by the inverse square of its error: weighted least squares, NIST/SEMATECH
 * e-Handbook of Statistical Methods, 4.1.4.3, with the variances of line and slope from the same normal equations. Where the
 * shares scatter more than their errors say, the errors were too small, and are taken larger by the root of chi squared over the
 * degrees of freedom (Birge ratio, from memory); where they scatter less, by chance, they stay.
 *
 * @param from the day of the first of them
 * @param mean weighted, of their days, since that day
 * @param level of the line on that mean day
 * @param slope a day
 * @param levelVariance of the level
 * @param slopeVariance of the slope; the two are independent about the mean day
 * @param readings how many there are
 * @param to the day of the last of them
 */
public record Trend(
        LocalDate from,
        double mean,
        double level,
        double slope,
        double levelVariance,
        double slopeVariance,
        int readings,
        LocalDate to) {
    /** A line through fewer says nothing. */
    public static final int LEAST_READINGS = 2;

    /** Over fewer days wear cannot be told from a gauge's error: two months. Common practice, no source. */
    public static final int LEAST_DAYS = 60;

    /**
     * Half the width of the band in which eight of ten lie, in standard deviations: the 90 % point of the normal distribution,
     * NIST/SEMATECH e-Handbook, 1.3.6.7.1.
     */
    public static final double EIGHT_OF_TEN = 1.2816;

    /** The line through shares in the order of their days; empty where they are too few, or too close together. */
    static Optional<Trend> through(List<Share> shares) {
        if (shares.size() < LEAST_READINGS
                || days(shares.get(0).on(), shares.get(shares.size() - 1).on()) < LEAST_DAYS) {
            return Optional.empty();
        }
        return Optional.of(fitted(shares));
    }

    private static Trend fitted(List<Share> shares) {
        LocalDate from = shares.get(0).on();
        double weights = 0;
        double mean = 0;
        double level = 0;
        for (Share share : shares) {
            weights += weight(share);
            mean += weight(share) * days(from, share.on());
            level += weight(share) * share.share();
        }
        mean /= weights;
        level /= weights;
        double squares = 0;
        double products = 0;
        for (Share share : shares) {
            double x = days(from, share.on()) - mean;
            squares += weight(share) * x * x;
            products += weight(share) * x * share.share();
        }
        double slope = products / squares;
        double scatter = scatter(shares, from, mean, level, slope);
        return new Trend(
                from,
                mean,
                level,
                slope,
                scatter / weights,
                scatter / squares,
                shares.size(),
                shares.get(shares.size() - 1).on());
    }

    private static double weight(Share share) {
        return 1 / (share.error() * share.error());
    }

    /** Chi squared over the degrees of freedom, no less than 1. */
    private static double scatter(List<Share> shares, LocalDate from, double mean, double level, double slope) {
        double chi = 0;
        for (Share share : shares) {
            double off = share.share() - level - slope * (days(from, share.on()) - mean);
            chi += weight(share) * off * off;
        }
        return shares.size() > 2 ? Math.max(1, chi / (shares.size() - 2)) : 1;
    }

    private static long days(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to);
    }

    /** The line on a day. */
    public double at(LocalDate day) {
        return level + slope * (days(from, day) - mean);
    }

    /** Half the width of the band of the line in which eight of ten lie, on a day. */
    public double bandAt(LocalDate day) {
        double x = days(from, day) - mean;
        return EIGHT_OF_TEN * Math.sqrt(levelVariance + x * x * slopeVariance);
    }
}
