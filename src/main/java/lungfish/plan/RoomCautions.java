package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lungfish.air.Water;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Circuit;
import lungfish.room.Rack;
import lungfish.room.Tank;

/** The cautions that every room deserves: mains beside water, racks on floors. */
final class RoomCautions {
    /** 40 psf, for rooms other than sleeping rooms: International Residential Code, Table R301.5. */
    private static final double FLOOR_PA = 1915;

    private final Setup setup;
    private final List<Finding> findings = new ArrayList<>();

    private RoomCautions(Setup setup) {
        this.setup = setup;
    }

    static List<Finding> of(Setup setup) {
        RoomCautions own = new RoomCautions(setup);
        own.circuits();
        own.floor();
        return own.findings;
    }

    private void circuits() {
        List<Circuit> unsure = setup.room().circuits().stream()
                .filter(circuit -> !circuit.residualCurrentProtected().orElse(false))
                .toList();
        if (setup.room().circuits().isEmpty()) {
            findings.add(Finding.of(Code.RESIDUAL_CURRENT, PartId.ROOM));
        }
        unsure.forEach(circuit ->
                findings.add(Finding.of(protection(circuit), circuit.id().part())));
    }

    /** Known to have none is graver than not known to have it. */
    private static Code protection(Circuit circuit) {
        return circuit.residualCurrentProtected().isPresent() ? Code.NO_RESIDUAL_CURRENT : Code.RESIDUAL_CURRENT;
    }

    /** Only the heaviest rack is told: where one is too heavy the others mostly are. */
    private void floor() {
        setup.room().racks().stream()
                .filter(rack -> rack.widthM() > 0 && rack.depthM() > 0)
                .max(Comparator.comparingDouble(this::loadPa))
                .filter(rack -> loadPa(rack) > FLOOR_PA)
                .ifPresent(rack -> findings.add(Finding.of(
                        Code.FLOOR_LOAD,
                        rack.id().part(),
                        new Amount("found", loadPa(rack), Dimension.FLOOR_LOAD),
                        new Amount("allowed", FLOOR_PA, Dimension.FLOOR_LOAD))));
    }

    private double loadPa(Rack rack) {
        double own = rack.ownMassKg()
                .orElse(rack.shelves().size()
                        * setup.catalogue()
                                .assumed(Assumable.RACK_MASS_PER_SHELF)
                                .si());
        double water = rack.tanks().mapToDouble(this::waterKg).sum();
        return (own + water) * Water.GRAVITY_M_PER_S2 / (rack.widthM() * rack.depthM());
    }

    private double waterKg(Tank tank) {
        return tank.waterM3() * setup.surroundings().water(tank).densityKgPerM3();
    }
}
