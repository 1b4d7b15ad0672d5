package lungfish.report;

import lungfish.quantity.Quantities;
import lungfish.sizing.Limit;

/** Says limits, and by how much they are broken. */
public final class Limits {
    private final Quantities quantities;

    public Limits(Quantities quantities) {
        this.quantities = quantities;
    }

    /** "pressure: reaches 12.0 kPa, 14.2 kPa is needed". */
    public String says(Limit.Broken broken) {
        String found = quantities.show(broken.foundSi(), broken.limit().dimension());
        String allowed = quantities.show(broken.allowedSi(), broken.limit().dimension());
        return switch (broken.limit()) {
            case FLOW -> "air: gives " + found + ", " + allowed + " is needed";
            case PRESSURE -> "pressure: reaches " + found + ", " + allowed + " is needed";
            case RATING -> "rating: held at " + found + ", rated for " + allowed;
            case RESERVE -> "reserve: keeps " + found + ", " + allowed + " is wished for";
            case LEAST_FLOW -> "least flow: passes " + found + ", must pass " + allowed;
            case HEAT -> "heat: " + found + ", the pipe is good to " + allowed;
            case NOISE -> "noise: " + found + ", " + allowed + " is wished for";
            case MAINS -> "mains: made for " + found + ", the room has " + allowed;
            case RUNTIME -> "runtime: " + found + ", " + allowed + " is wished for";
            case SPARE -> "spare at the worst-served outlet: " + found + ", " + allowed + " is wished for";
            case SPEED -> "speed in the pipe: " + found + ", good up to " + allowed;
        };
    }
}
