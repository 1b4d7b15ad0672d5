package lungfish.everyday;

/**
 * The pressure inside the machine that is held hardest, against what it bears all day: what filter and silencer take is
 * pressure for the machine too.
 *
 * @param machine its name
 * @param beforePa before anything happened
 * @param afterPa once it has happened
 * @param continuousPa largest continuous pressure
 */
public record Held(String machine, double beforePa, double afterPa, double continuousPa) {
    /** Whether it is held above what it bears all day once it has happened. */
    public boolean isTooHigh() {
        return afterPa > continuousPa;
    }
}
