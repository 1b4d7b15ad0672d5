package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lungfish.catalogue.Catalogue;
import lungfish.commissioning.Expected;
import lungfish.commissioning.FirstStart;
import lungfish.commissioning.FirstStep;
import lungfish.commissioning.Reads;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Run;

/** What is done at a step of the first start, what should be read, and what to do where it is not. */
final class FirstStartWords {
    private final Plan plan;
    private final FirstStart start;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final Names names;

    FirstStartWords(Plan plan, FirstStart start, Catalogue catalogue, Quantities quantities) {
        this.plan = plan;
        this.start = start;
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.names = new Names(plan.room());
    }

    String action(FirstStep step) {
        return switch (step.kind()) {
            case CURED -> "Let the joints cure";
            case VALVES_SHUT -> "Shut every outlet's valve, open the bleed wide";
            case CHECK_VALVES -> "Look at the check valves";
            case RELIEF -> "Look at the relief valve of " + where(step);
            case POWER -> "Look at the cord and the socket";
            case GAUGE_ZERO -> "Read the gauge with no air";
            case BLOWN_OUT -> "Blow the swarf out";
            case LEAK_TEST -> "Soap every joint";
            case LEAK_FALL -> "Watch the gauge fall";
            case DEVICES_ON -> "Hang airlines and devices on";
            case STARTED -> "Start " + where(step);
            case BLEED_FIRST -> "Close the bleed to the pressure";
            case VALVE -> "Set " + where(step);
            case JARS_AGAIN -> "Time every jar once more";
            case BLEED_LAST -> "Set the bleed for good";
            case STANDBY -> "Try " + where(step) + " alone";
            case ALARM_SET -> "Set the low-pressure alarm";
            case ALARM_TEST -> "Try the alarm";
            case BASELINE -> "Write the first readings down";
        };
    }

    private String where(FirstStep step) {
        return step.where().map(names::of).orElse("the blower");
    }

    String detail(FirstStep step) {
        return switch (step.kind()) {
            case CURED -> capital(BuildCautions.cure(sizes(), catalogue, quantities)) + ".";
            case VALVES_SHUT ->
                "No airline hangs on the pipe yet. Valves that shut the pipe itself stand open, drains shut."
                        + " One that does not turn: exchange it now.";
            case CHECK_VALVES ->
                "Arrows point the way of the air, away from each blower and towards each tank. Blow through"
                        + " each: air one way only. Exchange one that lets air back.";
            case RELIEF ->
                "It must be fitted before the first air, and open no higher than is written. Set higher: turn it back"
                        + " by its maker's sheet.";
            case POWER ->
                "Drip loop in every cord, socket behind residual-current (ground-fault) protection: press its test"
                        + " button. Dry hands. It does not trip: stop, and call an electrician.";
            case GAUGE_ZERO ->
                "It reads otherwise: set its zero, or note what it is off and take that from all that follows.";
            case BLOWN_OUT ->
                "Bleed wide open, all valves open, nothing hung on: run the blower a minute, knock along the pipe,"
                        + " and let the air out at the far end last. Glasses on. More on the gauge: something is blocked.";
            case LEAK_TEST ->
                "Shut the outlets' valves with the bleed wide open, run " + where(step)
                        + " alone, close the bleed slowly to the pressure, never further. Soapy water on every joint and tap:"
                        + " bubbles mean a leak. Too low with the bleed hardly open: look for a large leak. Too high: open the bleed.";
            case LEAK_FALL -> fall();
            case DEVICES_ON ->
                "Power off. Every device at its depth, every valve at its start from the list of settings, bleed"
                        + " wide open. A standby stays off.";
            case STARTED ->
                "Bleed wide open. Bubbles come where tanks are shallow. More on the gauge: stop, and look for what is"
                        + " shut.";
            case BLEED_FIRST -> bleedFirst(step);
            case VALVE -> "Gauge off: turn the bleed first. Jar slow: open its valve. Quick: close it.";
            case JARS_AGAIN ->
                "Each to the time in the list of settings, in the same order. One that is off: turn its valve, then"
                        + " the bleed.";
            case BLEED_LAST ->
                start.hasBleed()
                        ? "It lets out some " + flow(start.bledM3PerS())
                                + ". Too low: close it a little. Too high: open it. Mark" + " how it stands."
                        : "The drain is shut now. Too low: look for a leak. Too high: a valve stands too far closed.";
            case STANDBY ->
                "Planned blowers off, bleed wide open; start it, close the bleed to the pressure or until it is shut."
                        + " Too low: its check valve, or that of a blower that is off, leaks. Put the bleed back after.";
            case ALARM_SET -> "To " + pressure(start.alarmPa().orElse(0)) + ", by its maker's sheet.";
            case ALARM_TEST ->
                "Stop the blower. It must sound when the gauge passes the pressure, and be heard where you sleep."
                        + " Silent: look at its battery, then set it higher. Start the blower again at once.";
            case BASELINE ->
                "Gauge, watts and a few jars into the log: all later readings are held against these. Watts far off:"
                        + " look whether the blower runs warm or growls.";
        };
    }

    private String fall() {
        return "Blower off, bleed and outlets shut. Pump the pipe up slowly by hand through one tap, "
                + quantities.show(start.leak().fillM3(), Dimension.VOLUME) + " of air, to "
                + pressure(start.leak().testPa()) + " and no further; shut the tap and wait "
                + quantities.show(start.leak().watchS(), Dimension.DURATION)
                + ". It falls further: soap again, the blower's check valve too.";
    }

    private String bleedFirst(FirstStep step) {
        double gaugePa = step.reads().gauge().map(Expected::si).orElse(start.holdPa());
        String goal = gaugePa < start.holdPa() - Expected.GAUGE_PA
                ? "Until it is shut: the valves still take much, and the pressure comes as they are set. Later never above "
                        + pressure(start.holdPa()) + "."
                : "Slowly, until every blower's gauge reads it, and hold it there while the outlets are set: the bleed first, then the jar.";
        return goal + " Too low: close some valves that blow hardest. Too high: open the bleed.";
    }

    private Set<String> sizes() {
        Set<String> sizes = new TreeSet<>();
        plan.room().runs().stream().map(Run::size).forEach(sizes::add);
        return sizes;
    }

    String expected(FirstStep step) {
        Reads reads = step.reads();
        List<String> said = new ArrayList<>();
        reads.jar().ifPresent(jar -> said.add("Jar " + says(jar, Dimension.DURATION)));
        reads.gauge().ifPresent(gauge -> said.add("gauge " + says(gauge, Dimension.PRESSURE)));
        reads.tap()
                .filter(tap -> reads.gauge().filter(gauge -> differ(tap, gauge)).isPresent())
                .ifPresent(tap -> said.add("at its tap " + says(tap, Dimension.PRESSURE)));
        reads.watts().ifPresent(watts -> said.add(says(watts, Dimension.POWER)));
        return capital(String.join("; ", said));
    }

    /** A gauge at the tap tells something only where a gauge can tell the two apart. */
    private static boolean differ(Expected tap, Expected gauge) {
        return Math.abs(tap.si() - gauge.si()) > Expected.GAUGE_PA;
    }

    private String says(Expected expected, Dimension dimension) {
        String shown = quantities.show(expected.si(), dimension);
        return switch (expected.end()) {
            case NEAR -> shown + " ± " + quantities.show(twoFigures(expected.giveOrTake()), dimension);
            case AT_MOST -> "no more than " + shown;
            case AT_LEAST -> "no less than " + shown;
        };
    }

    /** An error is not known to more. */
    private static double twoFigures(double si) {
        if (si == 0) {
            return 0;
        }
        double step = Math.pow(10, Math.floor(Math.log10(Math.abs(si))) - 1);
        return Math.round(si / step) * step;
    }

    private static String capital(String text) {
        return Sentences.capital(text);
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }
}
