package lungfish.measured;

import lungfish.measured.OutletLaw.Off;

/** What of an outlet nobody knows for sure, and by how much it is nudged to see what it does. */
enum Input {
    FLOW(1e-3) {
        @Override
        Off nudged(Off off, double by) {
            return new Off(off.flow() + by, off.depthM(), off.device(), off.fouling(), off.tapPa(), off.clogPaSPerM3());
        }
    },
    DEPTH(1e-3) {
        @Override
        Off nudged(Off off, double by) {
            return new Off(off.flow(), off.depthM() + by, off.device(), off.fouling(), off.tapPa(), off.clogPaSPerM3());
        }
    },
    DEVICE(1e-3) {
        @Override
        Off nudged(Off off, double by) {
            return new Off(off.flow(), off.depthM(), off.device() + by, off.fouling(), off.tapPa(), off.clogPaSPerM3());
        }
    },
    FOULING(1e-3) {
        @Override
        Off nudged(Off off, double by) {
            return new Off(off.flow(), off.depthM(), off.device(), off.fouling() + by, off.tapPa(), off.clogPaSPerM3());
        }
    },
    TAP(1) {
        @Override
        Off nudged(Off off, double by) {
            return new Off(off.flow(), off.depthM(), off.device(), off.fouling(), off.tapPa() + by, off.clogPaSPerM3());
        }
    };

    private final double step;

    Input(double step) {
        this.step = step;
    }

    abstract Off nudged(Off off, double by);

    /** What the pressure that an outlet needs for a flow grows by, Pa for each unit of the input. */
    double slope(OutletLaw law, double freeM3PerS, Off off) {
        return (law.neededPa(freeM3PerS, nudged(off, step)) - law.neededPa(freeM3PerS, nudged(off, -step)))
                / (2 * step);
    }
}
