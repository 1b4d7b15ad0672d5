package lungfish.today;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lungfish.cost.Bill;

/**
 * One of the two ways to give the room its air.
 *
 * @param machines that run; each has a plug of its own
 * @param circuits mains circuits that they hang on; absent where the room does not say it of each
 * @param watts drawn where they run, together
 * @param dba level at the listener; absent where no level is known
 * @param bill money by year, and how often somebody rebuilds or replaces one; absent where nobody can count it
 * @param air what they give
 * @param failure the worst that one machine can do; absent where nobody knows what hangs on it
 */
public record Way(
        int machines,
        OptionalInt circuits,
        double watts,
        OptionalDouble dba,
        Optional<Bill> bill,
        Air air,
        Optional<Failure> failure) {

    /**
     * Air at depth, tired and with devices due for cleaning.
     *
     * @param givesM3PerS at the pressures where the outlets want it
     * @param missingM3PerS where it is short; 0 where it is not
     * @param shortOutlets that share what is missing
     * @param unfed outlets of which no machine is said to feed them
     */
    public record Air(double askedM3PerS, double givesM3PerS, double missingM3PerS, int shortOutlets, int unfed) {
        /** Whether every outlet can have what it asks for. */
        public boolean isEnough() {
            return shortOutlets == 0 && unfed == 0;
        }
    }
}
