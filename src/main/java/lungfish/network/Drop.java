package lungfish.network;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air path of one outlet, from its tap to the bubbles: tap valve, airline, check valve, device, water.
 *
 * @param id unique among the drops
 * @param node where its tap sits
 * @param valveK of the tap valve as it is set, 1/m⁴: {@code Δp = k ṁ²/ρ}; a valve of loss factor K on a bore of area A
 *     has {@code K/(2A²)}; {@link #SHUT_K} or more is shut
 * @param valveKOpen of the same valve fully open, 1/m⁴
 * @param airline absent when the device hangs on the tap itself
 * @param check absent when there is none
 * @param device absent when it costs no pressure
 * @param depthM depth of the air release below the surface
 * @param targetM3PerS wanted free air; absent when it asks for none
 */
public record Drop(
        String id,
        String node,
        double valveK,
        double valveKOpen,
        Optional<Tubing> airline,
        Optional<Check> check,
        Optional<Device> device,
        double depthM,
        OptionalDouble targetM3PerS) {
    /** A valve at or above this, 1/m⁴, lets nothing through: it would pass less than 1e-12 kg/s. */
    public static final double SHUT_K = 1e30;

    /** Checks the numbers. */
    public Drop {
        Part.from0("valveK", valveK);
        Part.from0("valveKOpen", valveKOpen);
        Part.from0("depthM", depthM);
        Part.from0("targetM3PerS", targetM3PerS.orElse(0.0));
    }

    /** The same with its tap valve turned. */
    public Drop withValveK(double newValveK) {
        return new Drop(id, node, newValveK, valveKOpen, airline, check, device, depthM, targetM3PerS);
    }

    /** The same with another wish. */
    public Drop withTarget(double newTargetM3PerS) {
        OptionalDouble target = OptionalDouble.of(newTargetM3PerS);
        return new Drop(id, node, valveK, valveKOpen, airline, check, device, depthM, target);
    }

    /** The same, its tap at another node. */
    public Drop hungAt(String newNode) {
        return new Drop(id, newNode, valveK, valveKOpen, airline, check, device, depthM, targetM3PerS);
    }

    /** The same without a wish: the tuned network leaves it shut. */
    public Drop withoutTarget() {
        return new Drop(id, node, valveK, valveKOpen, airline, check, device, depthM, OptionalDouble.empty());
    }

    /** The same at another depth. */
    public Drop withDepth(double newDepthM) {
        return new Drop(id, node, valveK, valveKOpen, airline, check, device, newDepthM, targetM3PerS);
    }

    /** The same with its device clean, due for cleaning, or exchanged. */
    public Drop withDevice(Device newDevice) {
        return new Drop(id, node, valveK, valveKOpen, airline, check, Optional.of(newDevice), depthM, targetM3PerS);
    }
}
