package lungfish.reason;

import static lungfish.reason.Severity.BLOCKING;
import static lungfish.reason.Severity.CAUTION;
import static lungfish.reason.Severity.NOTE;
import static lungfish.reason.Severity.WARNING;

/**
 * Every kind of finding, with the sentence that says it and the sentence that says how to mend it. Places in braces are
 * filled at the edge: <code>{where}</code> with the part's name, the others with the finding's amounts and words.
 */
public enum Code {
    // The room and its pipe
    NO_OUTLETS(BLOCKING, "The room has no outlets yet.", "Add a tank with a device to a rack."),
    NO_MAIN(BLOCKING, "The room has outlets but no main.", "Draw a main along the wall and close it to a loop."),
    NO_BLOWER_FITS(
            BLOCKING,
            "No blower class in the catalogue serves this room: {limit}.",
            "Split the room over two blowers, raise the deepest air releases, or use a larger pipe."),
    OUTLET_WITHOUT_TAP(
            BLOCKING,
            "{where} hangs on a tap that is not there: {wanted}.",
            "Put the tap on an existing run, or let it take the nearest point of the main."),
    DISCONNECTED(
            BLOCKING, "{where} is not joined to any blower.", "Let its end touch the main, or place a blower on it."),
    CANNOT_SOLVE(BLOCKING, "The pipe network cannot be solved: {reason}.", "Mend the part that is named."),
    LOOSE_END(
            NOTE,
            "{where} ends {found} short of the next pipe and is taken as capped there.",
            "Move its end onto the pipe if the two should be joined."),
    MAIN_CLOSED_BY_VALVE(
            WARNING, "A closed valve cuts {where} in two.", "Open the valve, or plan with it closed on purpose."),
    FAST_AIR(
            NOTE,
            "Air runs at {found} in {where}; above {allowed} the loss law leaves out a small term.",
            "A larger pipe there is quieter and loses less."),
    PIPE_WALL_THIN(
            WARNING,
            "The wall of {where} is {found} thick; a tapped thread wants {allowed} or more.",
            "Use tees or saddles there, or a pipe with a thicker wall."),
    PIPE_TOO_WARM(
            BLOCKING,
            "The air leaves the blower at {found} at the least; the pipe {where} is good to {allowed}.",
            "Put a length of metal pipe or hose behind the blower so that the air cools first, or run at less pressure."),
    PIPE_WARM(
            WARNING,
            "The air leaves the blower at {found} at the cool end and up to {hot} at the hot end; {where} loses strength"
                    + " above {allowed}.",
            "Begin with a length of metal pipe, and measure there in the first warm week."),

    // Outlets
    TARGET_ABOVE_MOST(
            WARNING,
            "{where} is asked for {found}, but takes at most {allowed}.",
            "Lower the target or use a larger device."),
    DEEPER_THAN_WATER(
            BLOCKING,
            "The air release of {where} is {found} deep in {allowed} of water.",
            "Measure from the water line to the air release."),
    STARVED(
            WARNING,
            "As set, {where} gets {found}; it should have {allowed}.",
            "Open its valve a little, far end first, or close the greedy ones."),
    ABOVE_MOST(
            WARNING,
            "As set, {where} gets {found}; fry, eggs or media there take at most {allowed}.",
            "Close its valve before the fry are in."),
    ABOVE_MOST_MEANWHILE(
            WARNING,
            "Meanwhile {where} gets {found}; fry, eggs or media there take at most {allowed}.",
            "Turn its valve down first, and back once it is over."),
    CLOSED_DROP(
            WARNING,
            "As set, {where} gets no air: its tap has {found} and it opens at {allowed}. A device without air can siphon or"
                    + " stand dry.",
            "Raise its air release or the pressure in the main."),
    VALVE_SHUT(
            WARNING,
            "As set, the valve of {where} is shut: it gets no air and should have {allowed}.",
            "Open it to its coarse start, or take the outlet out of the room if it is not in use."),
    AIRLIFT_OUT_OF_RANGE(
            NOTE,
            "The uplift of {where} lies outside the range in which the water it moves is known.",
            "Set its target by air flow instead of turnover."),
    TURNOVER_NOT_REACHED(
            WARNING,
            "{where} cannot turn its tank over as asked; its tube moves {found} at most, {allowed} is asked.",
            "Use a wider tube, a second device, or ask for less."),
    TURNOVER_WITHOUT_TUBE(
            WARNING,
            "{where} is asked to turn its tank over, but its device has no uplift tube: it gets the usual {found} instead.",
            "Choose a device with an uplift tube, or type the air that it should get."),

    // Duty
    TOO_LITTLE_AIR(
            BLOCKING,
            "{blower}, tired, gives {found} at the pressure the room needs; the room needs {allowed}.",
            "Take a larger blower, or take outlets off."),
    TOO_LITTLE_PRESSURE(
            BLOCKING,
            "{blower}, tired, reaches {found}; the room needs {allowed}.",
            "Take a blower of higher pressure, or raise the deepest air releases."),
    BLED_BELOW_NEED(
            BLOCKING,
            "{blower} is bled to {found}; the room needs {allowed} there.",
            "Close its bleed until the gauge shows more."),
    SHARE_SHORT(
            WARNING,
            "{blower}, tired, gives {found} at the pressure the room needs; the pipe wants {allowed} of it there. The pressure"
                    + " beside it sags until the others make that up.",
            "Put the larger machine there, or tie the two places with a larger pipe."),
    OVER_RATING(
            BLOCKING,
            "{blower} would be held at {found}; its largest continuous pressure is {allowed}.",
            "Bleed it down, or take one with a higher rating."),
    HELD_TOO_HIGH(
            WARNING,
            "With its valves as set, {blower}, {when}, is held at {found}; its largest continuous pressure is {allowed}.",
            "Open its bleed until the gauge shows less, or open the valves that are nearly shut."),
    BELOW_RESERVE(
            WARNING,
            "Tired and with devices due for cleaning, {blower} keeps {found} in reserve; {allowed} is wished for.",
            "Take the next class, or be content with less room to grow."),
    INDEX_BELOW_RESERVE(
            WARNING,
            "{where}, the worst-served outlet, keeps {found} to spare; {allowed} is wished for.",
            "Give it a shallower air release, a shorter airline or an easier device."),
    BELOW_LEAST_FLOW(
            WARNING,
            "{blower} would pass {found}; a side-channel machine must keep {allowed} moving or it overheats.",
            "Open its bleed so far that it never gets less."),
    NEEDS_RELIEF_VALVE(
            CAUTION,
            "{blower} is a rotary vane machine without a relief valve.",
            "Fit one, set no higher than its continuous pressure; follow its maker's sheet."),
    RELIEF_TOO_HIGH(
            WARNING,
            "The relief valve of {blower} opens at {found}, above its continuous pressure of {allowed}.",
            "Set it no higher than that; follow its maker's sheet."),
    RELIEF_OPENS(
            WARNING,
            "The relief valve of {blower} opens at {found}, yet it would run at {allowed}: the air goes there first.",
            "Set it higher, within the continuous pressure, or bleed to a lower pressure."),
    FAR_TOO_BIG(NOTE, "{blower} gives {found}, far more than the {allowed} the room needs.", "{instead}."),
    OUTSIDE_CURVE(
            WARNING,
            "{blower} would run at {found}, outside its curve, which is known up to {allowed}.",
            "Do not trust the figure; get points of its curve there."),
    KEEP_SMALL_PUMPS(
            NOTE,
            "No central blower yet: the small pumps you have give this room its air, and it would not pay here ({found} a year"
                    + " more).",
            "Keep them until the room grows; a spare pump on the shelf is the better buy."),
    SMALL_PUMPS_SHORT(
            WARNING,
            "{where} gives {found} at the depths that it serves; its outlets ask for {allowed}.",
            "Hang fewer outlets on it, or plan the central blower."),
    VOLTAGE_DIFFERS(
            BLOCKING,
            "{blower} is made for {found}; the room has {allowed}.",
            "Take the version made for the room's mains."),
    FREQUENCY_DIFFERS(
            WARNING,
            "{blower} is rated at {found}; the room has {allowed}. A machine driven by the mains beat gives about that much"
                    + " more or less air.",
            "Use the curve for the room's frequency."),

    // Noise
    LOUDER_THAN_WISHED(
            WARNING,
            "At the listener the machines make {found}; {allowed} is wished for.",
            "Add a silencer, move the blower" + " outside the room, or take a quieter class."),
    LEVEL_UNKNOWN(
            NOTE,
            "The level of {where} is not known; the noise figure leaves it out.",
            "Type its level and the distance."),
    HEARING(
            CAUTION,
            "{found} at the listener: at {allowed} and above over a working day hearing can suffer.",
            "Keep away from it, enclose it, or wear protection; follow local rules."),

    // Backup
    NO_BACKUP(
            WARNING,
            "Nothing gives air when the mains or the blower fails.",
            "Plan a battery with an inverter, a standby blower, or battery pumps for the essential outlets."),
    RUNTIME_SHORT(
            WARNING,
            "The battery holds {found}; {allowed} is wished for.",
            "Add capacity ({needed}) or shed to essential outlets."),
    INVERTER_MISSING(
            WARNING,
            "There is a battery but no inverter to run a mains blower from it.",
            "Plan an inverter, or a blower that runs" + " on the battery's voltage."),
    INVERTER_TOO_SMALL(
            WARNING,
            "The inverter gives {allowed}; the blower draws {found} where it runs.",
            "Take a larger inverter."),
    STARTING_SURGE(
            WARNING,
            "Starting, the blower may draw {found}; the inverter stands {allowed}.",
            "Take an inverter with a higher surge rating."),
    WAVEFORM(
            WARNING,
            "The inverter's wave is stepped; a motor or a resonant piston runs hot and loud on it.",
            "Take a sine-wave inverter."),
    INVERTER_UNSAID(
            NOTE,
            "Nobody says what the inverter stands for a moment, or which wave it makes; starting, the blower may draw {found}.",
            "Read both on its plate: a blower that does not start is no backup."),
    ESSENTIALS_NOT_MARKED(
            NOTE, "No outlet is marked essential, so shedding buys no time.", "Mark the outlets that must stay on."),
    ALARM_MISSING(
            NOTE,
            "There is no low-pressure alarm; set one to about {found}.",
            "A pressure switch on the main with a bell on its own battery."),
    ALARM_SET_WRONG(
            WARNING,
            "The low-pressure alarm is set to {found}; about {allowed} tells of a failure without crying wolf.",
            "Set it there."),
    SHARED_CIRCUIT(
            WARNING,
            "Heaters and the blower hang on one protected circuit ({where}): one wet heater takes the air too.",
            "Give the blower a circuit of its own."),
    CHARGER_WITH_HEATERS(
            WARNING,
            "{where} is charged from {circuit}, which feeds heaters: one wet heater trips it, and the battery runs down while"
                    + " nobody sees it.",
            "Charge it from a circuit without heaters."),
    ALARM_WITH_BLOWER(
            WARNING,
            "The low-pressure alarm hangs on {circuit}, as the blower does: what takes the air takes the bell.",
            "Give the alarm a battery of its own, or another circuit."),
    FAILS_FIRST(
            NOTE,
            "{where} is in trouble after {found} without air, as typed, before any tank of fish.",
            "Mark it essential."),

    // Building
    PIECE_TOO_SHORT(
            WARNING,
            "{where}, piece {piece}: {found} of pipe are left between {one} and {other}; the two sockets take {allowed}.",
            "Move one of the two {missing} further apart, or buy one of them with a spigot end."),
    TAP_AT_FITTING(
            WARNING,
            "{where}: the tap of {outlets} comes {missing} too close to the socket of {one}.",
            "Put it on a longer piece of pipe, or use a tee with a threaded boss there."),
    WALL_THIN_FOR_THREAD(
            WARNING,
            "The wall of {where} is {found} thick; {thread} needs {allowed} to hold.",
            "Use tapping saddles, as the parts list does, or tees with a threaded boss{thicker}."),
    NO_THREAD_IN_SCHEDULE_40(
            WARNING,
            "{where} is Schedule 40 pipe; pipe makers' tables allow no thread in it.",
            "Use tapping saddles, as the parts list does, or tees with a threaded boss{thicker}."),
    NO_THREAD_IN_WARM_PIPE(
            WARNING,
            "{where} may get as warm as {found}; pipe makers' tables allow no thread in PVC above {allowed}.",
            "Use tapping saddles, as the parts list does, or begin with a length of metal pipe."),
    OPEN_END(
            NOTE,
            "{where} ends in the open, {found} along it, and no cap is drawn there.",
            "The parts list has a cap for it; join the end to a pipe if it should lead on."),

    // Cautions
    PVC_AND_AIR(
            CAUTION,
            "Rigid PVC under compressed air can shatter. Blower air is low pressure, but the caution has no published lower"
                    + " limit.",
            "Never test with shop air; keep it out of the way of knocks; follow local codes and the pipe maker's word."),
    HOT_DISCHARGE(
            CAUTION,
            "The air leaves the blower at {found} to {hot}: hot to the touch.",
            "Begin with metal pipe or rated hose, and keep hands and cables off it."),
    SIPHON_BY_ITSELF(
            WARNING,
            "When the air stops, water runs by itself from {where} into {into}: its line stands at {line}, and no place on"
                    + " its way through the pipe is higher than {crest}. {water} can run; {free} fit under the rim there."
                    + " Outlets that water can run to so: {reached}.",
            "A check valve of its own at each outlet that lets water out, {valves} of them for some {price}; one at the"
                    + " blower or at the lower tank does not hold it. Or the pipe, or a loop of each airline, above {above}."),
    BELOW_WATER_LINE(
            CAUTION,
            "{where} stands at {found}, below the water of {tank} at {line}, which no check valve holds: when the air stops,"
                    + " water that is lifted {lift} on its way runs into it and onto mains power.",
            "Stand it above the highest water line, or fit a check valve at each outlet that lets water out; and hang a drip"
                    + " loop in its cord."),
    SIPHON(
            CAUTION,
            "Once something lifts it {lift} (air that cools in the pipe, a hose that is pulled), water of {where} runs on"
                    + " through the pipe into {into}. {water} can run; {free} fit under the rim there. Outlets that water"
                    + " can come to so: {reached}.",
            "A check valve of its own at each outlet that lets water out, {valves} of them for some {price}; one at the"
                    + " blower or at the lower tank does not hold it."),
    CHECK_VALVE_UNKNOWN(
            NOTE,
            "Outlets of which it is not said whether they have a check valve, and which could let water out: {found}. They"
                    + " are counted as having none.",
            "Say so in the table of outlets."),
    RESIDUAL_CURRENT(
            CAUTION,
            "Mains power beside water: {where} is not known to have residual-current (ground-fault) protection.",
            "Have it protected by a licensed electrician to your local code."),
    NO_RESIDUAL_CURRENT(
            CAUTION,
            "Mains power beside water: {where} has no residual-current (ground-fault) protection. A fault there can kill.",
            "Keep wet hands and tanks away from what hangs on it until a licensed electrician has protected it to your local"
                    + " code."),
    BATTERY_VENTILATION(
            CAUTION,
            "Charging {where} gives off hydrogen; it wants at least {found} of fresh air.",
            "Ventilate to IEC 62485-2 or your local code; fuse it at its terminal."),
    BATTERY_FUSE(
            CAUTION,
            "A battery can drive hundreds of amperes through a fault ({where}).",
            "Fuse it at its terminal, cover the terminals, and follow its maker's sheet."),
    BATTERY_COLD_CHARGE(
            WARNING,
            "{where} may be charged at {found}; lithium iron phosphate must not be charged below {allowed}.",
            "Keep it" + " warm, or stop charging in the cold."),
    FLOOR_LOAD(
            CAUTION,
            "{where} filled puts {found} on its footprint; floors of dwellings are designed for {allowed} averaged over the"
                    + " room.",
            "Stand it across the joists at a wall and ask a structural engineer."),
    GENERATOR(
            CAUTION,
            "A generator's exhaust kills unseen.",
            "Run it outdoors only, far from doors and windows, with alarms indoors; never back-feed a socket."),
    CONDENSATION(
            NOTE,
            "{where} runs colder than the dew point of its air ({found} against {allowed}): water will gather in it.",
            "Taps on top; let it fall to a drain at its low point, {low} above the floor."),
    CONDENSATION_IN_HOSE(
            NOTE,
            "The hose of {where} lies in {found}, colder than the dew point of its air ({allowed}): when the blower rests,"
                    + " water gathers in it.",
            "Let it rise from the blower without a sag, and put the drain at its lowest place; no water may run back into the"
                    + " machine.");

    private final Severity severity;
    private final String says;
    private final String mend;

    Code(Severity severity, String says, String mend) {
        this.severity = severity;
        this.says = says;
        this.mend = mend;
    }

    public Severity severity() {
        return severity;
    }

    /** What is wrong, with places in braces. */
    public String says() {
        return says;
    }

    /** How to mend it, with places in braces. */
    public String mend() {
        return mend;
    }
}
