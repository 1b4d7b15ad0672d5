package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.catalogue.DeviceClass;
import lungfish.measured.OutletLaw.Off;

/**
 * The numbers that nobody knows for sure, each with the standard deviation of what is known of it beforehand; they stand for the
 * room as it was said at 0. First those of each outlet, then those of all, then those of each class of devices.
 */
final class Unknowns {
    private static final Input[] OF_OUTLET = {Input.FLOW, Input.DEPTH, Input.DEVICE, Input.FOULING};

    /** An unknown that an outlet feels, and what of the outlet it is. */
    record Felt(int unknown, Input input) {}

    final int setGauge;
    final int gauge;
    final int blower;
    final int steepness;
    final int ageing;
    final int seep;
    private final int classes;
    private final List<String> classIds;
    private final double[] sd;
    private final List<List<Felt>> felt;
    private final double aged;

    Unknowns(Start start) {
        int outlets = start.outlets();
        setGauge = OF_OUTLET.length * outlets;
        gauge = setGauge + 1;
        blower = setGauge + 2;
        steepness = setGauge + 3;
        ageing = setGauge + 4;
        seep = setGauge + 5;
        classes = setGauge + 6;
        classIds = start.ground().needs().stream()
                .map(need -> need.device().id())
                .distinct()
                .toList();
        sd = new double[classes + 2 * classIds.size()];
        felt = IntStream.range(0, outlets).mapToObj(i -> felt(start, i)).toList();
        aged = aged(start);
        for (int i = 0; i < outlets; i++) {
            sd[OF_OUTLET.length * i] = start.flowSd()[i];
            sd[OF_OUTLET.length * i + 1] = Doubts.DEPTH_M;
            sd[OF_OUTLET.length * i + 2] = Doubts.DEVICE_LOG;
            sd[OF_OUTLET.length * i + 3] = Doubts.FOULING_LOG;
        }
        sd[setGauge] = start.gaugeSdPa();
        sd[gauge] = Doubts.GAUGE_PA;
        sd[blower] = start.isBled() ? Doubts.BLOWER_LOG : 0;
        sd[steepness] = Doubts.STEEPNESS;
        sd[ageing] = Math.max(Doubts.AGEING_LEAST, Doubts.AGEING_SHARE * aged);
        sd[seep] = Doubts.SEEP_DOUBT;
        for (int c = 0; c < classIds.size(); c++) {
            sd[classes + 2 * c] = Doubts.CLASS_LOG;
            sd[classes + 2 * c + 1] = Doubts.CLASS_FOULING_LOG;
        }
    }

    private List<Felt> felt(Start start, int outlet) {
        List<Felt> all = new ArrayList<>();
        for (int k = 0; k < OF_OUTLET.length; k++) {
            all.add(new Felt(OF_OUTLET.length * outlet + k, OF_OUTLET[k]));
        }
        DeviceClass device = start.ground().needs().get(outlet).device();
        int c = classIds.indexOf(device.id());
        all.add(new Felt(classes + 2 * c, Input.DEVICE));
        all.add(new Felt(classes + 2 * c + 1, Input.FOULING));
        all.add(new Felt(setGauge, Input.TAP));
        return List.copyOf(all);
    }

    /** What blowers of this age have lost since the valves were set, as a share: on the line from new to due for a rebuild. */
    private static double aged(Start start) {
        return start.ground().fleet().placed().stream()
                .map(placed -> placed.machine().kind())
                .mapToDouble(kind -> (1 - kind.tiredShare()) * start.rounds().ranS() / kind.rebuildS())
                .average()
                .orElse(0);
    }

    int count() {
        return sd.length;
    }

    double sd(int unknown) {
        return sd[unknown];
    }

    /** The outlet of an unknown; empty where it is not of one alone. */
    Optional<Integer> outlet(int unknown) {
        return unknown < setGauge ? Optional.of(unknown / OF_OUTLET.length) : Optional.empty();
    }

    /** Those that an outlet feels. */
    List<Felt> felt(int outlet) {
        return felt.get(outlet);
    }

    /** The natural logarithm of the flow at which an outlet's valve was set. */
    static int flow(int outlet) {
        return OF_OUTLET.length * outlet;
    }

    /** The natural logarithm of what the devices of a class take, by its id. */
    int device(String classId) {
        return classes + 2 * classIds.indexOf(classId);
    }

    /** The classes of devices that hang in the room. */
    List<String> classIds() {
        return classIds;
    }

    /** How far an outlet is off where the unknowns are these. */
    Off off(int outlet, double[] at) {
        Off off = Off.NONE;
        for (Felt each : felt(outlet)) {
            off = each.input().nudged(off, at[each.unknown()]);
        }
        return off;
    }

    /** What is left of the blowers' air since, by their age. */
    double leftByAge(double[] at) {
        return 1 - aged - at[ageing];
    }
}
