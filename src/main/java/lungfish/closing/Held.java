package lungfish.closing;

/**
 * The pressure inside the machine that is held hardest, against what it bears all day: what filter and silencer take is
 * pressure for the machine too.
 *
 * @param machine its name
 * @param beforePa with all valves as they were
 * @param afterPa with some outlets shut
 * @param continuousPa largest continuous pressure
 */
public record Held(String machine, double beforePa, double afterPa, double continuousPa) {
    /** Whether it is held above what it bears all day once the outlets are shut. */
    public boolean isTooHigh() {
        return afterPa > continuousPa;
    }
}
