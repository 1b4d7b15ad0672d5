package lungfish.drawing;

/** How a tank stands at one time of an outage. */
public enum OxygenState {
    /** Above the alarm level. */
    FINE("fine"),
    /** At the alarm level or below: somebody must act. */
    ALARM("alarm"),
    /** At the danger level or below, or its typed time is over. */
    DANGER("danger"),
    /** Nothing is known of what lives in it. */
    UNKNOWN("not judged");

    private final String word;

    OxygenState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
