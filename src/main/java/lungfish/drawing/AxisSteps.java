package lungfish.drawing;

import lungfish.quantity.Dimension;
import lungfish.quantity.Parsed;

/** Round steps of an axis in the reader's unit. */
record AxisSteps(double stepSi, int count, Dimension dimension, Look look) {
    private static final double[] ROUND = {1, 2, 5};

    /** The finest round steps of which no more than so many fit below the end of the axis. */
    static AxisSteps upTo(double mostSi, Dimension dimension, int most, Look look) {
        double unitSi = unitSi(dimension, look);
        double power = Math.pow(10, Math.floor(Math.log10(mostSi / unitSi)) - 1);
        for (int i = 0; i < 9; i++) {
            double step = ROUND[i % 3] * power * (i < 3 ? 1 : i < 6 ? 10 : 100) * unitSi;
            int count = (int) Math.floor(mostSi / step);
            if (count <= most) {
                return new AxisSteps(step, count, dimension, look);
            }
        }
        return new AxisSteps(mostSi, 1, dimension, look);
    }

    /** One of the reader's unit, asked of the house of quantities. */
    private static double unitSi(Dimension dimension, Look look) {
        Parsed one = look.quantities().parse("1", dimension);
        return one.match(si -> si, problem -> 1.0);
    }

    double at(int i) {
        return i * stepSi;
    }

    String label(int i) {
        return look.quantities().show(at(i), dimension).replaceFirst("\\.0+(?= )", "");
    }
}
