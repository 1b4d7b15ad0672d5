package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.backup.BackupAnswer;
import lungfish.blower.Wear;
import lungfish.desk.Age;
import lungfish.headroom.Headroom;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.report.SafeWords;
import lungfish.sizing.Running;

/** The sentences of the side panels: words for the figures of one plan, in the reader's units. */
final class Glances {
    private static final String BETWEEN = " · ";

    private final Plan plan;
    private final Age age;
    private final Quantities quantities;

    Glances(Plan plan, Age age, Quantities quantities) {
        this.plan = plan;
        this.age = age;
        this.quantities = quantities;
    }

    Glance of(Subject subject) {
        return switch (subject) {
            case DUTY -> duty();
            case HEADROOM -> headroom();
            case NOISE -> noise();
            case BACKUP -> backup();
        };
    }

    private Glance duty() {
        Optional<Duty> duty = plan.duty();
        if (duty.isEmpty()) {
            String mend = plan.outlets().isEmpty()
                    ? "no outlet asks for air yet"
                    : "nothing can be solved: see what must be mended";
            return new Glance("Duty", "Not known yet", mend);
        }
        return new Glance(title(), needs(duty.get()), runs(duty.get()));
    }

    private String title() {
        return age.equals(Age.OF_HEADLINES) ? "Duty" : "Duty, " + machine() + ", devices " + devices();
    }

    private String machine() {
        return age.machine() == Wear.NEW ? "blower new" : "blower tired";
    }

    private String devices() {
        return switch (age.devices()) {
            case CLEAN -> "clean";
            case DUE -> "due";
        };
    }

    private String needs(Duty duty) {
        return flow(age.needed(duty).freeM3PerS()) + " at "
                + pressure(age.needed(duty).pressurePa());
    }

    private String runs(Duty duty) {
        if (plan.keepPumps()) {
            return "no blower yet: the small pumps give it, and one would not pay here";
        }
        Running running = age.running(duty);
        List<String> said = new ArrayList<>();
        String bled = running.bledM3PerS() > 0 ? " with " + flow(running.bledM3PerS()) + " bled" : ", nothing bled";
        said.add("runs at " + pressure(running.gaugePa()) + bled);
        said.add(show(running.watts(), Dimension.POWER));
        double rating = duty.candidate().fleet().continuousPa();
        said.add((running.gaugePa() <= rating ? "inside its " : "beyond its ") + pressure(rating));
        return String.join(BETWEEN, said);
    }

    private Glance headroom() {
        Optional<Headroom> headroom = plan.headroom();
        return headroom.map(room -> new Glance("Headroom", more(room.outlets()), because(room)))
                .orElseGet(() -> new Glance("Headroom", "Not known yet", "it follows from the duty"));
    }

    private static String more(int outlets) {
        return switch (outlets) {
            case 0 -> "No room for another";
            case 1 -> "1 more outlet";
            default -> outlets + " more outlets";
        };
    }

    private String because(Headroom headroom) {
        List<String> said = wereItBought();
        said.add("tired blower, devices due");
        int planned = plan.demand().planned().size();
        if (planned > 0) {
            said.add("the " + planned + " planned " + (planned <= headroom.outlets() ? "fit" : "do not all fit"));
        }
        headroom.limit().ifPresent(broken -> said.add("then " + broken.limit().words() + " ends it"));
        return String.join(BETWEEN, said);
    }

    private Glance noise() {
        OptionalDouble planned = plan.planned().dba();
        String title = plan.planned().at().isEmpty()
                ? "Noise"
                : "Noise at " + plan.planned().at();
        if (planned.isEmpty()) {
            return new Glance(title, "Not known", "no level is known of what is planned");
        }
        List<String> said = wereItBought();
        plan.today().dba().ifPresent(dba -> said.add("instead of " + level(dba)));
        said.add("machines, without the bubbles");
        return new Glance(title, level(planned.getAsDouble()), String.join(BETWEEN, said));
    }

    /** Where the small pumps should stay, what is told of a blower begins with that. */
    private List<String> wereItBought() {
        return new ArrayList<>(
                plan.keepPumps() && plan.duty().isPresent() ? List.of("were a blower bought") : List.of());
    }

    private Glance backup() {
        OptionalDouble runtime = plan.backup().map(BackupAnswer::runtimeS).orElse(OptionalDouble.empty());
        String headline = runtime.isPresent() ? time(runtime.getAsDouble()) + " on battery" : "No battery";
        return new Glance("Backup", headline, lasting());
    }

    private String lasting() {
        List<String> said = wereItBought();
        SafeWords words = new SafeWords(plan, quantities);
        words.verdict().ifPresent(said::add);
        said.add(words.first());
        plan.backup().ifPresent(backup -> needed(backup, said));
        return String.join(BETWEEN, said);
    }

    private void needed(BackupAnswer backup, List<String> said) {
        if (backup.essentialRuntimeS().isPresent()) {
            said.add(time(backup.essentialRuntimeS().getAsDouble()) + " with the essential outlets only");
        }
        double wished = backup.wishedS().si();
        if (backup.runtimeS().orElse(0) < wished) {
            said.add(time(wished) + " on battery would take "
                    + show(backup.needed().chargeC(), Dimension.CHARGE) + " at "
                    + show(backup.needed().voltageV(), Dimension.VOLTAGE));
        }
    }

    private String flow(double m3PerS) {
        return show(m3PerS, Dimension.AIR_FLOW);
    }

    private String pressure(double pa) {
        return show(pa, Dimension.PRESSURE);
    }

    private String level(double dba) {
        return show(dba, Dimension.SOUND_LEVEL);
    }

    private String time(double s) {
        return show(s, Dimension.DURATION);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
