package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Backup;

/** Where what keeps the fish alive can hurt people. */
public final class OutageCautions {
    /** At least so far from the house: US Consumer Product Safety Commission, on carbon monoxide (20 ft). */
    private static final double GENERATOR_M = 20 * 0.3048;

    private OutageCautions() {}

    /** Those that apply to this backup, in the units of the reader. */
    public static List<String> of(Backup backup, Quantities quantities) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Mains power beside water: keep plugs, leads and inverters above the water lines, each cord with a drip"
                        + " loop, behind residual-current (ground-fault) protection.");
        if (!backup.batteries().isEmpty()) {
            cautions.add(
                    "Batteries: ventilate where they are charged, fuse each at its terminal, cover the terminals; an inverter"
                            + " with a sine wave, for blowers run hot on any other.");
        }
        if (backup.generator().isPresent()) {
            cautions.add("A generator's exhaust kills unseen: outdoors only, at least "
                    + quantities.show(GENERATOR_M, Dimension.LENGTH)
                    + " from the house, its doors and its windows (US CPSC), with alarms for carbon monoxide indoors; never"
                    + " back-feed a socket: house wiring only through a transfer switch that a licensed electrician has"
                    + " fitted.");
        }
        cautions.add("Local codes, the makers' sheets and licensed practice come first.");
        return cautions;
    }
}
