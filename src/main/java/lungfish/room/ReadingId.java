package lungfish.room;

/** Names a reading in the log of the room. */
public record ReadingId(String text) {
    @Override
    public String toString() {
        return text;
    }
}
