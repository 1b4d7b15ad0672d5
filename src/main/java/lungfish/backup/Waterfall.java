package lungfish.backup;

import java.util.ArrayList;
import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.reason.Origin;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.reason.Why.Input;
import lungfish.reason.Why.Term;

/** Tells a runtime as what the rated energy would give, less each loss on the way. */
final class Waterfall {
    private final Bank bank;
    private final double loadW;
    private final List<Term> terms = new ArrayList<>();
    private double leftS;

    private Waterfall(Bank bank, double loadW) {
        this.bank = bank;
        this.loadW = loadW;
    }

    static Why of(Bank bank, double loadW) {
        return new Waterfall(bank, loadW).why();
    }

    private Why why() {
        Inverting inverting = bank.inverting();
        double batteryW = inverting.batteryW(loadW);
        double ratedJ = bank.ratedJ();
        falls("the rated energy, straight into the blower", ratedJ / loadW);
        falls("lost in the inverter", ratedJ * inverting.efficiency().si() / loadW);
        falls("drawn by the idling inverter", ratedJ / batteryW);
        falls("left in the battery for its life", bank.sum(Store::deepJ) / batteryW);
        falls("kept back by the cold", bank.sum(Store::warmJ) / batteryW);
        falls("lost to age", bank.sum(Store::wornJ) / batteryW);
        falls("lost because the load is above the rated one", bank.runtimeS(loadW));
        return new Why(
                "runtime of the battery",
                bank.runtimeS(loadW),
                Dimension.DURATION,
                Why.Adding.SUM,
                terms,
                inputs(),
                "t = E · depth · temperature · age · (E · temperature · age/((P/η + P_idle) H))^(k−1) / (P/η + P_idle)",
                "energy balance; Peukert with the rated time H; temperature and age of lead-acid: IEEE Std 485");
    }

    private void falls(String saying, double toS) {
        terms.add(new Term(saying, toS - leftS, Origin.computed("")));
        leftS = toS;
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("power of the blower", loadW, Dimension.POWER, Origin.computed("where it runs")));
        inputs.add(new Input("efficiency of the inverter", bank.inverting().efficiency(), Dimension.SHARE));
        inputs.add(new Input("idle draw of the inverter", bank.inverting().idleW(), Dimension.POWER));
        bank.stores().forEach(store -> inputs.addAll(inputs(store)));
        return inputs;
    }

    private static List<Input> inputs(Store store) {
        PartId part = store.battery().id().part();
        Origin kind = Origin.catalogue(store.kind().id());
        String of = " of " + part.id();
        return List.of(
                new Input("rated energy" + of, store.ratedJ(), Dimension.ENERGY, Origin.typed("")),
                new Input("depth of discharge" + of, store.kind().usableShare(), Dimension.SHARE, kind),
                new Input("temperature" + of, store.temperatureK(), Dimension.TEMPERATURE),
                new Input("charge left by age" + of, store.wear(), Dimension.SHARE),
                new Input("Peukert exponent k" + of, store.kind().peukert(), Dimension.RATIO, kind),
                new Input("rated time H" + of, store.kind().ratedS(), Dimension.DURATION, kind));
    }
}
