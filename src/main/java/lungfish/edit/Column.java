package lungfish.edit;

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
        return !(cell() instanceof Cell.Fixed);
    }

    /** The property of an outlet, as the reader reads it; empty where it is unknown. */
    public String show(Seat seat, Reader reader) {
        return cell().show(seat, reader);
    }

    Cell cell() {
        return Cells.of(this);
    }
}
