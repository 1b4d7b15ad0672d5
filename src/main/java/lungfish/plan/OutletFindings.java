package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.network.DropFlow;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Outlet;
import lungfish.sizing.PumpDuty;

/** What the outlets get as their valves are filed, and from the pumps of today. */
final class OutletFindings {
    private OutletFindings() {}

    /** As filed. Silent where the room files no valve settings at all: all open is no wish of anyone. */
    static List<Finding> asFiled(List<OutletPlan> outlets) {
        List<Finding> findings = new ArrayList<>();
        boolean anyFiled = outlets.stream().anyMatch(OutletFindings::hasSetting);
        if (anyFiled) {
            outlets.stream().filter(outlet -> outlet.asSet().isPresent()).forEach(outlet -> look(outlet, findings));
        }
        return findings;
    }

    private static boolean hasSetting(OutletPlan outlet) {
        return opening(outlet).isPresent();
    }

    private static boolean isShut(OutletPlan outlet) {
        return opening(outlet).orElse(1) == 0;
    }

    private static OptionalDouble opening(OutletPlan outlet) {
        return outlet.need().seat().outlet().valve().map(Outlet.Valve::opening).orElse(OptionalDouble.empty());
    }

    private static void look(OutletPlan outlet, List<Finding> findings) {
        PartId part = outlet.need().id().part();
        OptionalDouble most = outlet.need().mostM3PerS();
        DropFlow gets = outlet.asSet().orElseThrow();
        if (isShut(outlet)) {
            double target = outlet.need().targetM3PerS().si();
            findings.add(Finding.of(Code.VALVE_SHUT, part, new Amount("allowed", target, Dimension.AIR_FLOW)));
        } else if (gets.state() == DropFlow.State.CLOSED) {
            findings.add(Finding.of(
                    Code.CLOSED_DROP,
                    part,
                    new Amount("found", gets.tapGaugePa(), Dimension.PRESSURE),
                    new Amount("allowed", gets.opensAtGaugePa(), Dimension.PRESSURE)));
        } else if (gets.state() == DropFlow.State.STARVED) {
            findings.add(flow(
                    Code.STARVED,
                    part,
                    gets.freeM3PerS(),
                    outlet.need().targetM3PerS().si()));
        } else if (most.isPresent() && gets.freeM3PerS() > most.getAsDouble()) {
            findings.add(flow(Code.ABOVE_MOST, part, gets.freeM3PerS(), most.getAsDouble()));
        }
    }

    private static Finding flow(Code code, PartId part, double found, double allowed) {
        return Finding.of(
                code,
                part,
                new Amount("found", found, Dimension.AIR_FLOW),
                new Amount("allowed", allowed, Dimension.AIR_FLOW));
    }

    /** Pumps of today that give less than their outlets ask for. */
    static List<Finding> today(List<PumpDuty> pumps) {
        return pumps.stream()
                .filter(pump -> !pump.served().isEmpty() && !pump.enough())
                .map(pump ->
                        flow(Code.SMALL_PUMPS_SHORT, pump.pump().id().part(), pump.givesM3PerS(), pump.askedM3PerS()))
                .toList();
    }
}
