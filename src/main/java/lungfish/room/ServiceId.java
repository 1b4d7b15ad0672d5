package lungfish.room;

/** Names a service in the log of the room. */
public record ServiceId(String text) {
    @Override
    public String toString() {
        return text;
    }
}
