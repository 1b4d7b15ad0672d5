package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.everyday.Bleed;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Order;
import lungfish.network.DropFlow;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What to do about an everyday disturbance, in a keeper's words: the valves, or the bleed, and when to turn them back. */
public final class EverydayAdvice {
    /** Less than the last digit that is said. */
    private static final double UNHEARD_SHARE = 0.0005;

    private final Disturbed answer;
    private final Kind kind;
    private final Quantities quantities;
    private final Names names;

    public EverydayAdvice(Disturbed answer, Quantities quantities, Names names) {
        this.answer = answer;
        this.kind = answer.what().kind();
        this.quantities = quantities;
        this.names = names;
    }

    /** One sentence or two for each thing that can be done, the best first; never none. */
    public List<String> says() {
        List<String> said = new ArrayList<>();
        answer.order().map(this::valves).ifPresent(said::add);
        bleed().map(bleed -> says(bleed, joining(!said.isEmpty()))).ifPresent(said::add);
        if (kind == Kind.DUE && answer.becoming(DropFlow.State.STARVED) + answer.becoming(DropFlow.State.CLOSED) > 0) {
            said.add(0, "Clean those first that fall short.");
        }
        if (said.isEmpty()) {
            said.add(isNeeded() ? nothingHelps() : "Leave every valve as it is.");
        }
        return said;
    }

    private boolean isNeeded() {
        boolean isSeen = Disturbed.most(answer.bubbling().toList()) > Disturbed.UNSEEN_SHARE;
        return kind != Kind.DUE
                && (isSeen || answer.blowers().isTooHigh() || !answer.findings().isEmpty());
    }

    /** The bleed, where it is worth turning: once an airline is shut, it is so only if the others then see a difference. */
    private Optional<Bleed> bleed() {
        boolean isDone = answer.order()
                .filter(order -> order.isBleedShut()
                        || (kind == Kind.AIRLINE_OFF && order.restShare() <= Disturbed.UNSEEN_SHARE))
                .isPresent();
        return isNeeded() && !isDone ? answer.bleed() : Optional.empty();
    }

    /** What joins the bleed to what was said before: it comes on top where an airline was shut, instead where not. */
    private String joining(boolean isAfterAnother) {
        boolean isRetuning = kind.isShutting() && answer.isRetuned();
        return isAfterAnother ? kind == Kind.AIRLINE_OFF ? "and " : "or " : isRetuning ? "or " : "";
    }

    private String nothingHelps() {
        return kind.isShutting()
                ? "There is no bleed: turn the others down with the jar, the most changed first."
                : "No valve mends it: there is no bleed to turn, and every valve that matters stands right.";
    }

    private String valves(Order order) {
        return begins(order) + rest(order) + back(order.turns().size() == 1 ? "it" : "them");
    }

    private String begins(Order order) {
        Order.Turn first = order.turns().get(0);
        String named = names.of(first.need().id().part());
        if (kind == Kind.AIRLINE_OFF) {
            return "Shut the valve of " + named + " until its airline is back on";
        }
        String shut = order.isBleedShut()
                ? (answer.blowers().bledBeforeM3PerS() > Bleed.NONE_M3_PER_S ? "shut the bleed, and " : "")
                        + less(order)
                : "";
        String turn = order.turns().size() == 1
                ? "turn the valve of " + named
                : "turn " + order.turns().size() + " valves, the furthest first: " + named;
        return Sentences.capital(shut + turn + " from " + opening(first.from()) + " to " + opening(first.to()));
    }

    private String less(Order order) {
        return order.share() >= 1
                ? ""
                : "give each " + share(order.share()) + " of what it had, for there is not more: ";
    }

    private String rest(Order order) {
        if (kind == Kind.AIRLINE_OFF) {
            return answer.others().isEmpty()
                    ? "."
                    : "; then nobody else moves by more than " + share(order.restShare()) + ".";
        }
        String had = order.share() < 1 ? "that" : kind == Kind.DUE ? "its target" : "what it had";
        return "; then nobody is further from " + had + " than " + share(order.restShare())
                + ", and the jar settles that.";
    }

    private String back(String them) {
        return switch (kind) {
            case HALF_DRAIN -> " Turn " + them + " before the water is out, and back when it is in again.";
            case CLEANED -> " What is clean clogs again, week by week: look again with the jar.";
            case MAINS_LOW -> " Turn " + them + " back when the mains are up again.";
            case FILTER_CLOGGED -> " A new filter is less work.";
            case DUE, HATCHERY_OFF, HATCHERY_ON, AIRLINE_OFF, SHUT -> "";
        };
    }

    private String says(Bleed bleed, String joined) {
        boolean opens = bleed.moreM3PerS() > 0;
        String turns = !bleed.holds()
                ? "shut the bleed: the gauge then shows " + pressure(bleed.gaugePa()) + " instead of "
                        + pressure(answer.blowers().gaugeBeforePa())
                : (opens ? "open" : "close") + " the bleed until the gauge shows " + pressure(bleed.gaugePa())
                        + " again: " + flow(Math.abs(bleed.moreM3PerS())) + (opens ? " more, " : " less, ")
                        + flow(bleed.bledM3PerS()) + " in all";
        return Sentences.capital(joined + turns + rest(bleed));
    }

    private String rest(Bleed bleed) {
        if (answer.others().isEmpty()) {
            return ".";
        }
        String nobody = "; then nobody " + (answer.hit().isEmpty() || kind.isShutting() ? "" : "else ");
        return bleed.restShare() < UNHEARD_SHARE
                ? nobody + "notices."
                : nobody + "moves by more than " + share(bleed.restShare()) + ".";
    }

    /** A valve's opening in a keeper's words. */
    public String opening(double opening) {
        return opening <= 0 ? "shut" : opening >= 1 ? "open" : share(opening) + " open";
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
