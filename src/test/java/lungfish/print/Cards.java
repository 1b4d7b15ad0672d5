package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import lungfish.report.DrillCard;
import lungfish.report.DrillCard.Clock;
import lungfish.report.DrillCard.Have;
import lungfish.report.DrillCard.Moment;
import lungfish.report.DrillCard.Part;
import lungfish.report.DrillCard.Step;
import lungfish.report.DrillCard.TankRow;

/** Drill cards made by hand: a usual one, and one of a hall with long names. */
final class Cards {
    static final String LONG_NAME =
            "Old dairy, north wing: rainbowfish and killifish of the breeding group, second room on the left";

    private Cards() {}

    static DrillCard usual() {
        return named("Basement rainbows");
    }

    /** Nothing is known of the fish, and nothing is at hand. */
    static DrillCard bare() {
        return new DrillCard(
                "Room",
                new Clock("unknown", "Say what fish are in the tanks, and the card says how long there is."),
                List.of(new Part("", List.of(new Step("Look: are the lights on?", "")))),
                List.of(),
                0,
                0,
                0,
                "",
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    static DrillCard named(String room) {
        List<TankRow> tanks = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String name = i == 0 ? "Boesemani rainbows" : "Rainbows " + i;
            tanks.add(tank(name, "Rack A, shelf " + (1 + i / 4), i % 3 == 0, 6600 + 1500.0 * i));
        }
        return new DrillCard(
                room,
                new Clock(
                        "1 h 50 min",
                        "without any air until the first fish are in danger: Boesemani rainbows, rack A, shelf 1. That is the"
                                + " cautious figure; 6 h are likely."),
                List.of(
                        new Part(
                                "",
                                List.of(new Step(
                                        "Look: are the lights on?", "Lights out: A. Lights on, no bubbles: B."))),
                        new Part(
                                "A  Lights out: the mains have failed",
                                List.of(
                                        new Step(
                                                "Shut the hall valve",
                                                "Valve V2 beside rack B; Ana or Tom. The battery then carries the essential outlets for 7 h 20 min."),
                                        new Step(
                                                "Start the generator",
                                                "Outdoors, at least 6 m from the house. Carries the room for 8 h."),
                                        new Step("Switch heaters off", "They take what the battery needs."))),
                        new Part(
                                "B  Lights on: the blower has stopped",
                                List.of(
                                        new Step(
                                                "Switch the standby on",
                                                "Standby blower, on the shelf beside rack A. Then open its valve."),
                                        new Step("Pull the plug of the old one", ""))),
                        new Part(
                                "Then",
                                List.of(
                                        new Step(
                                                "Watch the fish",
                                                "Gasping at the surface: change a third of the water now."),
                                        new Step("Feed nothing", "Until a day after the air is back.")))),
                tanks,
                18,
                0,
                2,
                "With what is at hand, first danger within a day: mains out, after 9 h.",
                List.of(
                        new Have("battery", "2 h 10 min for all, 7 h 20 min for the essential outlets"),
                        new Have("generator", "800 W, fuel for 8 h"),
                        new Have("standby blower", "by hand, 10 min")),
                List.of(
                        "run a generator in the house or the garage",
                        "lift plugs or cables over water",
                        "feed the fish before the air is back"),
                List.of("Telephone", "Electricity", "Notes", ""),
                List.of(
                        "Mains beside water: switch off at the breaker before you reach into a tank or a wet plug.",
                        "Generators outdoors only, at least 6 m (20 ft) from the house (US CPSC); their exhaust kills.",
                        "Batteries ventilated and fused. Local codes and licensed electricians decide."));
    }

    static DrillCard crowded() {
        List<TankRow> tanks = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            tanks.add(tank(LONG_NAME + " " + i, "The long rack beside the boiler, shelf " + i, true, 3600.0 * (i + 1)));
        }
        String detail = "The red ball valve behind " + LONG_NAME
                + ", a quarter turn, by whoever is nearest, and then the other one";
        List<Step> six = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            six.add(new Step("Shut the branch of rack " + i, detail));
        }
        List<Have> have = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            have.add(new Have(
                    "battery pumps of the second kind", "12 of them for the tanks beside the door, 14 h each"));
        }
        return new DrillCard(
                LONG_NAME,
                new Clock("1 h 5 min", detail + " " + detail + " " + detail),
                List.of(new Part("A  " + detail, six), new Part("B  " + detail, six)),
                tanks,
                308,
                0,
                12,
                "With what is at hand, first danger within a day: mains out, after 9 h.",
                have,
                List.of(detail, detail, detail, detail, detail),
                List.of("Telephone", "Electricity", "Neighbour", "Notes"),
                List.of(detail, detail, detail));
    }

    private static TankRow tank(String name, String where, boolean isEssential, double dangerS) {
        return new TankRow(name, where, isEssential, moment(0.6 * dangerS), moment(dangerS), moment(3.3 * dangerS));
    }

    private static Moment moment(double s) {
        int minutes = (int) (s / 60);
        return new Moment(
                s, minutes / 60 + " h " + minutes % 60 + " min", minutes / 60 + String.format(":%02d", minutes % 60));
    }
}
