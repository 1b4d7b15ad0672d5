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

    /** No more tanks than these are safe in every hazard. */
    public int safeInAll() {
        return Math.min(mains.safe(), blower.safe());
    }
}
