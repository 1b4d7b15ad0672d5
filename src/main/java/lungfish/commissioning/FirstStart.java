package lungfish.commissioning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.plan.Plan;

/**
 * The first start of a room, step by step, and what gauge and jar should read at each: with the blowers new and the devices
 * clean, as they are then.
 *
 * <p>No step holds a blower above what it bears all day: wherever one runs, a bleed stands open and is throttled until the gauge
 * reads what is planned, which every machine bears. Valves are set from the far end of the air's way, each by jar and seconds,
 * while the bleed holds that pressure. A valve that is set stays right then: its tap's pressure is the held one less what the
 * pipe between takes, and that changes only with what the other outlets still change; it is a small part of what the valve
 * burns, and it is settled last where it is least, near the blower. Without a bleed each valve that is closed would raise the
 * pressure of all that were set before. A room that will run without one is set in the same way, with its drain for a bleed,
 * which comes out shut.
 *
 * @param steps in order
 * @param holdPa gauge at which the room will run
 * @param limitPa the highest gauge at which every machine bears it all day
 * @param wattsW of all machines there
 * @param bledM3PerS what the bleed lets out when all is set; 0: it is shut, or there is none
 * @param hasBleed whether the room will run with a bleed
 * @param alarmPa where the alarm is set; absent: nothing to set it to
 */
public record FirstStart(
        List<FirstStep> steps,
        LeakTest leak,
        double holdPa,
        double limitPa,
        double wattsW,
        double bledM3PerS,
        boolean hasBleed,
        OptionalDouble alarmPa) {
    public FirstStart {
        steps = List.copyOf(steps);
    }

    /**
     * The first start of a planned room.
     *
     * @param catalogue that the plan was made with
     * @return empty where there is a {@link Lack}
     */
    public static Optional<FirstStart> of(Plan plan, Catalogue catalogue) {
        return Lack.of(plan).isPresent() ? Optional.empty() : new Starting(plan, catalogue).start();
    }
}
