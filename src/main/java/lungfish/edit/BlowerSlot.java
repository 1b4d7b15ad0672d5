package lungfish.edit;

import lungfish.quantity.Dimension;

/** What a data sheet says of a blower beside its curve. */
public enum BlowerSlot {
    WATTS("Power", Dimension.POWER, 0, 1e6),
    LEVEL("Sound level", Dimension.SOUND_LEVEL, 10, 130),
    DISTANCE("Heard at", Dimension.LENGTH, 0, 20),
    CONTINUOUS("Most pressure all day", Dimension.PRESSURE, 0, 1e6),
    PRICE("Price", Dimension.MONEY, 0, 1e9),
    VOLTAGE("Mains voltage", Dimension.VOLTAGE, 0, 1000),
    FREQUENCY("Mains frequency", Dimension.FREQUENCY, 0, 400),
    REBUILD_PRICE("Price of a rebuild", Dimension.MONEY, 0, 1e9),
    REBUILD("Rebuilt every", Dimension.DURATION, 0, 1e10),
    LIFE("Lives", Dimension.DURATION, 0, 1e10);

    private final String title;
    private final Dimension dimension;
    private final double least;
    private final double most;

    BlowerSlot(String title, Dimension dimension, double least, double most) {
        this.title = title;
        this.dimension = dimension;
        this.least = least;
        this.most = most;
    }

    /** Over its field. */
    public String title() {
        return title;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Whether a number, SI, can be meant; only what costs something may be nothing. */
    boolean allows(double si) {
        boolean isMoney = dimension == Dimension.MONEY;
        return (isMoney ? si >= least : si > least) && si <= most;
    }

    double most() {
        return most;
    }

    double least() {
        return least;
    }
}
