package lungfish.report;

import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.siphon.Reached;
import lungfish.siphon.Siphons;
import lungfish.siphon.Way;

/** What is said of water that could run when the air stops. */
public final class SiphonWords {
    private final Quantities quantities;
    private final Names names;

    public SiphonWords(Quantities quantities, Names names) {
        this.quantities = quantities;
        this.names = names;
    }

    /** One line for the whole room. */
    public String inShort(Plan plan) {
        Siphons siphons = plan.siphons();
        if (siphons.ways().isEmpty()) {
            return "No water can run back through the air pipe when the air stops.";
        }
        int byItself = siphons.ways(Way.Start.BY_ITSELF).size();
        int lifted = siphons.ways().size() - byItself;
        String outlets = Sentences.counted(siphons.leaving().size(), "outlet") + " without a check valve known of";
        return outlets + " can let water out when the air stops: " + Sentences.counted(byItself, "way")
                + " on which it runs by itself, " + lifted + " on which it must be lifted first. Worst: "
                + way(siphons.ways().get(0)) + ".";
    }

    /** "from Killi 9 (line at 1.7 m) over 2.2 m into Killi 2 (0.56 m): 8 L, lifted 50 cm first". */
    public String way(Way way) {
        return "from " + way.from().outlet().tank().name() + " (line at "
                + height(way.from().lineM()) + ") over "
                + height(way.crestM()) + " into " + into(way.into()) + " ("
                + height(way.into().lineM()) + "): "
                + quantities.show(way.waterM3(), Dimension.VOLUME) + ", " + start(way);
    }

    private String into(Reached into) {
        return into.tank().map(tank -> tank.name()).orElseGet(() -> names.of(into.part()));
    }

    private String start(Way way) {
        return way.start() == Way.Start.BY_ITSELF
                ? "by itself"
                : "once lifted " + quantities.show(way.liftM(), Dimension.DEPTH);
    }

    private String height(double metres) {
        return quantities.show(metres, Dimension.LENGTH);
    }
}
