package lungfish.rescue;

import java.util.List;

/**
 * Filters and pumps that move water beside the air.
 *
 * @param all in the order drawn
 * @param alarmGPerM3 below which a tank should not stand
 * @param savedW what those draw that may go, as far as the room says it
 * @param savedPerYear what that costs in a year, in units of money
 * @param unknownW of how many that may go the room does not say what they draw
 */
public record SecondLine(List<Second> all, double alarmGPerM3, double savedW, double savedPerYear, int unknownW) {
    public SecondLine {
        all = List.copyOf(all);
    }

    /** How many may go. */
    public int mayGo() {
        return (int) all.stream().filter(Second::mayGo).count();
    }
}
