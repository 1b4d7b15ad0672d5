package lungfish.edit;

import java.util.List;
import lungfish.room.Seat;

/** What can be typed, filled down and pasted in the table of outlets. */
public enum Column {
    OUTLET("Outlet"),
    TANK("Tank"),
    DEVICE("Device"),
    DEPTH("Depth"),
    LEAST("At least"),
    TARGET("Target"),
    MOST("At most"),
    VALVE_KIND("Valve kind"),
    VALVE("Valve"),
    AIRLINE("Airline"),
    AIRLINE_LENGTH("Airline length"),
    CHECK_VALVE("Check valve"),
    USE("Use"),
    ESSENTIAL("Essential");

    private final String heading;

    Column(String heading) {
        this.heading = heading;
    }

    /** As it stands over the column. */
    public String heading() {
        return heading;
    }

    /** Whether it can be typed into. */
    public boolean isOpen() {
        return this != OUTLET;
    }

    /** What can be chosen, by name; empty where a figure or a text is typed. */
    public List<String> choices(Reader reader) {
        return cell() instanceof Cell.Choice choice
                ? choice.options().apply(reader).stream()
                        .map(Cell.Choice.Option::name)
                        .toList()
                : List.of();
    }

    /** The property of an outlet, as the reader reads it; empty where it is unknown. */
    public String show(Seat seat, Reader reader) {
        return cell().show(seat, reader);
    }

    Cell cell() {
        return Cells.of(this);
    }
}
