package lungfish.room;

/**
 * An outlet with the tank, shelf and rack that hold it.
 *
 * @param number its place among the outlets of its tank, from 0
 */
public record Seat(Rack rack, Shelf shelf, Tank tank, Outlet outlet, int number) {
    public boolean planned() {
        return rack.isPlanned();
    }

    /** Where its airline enters the tank: on the middle line of the rim, spread evenly with its neighbours. */
    public Point rim() {
        double alongM = tank.xM()
                + tank.outside().lengthM() * (number + 1.0) / (tank.outlets().size() + 1.0);
        return rack.at(
                alongM, rack.depthM() / 2, shelf.heightM() + tank.outside().heightM());
    }

    /** Height of the water line above the floor, m. */
    public double waterLineM() {
        return shelf.heightM() + tank.waterDepthM();
    }
}
