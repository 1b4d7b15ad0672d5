package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lungfish.backup.BackupAnswer;
import lungfish.outage.Power;
import lungfish.plan.Plan;
import lungfish.report.DrillCard.Part;
import lungfish.report.DrillCard.Step;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.Room;

/**
 * What to do when the air stops, in order, from what the room has. The advice itself (pour by hand, change a third of the
 * water, do not feed) is common practice, no source.
 */
final class DrillSteps {
    private static final double WORTH_CUTTING = 1.25;

    private final Plan plan;
    private final Room room;
    private final Backup backup;
    private final Optional<DrillPlayed> played;
    private final DrillWords words;

    DrillSteps(Plan plan, Optional<DrillPlayed> played, DrillWords words) {
        this.plan = plan;
        this.room = plan.room();
        this.backup = room.backup();
        this.played = played;
        this.words = words;
    }

    List<Part> parts() {
        boolean isCentral = played.map(both -> both.mains().plannedBlower()).orElse(true);
        String machine = isCentral ? "blower" : "pump";
        String one = machines(isCentral) > 1 ? "a " : "the ";
        return List.of(
                new Part("", List.of(new Step("Look: is there power?", "None: A. Power, but no bubbles: B."))),
                new Part("A  No power: the mains have failed", mains()),
                new Part("B  Power, but no bubbles: " + one + machine + " has stopped", stopped(machine)),
                new Part("Then", then()));
    }

    private long machines(boolean isCentral) {
        return isCentral
                ? plan.duty().stream()
                        .mapToLong(duty -> duty.candidate().fleet().placed().size())
                        .sum()
                : plan.pumps().size();
    }

    private List<Step> mains() {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "Look at the breakers",
                "Light next door? Reset " + circuits() + " once. If it trips again, leave it off."));
        boolean onBattery = played.filter(both -> both.runsOn(Power.BATTERY)).isPresent();
        if (onBattery) {
            steps.add(battery());
        }
        backup.generator().map(this::generator).ifPresent(steps::add);
        backup.batteryPumps()
                .ifPresent(pumps -> steps.add(new Step(
                        "Check the battery pumps",
                        "They start by themselves on the essential outlets: " + words.pumps(pumps))));
        if (!onBattery && backup.generator().isEmpty() && backup.batteryPumps().isEmpty()) {
            steps.add(byHand());
        }
        return steps;
    }

    private String circuits() {
        List<String> named = room.circuits().stream()
                .filter(circuit -> room.blowers().stream()
                        .filter(blower -> blower.role() != Blower.Role.TODAY)
                        .anyMatch(blower -> blower.circuit().equals(Optional.of(circuit.id()))))
                .map(Circuit::name)
                .toList();
        return named.isEmpty()
                ? "the one of the air"
                : named.stream().map(name -> "“" + name + "”").collect(Collectors.joining(" or "));
    }

    /** Cutting the room down is said only where it wins a good deal of time: the others then go without. */
    private Step battery() {
        OptionalDouble all = plan.backup().map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty());
        OptionalDouble essential =
                plan.backup().map(BackupAnswer::essentialRuntimeS).orElse(OptionalDouble.empty());
        if (essential.orElse(0) < WORTH_CUTTING * all.orElse(0)) {
            return new Step("Listen: does it run on?", "The battery carries all for " + words.time(all) + ".");
        }
        String cut = "Battery " + words.time(essential) + ", not " + words.time(all) + "; the others go without. ";
        return backup.shedding()
                .map(shed -> new Step("Shut all but essential", cut + shed.valve() + ": " + shed.who() + "."))
                .orElseGet(() -> new Step("Keep essential air only", cut + "Pinch off the other airlines."));
    }

    private Step generator(Backup.Generator generator) {
        boolean carries = played.filter(both -> both.runsOn(Power.GENERATOR)).isPresent();
        String use = carries ? words.generator(generator) : "Too small to start the air: for small pumps alone.";
        return new Step("Start the generator", "Outdoors, 20 ft (6 m) or more from the house. " + use);
    }

    private List<Step> stopped(String machine) {
        List<Step> steps = new ArrayList<>();
        List<Blower> standby = room.blowers(Blower.Role.STANDBY);
        if (!standby.isEmpty()) {
            steps.add(standby(standby.get(0).name()));
        }
        backup.batteryPumps()
                .ifPresent(pumps -> steps.add(
                        new Step("Switch battery pumps on", "On the essential outlets: " + words.pumps(pumps))));
        boolean hasOld =
                machine.equals("blower") && !room.blowers(Blower.Role.TODAY).isEmpty();
        if (hasOld) {
            steps.add(new Step("Plug the old pumps in", "Those that you have kept, on the tanks below first."));
        } else if (steps.isEmpty()) {
            steps.add(byHand());
        }
        steps.add(new Step(
                "Unplug the dead " + machine, "Hot or humming: leave it off. Mend it dry, away from the water."));
        return steps;
    }

    private Step standby(String name) {
        return words.isAutomatic(backup)
                ? new Step("Check the standby", name + " starts by itself: bubbles must be back.")
                : new Step("Start the standby", name + ": open its valve, shut that of the dead blower.");
    }

    private static Step byHand() {
        return new Step(
                "Aerate by hand",
                "Dip a jug and pour it back from a hand's height, again and again: tanks below first.");
    }

    private static List<Step> then() {
        return List.of(
                new Step(
                        "Watch the fish", "Lids off. Gasping at the surface: change a third of that tank's water now."),
                new Step(
                        "Bubbles in every tank?",
                        "When the air is back: valves as they were. Rinse filters that stood still."));
    }
}
