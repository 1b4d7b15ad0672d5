package lungfish.edit;

import java.util.Comparator;
import java.util.List;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Whether what stands in a rack fits: shelves above each other, tanks on shelves, water in tanks, air releases in water. */
final class RackSound {
    /** Sizes are typed to the millimetre: less than this is rounding. */
    static final double ROUNDING_M = 0.001;

    private static final double HEAVIEST_KG = 1e5;

    private final Rack rack;
    private final List<Refused> troubles;

    RackSound(Rack rack, List<Refused> troubles) {
        this.rack = rack;
        this.troubles = troubles;
    }

    void look() {
        Sizes.span("The rack's width", rack.widthM(), troubles);
        Sizes.span("The rack's depth", rack.depthM(), troubles);
        if (!(rack.ownMassKg().orElse(0) >= 0 && rack.ownMassKg().orElse(0) <= HEAVIEST_KG)) {
            troubles.add(Refused.because("No rack has that mass.", "Type what the empty rack weighs."));
        }
        rising();
        rack.shelves().forEach(shelf -> Sizes.height("A shelf", shelf.heightM(), troubles));
        rack.shelves().forEach(this::shelf);
    }

    private void rising() {
        for (int i = 1; i < rack.shelves().size(); i++) {
            double belowM = rack.shelves().get(i - 1).heightM();
            if (!(rack.shelves().get(i).heightM() > belowM)) {
                troubles.add(Refused.because(
                        "Two shelves would be at the same height, {found}.",
                        "Leave some height between them.",
                        Refused.length("found", belowM)));
            }
        }
    }

    private void shelf(Shelf shelf) {
        shelf.tanks().forEach(this::tank);
        List<Tank> fromLeft = shelf.tanks().stream()
                .sorted(Comparator.comparingDouble(Tank::xM))
                .toList();
        for (int i = 1; i < fromLeft.size(); i++) {
            apart(fromLeft.get(i - 1), fromLeft.get(i));
        }
    }

    private void apart(Tank left, Tank right) {
        if (right.xM() < left.endXM() - ROUNDING_M) {
            troubles.add(Refused.because(
                    Words.opening(Words.tank(left)) + " and " + Words.tank(right) + " would overlap by {found}.",
                    "Move one of them, or take a shorter tank.",
                    Refused.length("found", left.endXM() - right.xM())));
        }
    }

    private void tank(Tank tank) {
        Sizes.span("The tank's length", tank.outside().lengthM(), troubles);
        Sizes.span("The tank's width", tank.outside().widthM(), troubles);
        Sizes.span("The tank's height", tank.outside().heightM(), troubles);
        if (!(tank.xM() >= 0)) {
            troubles.add(Refused.because(
                    Words.opening(Words.tank(tank)) + " would stick out of the rack on the left, by {found}.",
                    "Keep it on its shelf.",
                    Refused.length("found", -tank.xM())));
        }
        if (tank.endXM() > rack.widthM() + ROUNDING_M) {
            troubles.add(Refused.because(
                    Words.opening(Words.tank(tank)) + " would end {found} from the left, beyond its shelf ({most}).",
                    "Take a shorter tank, or make the rack wider.",
                    Refused.length("found", tank.endXM()),
                    Refused.length("most", rack.widthM())));
        }
        water(tank);
    }

    private void water(Tank tank) {
        if (!(tank.waterDepthM() > 0 && tank.waterDepthM() <= tank.outside().heightM())) {
            troubles.add(Refused.because(
                    "The water in " + Words.tank(tank) + " would be {found} deep.",
                    "It must be more than nothing, and at most the tank's height, {most}.",
                    Refused.length("found", tank.waterDepthM()),
                    Refused.length("most", tank.outside().heightM())));
        }
        tank.outlets().forEach(outlet -> OutletSound.look(tank, outlet, troubles));
    }
}
