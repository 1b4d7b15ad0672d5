package lungfish.rescue;

/** What a room keeps in each hazard. */
public record Outcome(Kept mains, Kept blower) {
    /** What it keeps in one of them. */
    public Kept in(Hazard hazard) {
        return switch (hazard) {
            case MAINS -> mains;
            case BLOWER -> blower;
        };
    }
}
