package lungfish.catalogue;

/**
 * Something that is done to a room again and again.
 *
 * @param everyS from one time to the next, s
 */
public record ServiceClass(String id, String name, Task task, double everyS, String source) {
    /** What is done. */
    public enum Task {
        DEVICES_CLEANED,
        STONES_EXCHANGED,
        FILTER_CHANGED,
        CHECK_VALVES_EXCHANGED,
        DRAINED,
        ALARM_TRIED
    }
}
