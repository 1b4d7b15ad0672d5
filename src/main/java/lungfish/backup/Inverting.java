package lungfish.backup;

import lungfish.reason.Given;

/** What stands between battery and blower. */
record Inverting(Given efficiency, Given idleW) {
    /** What the battery gives for a load: {@code P/η + P_idle}. */
    double batteryW(double loadW) {
        return loadW / efficiency.si() + idleW.si();
    }
}
