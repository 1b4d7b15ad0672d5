package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.everyday.Bleed;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Held;
import lungfish.everyday.Lack;
import lungfish.everyday.Moved;
import lungfish.network.DropFlow;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What an everyday disturbance does, in a keeper's words; {@link EverydayAdvice} says what to do about it. */
public final class EverydayWords {
    private final Disturbed answer;
    private final Quantities quantities;
    private final Names names;

    public EverydayWords(Disturbed answer, Quantities quantities, Names names) {
        this.answer = answer;
        this.quantities = quantities;
        this.names = names;
    }

    /** What a disturbance is called. */
    public static String name(Kind kind) {
        return switch (kind) {
            case HALF_DRAIN -> "Half drain";
            case CLEANED -> "Devices just cleaned";
            case DUE -> "Devices due for cleaning";
            case HATCHERY_OFF -> "Hatchery off";
            case HATCHERY_ON -> "Hatchery on";
            case AIRLINE_OFF -> "An airline off";
            case SHUT -> "Valves shut";
            case MAINS_LOW -> "Mains 10 % low";
            case FILTER_CLOGGED -> "Filter clogged";
        };
    }

    /** Why there is no answer, and how to get one. */
    public static String says(Lack lack) {
        return switch (lack) {
            case UNSOLVED -> "The room cannot be solved: see what must be mended first.";
            case NOBODY ->
                "Nothing that is chosen has an outlet in place. Choose outlets, tanks, shelves or racks; or nothing at all:"
                        + " then the whole room is meant.";
            case NO_HATCHERY -> "No outlet in place runs only sometimes. An outlet's use says so.";
            case NO_FILTER -> "No blower of the plan has an inlet filter. Its fittings say so.";
        };
    }

    /** A few words, fit for a headline. */
    public String headline() {
        int tooMuch = answer.findings().size();
        int less = answer.becoming(DropFlow.State.STARVED) + answer.becoming(DropFlow.State.CLOSED);
        if (answer.blowers().isTooHigh()) {
            return "Open the bleed first";
        }
        if (tooMuch > 0) {
            return "Too much air for " + Sentences.counted(tooMuch, "outlet");
        }
        if (less > 0) {
            return Sentences.counted(less, "outlet") + (less == 1 ? " falls short" : " fall short");
        }
        return turning();
    }

    private String turning() {
        if (answer.what().kind().isShutting()) {
            return answer.isRetuned() ? "Retune" : "No need to retune";
        }
        if (answer.what().kind() == Kind.AIRLINE_OFF) {
            return "Shut its valve until it is back on";
        }
        boolean isSeen = Disturbed.most(answer.bubbling().toList()) > Disturbed.UNSEEN_SHARE;
        int turns = answer.order().map(order -> order.turns().size()).orElse(0);
        return turns > 0
                ? Sentences.counted(turns, "valve") + " to turn"
                : !isSeen
                        ? "Nothing to do"
                        : answer.bleed().isPresent() ? "Only the bleed to turn" : "No valve to turn";
    }

    /** What happens, and what the outlets do. */
    public String because() {
        List<String> said = new ArrayList<>();
        hit().ifPresent(said::add);
        others().ifPresent(said::add);
        said.addAll(becoming());
        return happens() + ", every valve as it is: " + String.join("; ", said) + ".";
    }

    /** What those do that it happens to; that what is shut gets nothing needs no word. */
    private Optional<String> hit() {
        if (answer.hit().isEmpty() || answer.what().kind().isShutting()) {
            return Optional.empty();
        }
        Moved first = answer.hit().get(0);
        String flow = flow(first.after().freeM3PerS());
        if (answer.what().kind() == Kind.AIRLINE_OFF) {
            return Optional.of("its device gets none, and " + flow + " blow into the room");
        }
        return Optional.of(
                answer.hit().size() == 1
                        ? "it goes from " + flow(first.before().freeM3PerS()) + " to " + flow
                        : "of them the most changed is " + most(answer.hit()));
    }

    private Optional<String> others() {
        if (answer.others().isEmpty()) {
            return answer.what().kind().isShutting() ? Optional.of("nobody else is left") : Optional.empty();
        }
        int count = answer.others().size();
        String thing = answer.what().kind().isOfBlower() ? "outlet" : "other";
        String all = count + " " + thing + (count == 1 ? "" : "s");
        return Optional.of(
                answer.isRetuned()
                        ? "of the " + all + " the most changed is " + most(answer.others())
                        : "none of the " + all + " moves by more than " + share(Disturbed.UNSEEN_SHARE) + " ("
                                + most(answer.others()) + ")");
    }

    private String happens() {
        String devices = (answer.others().isEmpty() ? "All " : "")
                + Sentences.counted(answer.hit().size(), "device");
        String rest = answer.others().isEmpty() ? "" : ", the others ";
        return switch (answer.what().kind()) {
            case HALF_DRAIN ->
                "Half of the water out of " + tanks() + " with "
                        + Sentences.counted(answer.hit().size(), "outlet");
            case CLEANED -> devices + " just cleaned" + rest + (rest.isEmpty() ? "" : "due");
            case DUE ->
                devices + " due for cleaning" + (rest.isEmpty() ? ", from just cleaned" : rest + "just cleaned");
            case HATCHERY_ON -> those() + " on";
            case HATCHERY_OFF, SHUT -> those() + " shut";
            case AIRLINE_OFF -> "The airline of " + name(answer.hit().get(0)) + " off its device";
            case MAINS_LOW -> "A tenth less voltage";
            case FILTER_CLOGGED -> "Four times the loss in the inlet filter";
        };
    }

    /** "8 outlets", "5 outlets that run only sometimes", or the one by its name. */
    private String those() {
        return answer.hit().size() == 1
                ? Sentences.capital(name(answer.hit().get(0)))
                : Sentences.counted(answer.hit().size(), "outlet") + sometimes();
    }

    private String tanks() {
        long tanks = answer.hit().stream()
                .map(moved -> moved.need().seat().tank().id())
                .distinct()
                .count();
        return Sentences.counted(tanks, "tank");
    }

    private String sometimes() {
        boolean all = answer.hit().stream()
                .allMatch(moved -> moved.need().seat().outlet().isSometimes());
        return all ? " that run only sometimes" : "";
    }

    private String most(List<Moved> those) {
        Moved first = those.get(0);
        return name(first) + ", " + flow(first.before().freeM3PerS()) + " → "
                + flow(first.after().freeM3PerS());
    }

    private String name(Moved moved) {
        return names.of(moved.need().id().part());
    }

    private List<String> becoming() {
        List<String> said = new ArrayList<>();
        count(said, answer.becoming(DropFlow.State.GREEDY), " now takes more than asked", " now take more than asked");
        count(said, answer.becoming(DropFlow.State.STARVED), " now falls short", " now fall short");
        count(said, answer.becoming(DropFlow.State.CLOSED), " now gets no air", " now get no air");
        count(said, answer.bared(), " then blows above the water", " then blow above the water");
        return said;
    }

    private static void count(List<String> said, int count, String one, String many) {
        if (count > 0) {
            said.add(count + (count == 1 ? one : many));
        }
    }

    /** What the blower does, and whether it bears it. */
    public String pressure() {
        String goes = "The blower goes from " + pressure(answer.blowers().gaugeBeforePa()) + " to "
                + pressure(answer.blowers().gaugeAfterPa()) + ", tired";
        Held tired = answer.blowers().tired();
        Held fresh = answer.blowers().fresh();
        Held held = fresh.isTooHigh() || !tired.isTooHigh() ? fresh : tired;
        String bears = held.isTooHigh()
                ? "; " + (held.equals(fresh) ? "new" : "tired") + ", " + held.machine() + " would be held at "
                        + pressure(held.afterPa()) + ", above the " + pressure(held.continuousPa())
                        + " that it bears all day"
                : "; new it goes to " + pressure(held.afterPa()) + " inside, and bears " + pressure(held.continuousPa())
                        + " all day";
        return goes + bears + "." + bled();
    }

    private String bled() {
        double before = answer.blowers().bledBeforeM3PerS();
        double after = answer.blowers().bledAfterM3PerS();
        return Math.max(before, after) < Bleed.NONE_M3_PER_S
                ? " Nothing is bled."
                : " The bleed lets out " + flow(after) + " instead of " + flow(before) + ".";
    }

    /** "+12 %", "−3 %". */
    public String change(Moved moved) {
        double share = moved.share();
        String sign = share > 0 ? "+" : share < 0 ? "−" : "";
        return sign + share(Math.abs(share));
    }

    private String share(double share) {
        return quantities.show(Math.round(share * 1000) / 1000.0, Dimension.SHARE);
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }
}
