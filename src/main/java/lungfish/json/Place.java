package lungfish.json;

import org.jspecify.annotations.Nullable;

/** A place in a JSON text. Its text is a JSON Pointer (RFC 6901), made only when asked. */
public final class Place {
    /** The whole text; its pointer is empty. */
    public static final Place ROOT = new Place(null, "");

    private final @Nullable Place parent;
    private final String step;

    private Place(@Nullable Place parent, String step) {
        this.parent = parent;
        this.step = step;
    }

    /** The value under a key of the object that stands here. */
    public Place key(String key) {
        return new Place(this, key);
    }

    /** An item, counted from 0, of the array that stands here. */
    public Place item(int index) {
        return new Place(this, Integer.toString(index));
    }

    /** The pointer: {@code /racks/2/name}. */
    public String pointer() {
        return parent == null ? "" : parent.pointer() + "/" + escaped(step);
    }

    private static String escaped(String step) {
        return step.replace("~", "~0").replace("/", "~1");
    }

    @Override
    public String toString() {
        return pointer();
    }
}
