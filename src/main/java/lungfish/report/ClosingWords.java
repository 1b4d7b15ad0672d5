package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.closing.Closing;
import lungfish.closing.Held;
import lungfish.closing.Moved;
import lungfish.network.DropFlow;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What closing some outlets does, in a keeper's words. */
public final class ClosingWords {
    /** What rounding leaves of no bleed, m³/s. */
    private static final double NO_BLEED_M3_PER_S = 1e-9;

    private final Closing closing;
    private final Quantities quantities;
    private final Names names;

    public ClosingWords(Closing closing, Quantities quantities, Names names) {
        this.closing = closing;
        this.quantities = quantities;
        this.names = names;
    }

    /** A few words, fit for a headline. */
    public String headline() {
        if (closing.tired().isTooHigh() || closing.fresh().isTooHigh()) {
            return "Open the bleed first";
        }
        return closing.isRetuned() ? "Retune" : "No need to retune";
    }

    /** What the others do. */
    public String because() {
        String shut = Sentences.counted(closing.shut().size(), "outlet") + sometimes()
                + " shut, every other valve as it is: ";
        if (closing.others().isEmpty()) {
            return shut + "nobody else is left.";
        }
        if (!closing.isRetuned()) {
            return shut + "none of the " + closing.others().size() + " others moves by more than "
                    + share(Closing.UNSEEN_SHARE) + " (" + most() + ").";
        }
        return shut + "of the " + closing.others().size() + " others the most changed is " + most() + becoming() + ".";
    }

    /** Of those that are meant where nobody says which. */
    private String sometimes() {
        boolean all =
                closing.shut().stream().allMatch(need -> need.seat().outlet().isSometimes());
        return all ? (closing.shut().size() == 1 ? " that runs" : " that run") + " only sometimes" : "";
    }

    private String most() {
        Moved first = closing.others().get(0);
        return names.of(first.need().id().part()) + ", " + flow(first.before().freeM3PerS()) + " → "
                + flow(first.after().freeM3PerS());
    }

    private String becoming() {
        List<String> said = new ArrayList<>();
        int greedy = closing.becoming(DropFlow.State.GREEDY);
        int starved = closing.becoming(DropFlow.State.STARVED);
        if (greedy > 0) {
            said.add(greedy + " now take" + (greedy == 1 ? "s" : "") + " more than asked");
        }
        if (starved > 0) {
            said.add(starved + " now fall" + (starved == 1 ? "s" : "") + " short");
        }
        return said.isEmpty() ? "" : "; " + String.join(", ", said);
    }

    /** What the blower does, and whether it bears it. */
    public String pressure() {
        String goes = "The blower goes from " + pressure(closing.gaugeBeforePa()) + " to "
                + pressure(closing.gaugeAfterPa()) + ", tired";
        Held held = closing.fresh().isTooHigh() || !closing.tired().isTooHigh() ? closing.fresh() : closing.tired();
        String wear = held.equals(closing.fresh()) ? "new" : "tired";
        String bears = held.isTooHigh()
                ? "; " + wear + ", " + held.machine() + " would be held at " + pressure(held.afterPa()) + ", above the "
                        + pressure(held.continuousPa()) + " that it bears all day"
                : "; new it goes to " + pressure(held.afterPa()) + " inside, and bears " + pressure(held.continuousPa())
                        + " all day";
        return goes + bears + "." + bled();
    }

    private String bled() {
        if (Math.max(closing.bledBeforeM3PerS(), closing.bledAfterM3PerS()) < NO_BLEED_M3_PER_S) {
            return " Nothing is bled.";
        }
        return " The bleed lets out " + flow(closing.bledAfterM3PerS()) + " instead of "
                + flow(closing.bledBeforeM3PerS()) + ".";
    }

    /** What the bleed can do instead of retuning; empty where nobody needs it. */
    public Optional<String> instead() {
        boolean isNeeded = closing.isRetuned()
                || closing.tired().isTooHigh()
                || closing.fresh().isTooHigh();
        if (!isNeeded || closing.bleed().moreM3PerS() <= 0) {
            return Optional.empty();
        }
        String rest = closing.others().isEmpty()
                ? "."
                : "; then nobody moves by more than " + share(closing.bleed().restShare()) + ".";
        return Optional.of("Or open the bleed until the gauge shows " + pressure(closing.gaugeBeforePa()) + " again: "
                + flow(closing.bleed().moreM3PerS()) + " more, "
                + flow(closing.bleed().bledM3PerS()) + " in all" + rest);
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
