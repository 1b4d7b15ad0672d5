package lungfish.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of a tank list may say. */
public enum TankProperty {
    NAME("Name", "name|tank"),
    RACK("Rack", "rack|stand"),
    SHELF("Shelf", "shelf|level|tier|row"),
    SIZE("Common size", "size|type|model"),
    LENGTH("Length", "length|long"),
    WIDTH("Width", "width|wide|depth|front to back"),
    HEIGHT("Height", "height|high|tall"),
    WATER("Water depth", "water|filled"),
    TEMPERATURE("Temperature", "temperature|temp"),
    DEVICE("Device", "device|filter|sponge|stone|air");

    private final String label;

    /** Of which one begins a word of the heading. */
    private final String words;

    TankProperty(String label, String words) {
        this.label = label;
        this.words = words;
    }

    /** As a keeper chooses it. */
    public String label() {
        return label;
    }

    /** The property that a heading likely means. */
    public static Optional<TankProperty> of(String heading) {
        String plain = heading.toLowerCase(Locale.ROOT);
        for (TankProperty property :
                List.of(TEMPERATURE, DEVICE, RACK, SHELF, WATER, LENGTH, WIDTH, HEIGHT, SIZE, NAME)) {
            if (plain.matches(".*\\b(?:" + property.words + ").*")) {
                return Optional.of(property);
            }
        }
        return Optional.empty();
    }
}
