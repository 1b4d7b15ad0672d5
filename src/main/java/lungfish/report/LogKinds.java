package lungfish.report;

import java.util.List;
import lungfish.room.Reading;
import lungfish.room.Service;

/** What can be written into the log of a room, in words. */
public enum LogKinds {
    JAR("seconds to fill a jar"),
    GAUGE("gauge on the pipe"),
    WATTS("watts of the blowers"),
    LEVEL("level where it is heard"),
    FALL("fall of the gauge, all off and shut");

    private final String words;

    LogKinds(String words) {
        this.words = words;
    }

    /** What is read: "seconds to fill a jar". */
    public String words() {
        return words;
    }

    /** What each of its numbers is called, in order. */
    public List<String> numbers() {
        return switch (this) {
            case JAR -> List.of("seconds");
            case GAUGE -> List.of("pressure");
            case WATTS -> List.of("watts");
            case LEVEL -> List.of("level");
            case FALL -> List.of("pressure at first", "pressure at the end", "seconds between");
        };
    }

    /** The kind of a reading. */
    public static LogKinds of(Reading.Measured measured) {
        if (measured instanceof Reading.Jar) {
            return JAR;
        }
        if (measured instanceof Reading.Gauge) {
            return GAUGE;
        }
        if (measured instanceof Reading.Watts) {
            return WATTS;
        }
        return measured instanceof Reading.Level ? LEVEL : FALL;
    }

    /** What was done: "devices cleaned". */
    public static String done(Service.Kind kind) {
        return switch (kind) {
            case BLOWER_NEW -> "blower new";
            case BLOWER_REBUILT -> "blower rebuilt";
            case FILTER_CHANGED -> "inlet filter changed";
            case DEVICE_CLEANED -> "devices cleaned";
            case DEVICE_EXCHANGED -> "devices exchanged";
            case CHECK_VALVE_EXCHANGED -> "check valves exchanged";
            case VALVES_SET -> "valves set by jar";
            case LEAK_MENDED -> "leak mended";
            case DRAINED -> "pipe drained";
            case ALARM_TRIED -> "alarm or standby tried";
        };
    }
}
