package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lungfish.backup.BackupAnswer;
import lungfish.backup.Habits;
import lungfish.catalogue.Catalogue;
import lungfish.outage.Drill;
import lungfish.outage.Failing;
import lungfish.outage.Power;
import lungfish.oxygen.Case;
import lungfish.plan.Plan;
import lungfish.report.DrillCard.Have;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.siphon.Way;

/** What is at hand when the air stops, what it is good for, and where it can hurt someone. */
final class DrillHands {
    private final Plan plan;
    private final Backup backup;
    private final Catalogue catalogue;
    private final Optional<DrillPlayed> played;
    private final DrillWords words;

    DrillHands(Plan plan, Catalogue catalogue, Optional<DrillPlayed> played, DrillWords words) {
        this.plan = plan;
        this.backup = plan.room().backup();
        this.catalogue = catalogue;
        this.played = played;
        this.words = words;
    }

    List<Have> atHand() {
        List<Have> have = new ArrayList<>();
        if (!backup.batteries().isEmpty()) {
            have.add(new Have("Battery", battery()));
        }
        backup.generator()
                .ifPresent(generator -> have.add(new Have(
                        "Generator",
                        rated(generator).orElse("") + words.generator(generator).replace("Fuel", "fuel"))));
        backup.batteryPumps().ifPresent(pumps -> have.add(new Have("Battery pumps", words.pumps(pumps))));
        plan.room()
                .blowers(Blower.Role.STANDBY)
                .forEach(blower -> have.add(new Have(
                        "Standby blower", words.isAutomatic(backup) ? "starts by itself." : "started by hand.")));
        if (have.isEmpty()) {
            have.add(new Have("Nothing", "no battery, no generator, no standby."));
        }
        backup.alarm().ifPresent(alarm -> have.add(new Have("Alarm", alarm(alarm))));
        return have;
    }

    private String battery() {
        if (played.filter(both -> both.runsOn(Power.BATTERY)).isEmpty()) {
            return "cannot carry the air.";
        }
        OptionalDouble all = plan.backup().map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty());
        OptionalDouble essential =
                plan.backup().map(BackupAnswer::essentialRuntimeS).orElse(OptionalDouble.empty());
        String more = essential.isPresent() ? ", essential alone " + words.time(essential) : "";
        return "all " + words.time(all) + more + ".";
    }

    private Optional<String> rated(Backup.Generator generator) {
        return generator.ratedW().isPresent()
                ? Optional.of(words.watts(generator.ratedW().getAsDouble()) + ", ")
                : Optional.empty();
    }

    private String alarm(Backup.Alarm alarm) {
        return alarm.setPa().isPresent()
                ? "rings below " + words.pressure(alarm.setPa().getAsDouble()) + " in the main."
                : "rings when the pressure falls.";
    }

    /** What becomes of the room in a day, with all of this, nobody doing anything until it is noticed. */
    String outlook() {
        OptionalDouble noticed = OptionalDouble.of(new Habits(plan.room(), catalogue).noticeS());
        String assumed = backup.noticeS().isPresent() ? "" : " (assumed)";
        String when = "With what is at hand, noticed after " + words.time(noticed) + assumed
                + ", first danger within a day: ";
        return played.filter(both -> !both.mains().judged().isEmpty())
                .map(both -> both.all().stream().map(this::outcome).collect(Collectors.joining("; ", when, ".")))
                .orElse("");
    }

    private String outcome(Drill drill) {
        String machine = drill.plannedBlower() ? "a blower stopped" : "a pump stopped";
        String what = drill.scene().what() instanceof Failing.Mains ? "mains out" : machine;
        return what + ", "
                + drill.first()
                        .map(tank -> "after " + words.time(tank.dangerS(Case.CAUTIOUS)))
                        .orElse("none");
    }

    List<String> never() {
        List<String> never = new ArrayList<>();
        never.add("Feed before the air has been back for some hours.");
        never.add("Lift a plug, a cable or a running machine over water.");
        never.add("Reset a breaker that has tripped again.");
        if (backup.generator().isPresent()) {
            never.add("Feed a socket from the generator.");
        }
        return never;
    }

    static List<String> blanks() {
        return List.of("Telephone", "Electrician", "Electricity supply", "Notes");
    }

    List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        cautions.add("Mains beside water: switch off at the breaker before you touch a wet plug or machine.");
        cautions.add(
                "A generator stands outdoors only, at least 20 ft (6 m) from the house, its exhaust away from doors and"
                        + " windows (US CPSC): it kills unseen.");
        cautions.add("Batteries stand ventilated, fused and out of splashing.");
        long open = plan.siphons().ways().stream()
                .filter(way -> way.start() == Way.Start.BY_ITSELF)
                .count();
        if (open > 0) {
            cautions.add(
                    "Water can run back through the pipe by itself when the air stops: look at the floor, and into the"
                            + " blower before it starts again.");
        }
        cautions.add("Local codes and licensed electricians decide.");
        return cautions;
    }
}
