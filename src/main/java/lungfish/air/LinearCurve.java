package lungfish.air;

/** The ideal linear inherent characteristic, flow coefficient in proportion to travel: IEC 60534-2-4. */
record LinearCurve() implements ValveCurve {
    @Override
    public double lossRatio(double opening) {
        return 1.0 / (opening * opening);
    }

    @Override
    public double opening(double lossRatio) {
        return 1.0 / Math.sqrt(Math.max(lossRatio, 1.0));
    }
}
