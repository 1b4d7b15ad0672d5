package lungfish.air;

/**
 * The ideal equal-percentage inherent characteristic, flow coefficient {@code R^(h−1)} of the open one at travel h:
 * IEC 60534-2-4. The ideal one would still leak 1/R when shut, so below h = 1/ln R the tangent through the shut point
 * takes over, which leaves no corner.
 *
 * @param rangeability R, above e (else the tangent would touch beyond open)
 */
record EqualPercentageCurve(double rangeability) implements ValveCurve {
    @Override
    public double lossRatio(double opening) {
        double flow =
                opening < tangentAt() ? tangentFlow() * opening / tangentAt() : Math.exp(logRange() * (opening - 1.0));
        return 1.0 / (flow * flow);
    }

    @Override
    public double opening(double lossRatio) {
        double flow = 1.0 / Math.sqrt(Math.max(lossRatio, 1.0));
        return flow < tangentFlow() ? tangentAt() * flow / tangentFlow() : 1.0 + Math.log(flow) / logRange();
    }

    private double logRange() {
        return Math.log(rangeability);
    }

    private double tangentAt() {
        return 1.0 / logRange();
    }

    private double tangentFlow() {
        return Math.E / rangeability;
    }
}
