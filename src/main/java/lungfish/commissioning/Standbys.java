package lungfish.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.catalogue.Catalogue;
import lungfish.commissioning.FirstStep.Kind;
import lungfish.piping.PipedRoom;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.sizing.Fleet;

/**
 * Every standby, tried alone: the planned blowers off behind their check valves, the bleed wide open and then closed until the
 * gauge reads what the room runs at, or what the standby bears, whichever is lower.
 */
final class Standbys {
    private final Plan plan;
    private final Catalogue catalogue;
    private final Fleet fleet;
    private final double holdPa;
    private final double[] setK;

    Standbys(Plan plan, Catalogue catalogue, Fleet fleet, double holdPa, double[] setK) {
        this.plan = plan;
        this.catalogue = catalogue;
        this.fleet = fleet;
        this.holdPa = holdPa;
        this.setK = setK.clone();
    }

    List<FirstStep> steps() {
        List<FirstStep> steps = new ArrayList<>();
        for (Blower blower : plan.room().blowers(Blower.Role.STANDBY)) {
            steps.add(FirstStep.running("standby:" + blower.id().text(), Kind.STANDBY, reads(blower))
                    .at(blower.id().part()));
        }
        return steps;
    }

    private Reads reads(Blower blower) {
        PipedRoom piped = plan.piped().orElseThrow();
        Machine machine = Machines.chosen(blower, plan.room(), catalogue)
                .orElseGet(() -> Machines.as(fleet.kind(), blower, catalogue));
        Fleet alone = new Fleet(List.of(new Fleet.Placed(machine, node(blower, piped))), fleet.bleed(), fleet.room());
        double bornePa = Math.min(holdPa, LeakTest.limitPa(alone, 0));
        Optional<HeldRoom.Stand> stand = new HeldRoom(piped, alone, bornePa).at(setK);
        return stand.map(found -> Reads.gauge(Expected.near(found.gaugePa(), Expected.GAUGE_PA)))
                .orElse(Reads.NOTHING);
    }

    /** It joins the pipe where a planned blower does that feeds the same place, else where the first does. */
    private String node(Blower standby, PipedRoom piped) {
        return plan.room().blowers(Blower.Role.PLANNED).stream()
                .filter(planned -> planned.feeds().equals(standby.feeds()))
                .flatMap(planned -> Optional.ofNullable(piped.blowerNodes().get(planned.id())).stream())
                .findFirst()
                .orElse(fleet.placed().get(0).node());
    }
}
