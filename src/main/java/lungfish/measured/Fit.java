package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import lungfish.catalogue.DeviceClass;
import lungfish.demand.Need;
import lungfish.room.OutletId;

/**
 * What is uncertain, fitted to what was read.
 */
final class Fit {
    private final Start start;
    private final Unknowns unknowns;
    private final Happening happening;
    private final double sizeSd;
    private final double[] at;
    private final double[] sd;
    private final List<Integer> others;

    /**
     * With these numbers.
     *
     * @param happening what happened, of the size that fits best
     * @param sizeSd doubt about that size
     * @param at the unknowns
     * @param sd doubt about each
     * @param others numbers of the outlets that answer as if they had another device than the room says
     */
    Fit(
            Start start,
            Unknowns unknowns,
            Happening happening,
            double sizeSd,
            double[] at,
            double[] sd,
            List<Integer> others) {
        this.start = start;
        this.unknowns = unknowns;
        this.happening = happening;
        this.sizeSd = sizeSd;
        this.at = at;
        this.sd = sd;
        this.others = others;
    }

    Start start() {
        return start;
    }

    Unknowns unknowns() {
        return unknowns;
    }

    Happening happening() {
        return happening;
    }

    double sizeSd() {
        return sizeSd;
    }

    double[] at() {
        return at;
    }

    double[] sd() {
        return sd;
    }

    List<Integer> others() {
        return others;
    }

    private static final double TOLD_FROM = 2;

    Fitted fitted() {
        List<OutletId> ids =
                others.stream().map(i -> start.ground().needs().get(i).id()).toList();
        double takes = happening instanceof Happening.Leak ? start.takesM3PerS() : 0;
        return new Fitted(
                happening,
                sizeSd,
                blower(),
                devices(),
                ids,
                happening.size() * takes,
                sizeSd * takes,
                start.gaugePa() + at[unknowns.setGauge],
                clogPaSPerM3());
    }

    private double clogPaSPerM3() {
        return happening instanceof Happening.Clog clog
                ? start.laws().get(clog.outlet()).clog(clog.left(), unknowns.off(clog.outlet(), at))
                : 0;
    }

    private Fitted.BlowerGives blower() {
        Blowing blowing = Blowing.of(start, unknowns, happening, at);
        double share = blowing.share() * blowing.left();
        double wear = happening instanceof Happening.Wear lost ? sizeSd / (1 - lost.lost()) : 0;
        double doubt = Math.hypot(Math.hypot(sd[unknowns.blower], sd[unknowns.ageing]), wear);
        return new Fitted.BlowerGives(blowing.share(), share, share * doubt, unknowns.leftByAge(at));
    }

    private List<Fitted.DeviceTakes> devices() {
        List<Fitted.DeviceTakes> all = new ArrayList<>();
        for (String id : unknowns.classIds()) {
            int k = unknowns.device(id);
            if (Math.abs(at[k]) > TOLD_FROM * sd[k]) {
                all.add(takes(id, at[k], sd[k]));
            }
        }
        return all;
    }

    private Fitted.DeviceTakes takes(String id, double log, double doubt) {
        Need need = start.ground().needs().stream()
                .filter(each -> each.device().id().equals(id))
                .findFirst()
                .orElseThrow();
        DeviceClass.Resistance clean = need.device().clean();
        double q = need.targetM3PerS().si();
        double pa = clean.p0Pa() + q * (clean.aPaSPerM3() + q * clean.bPaS2PerM6());
        double factor = Math.exp(log);
        return new Fitted.DeviceTakes(id, need.device().name(), factor, (factor - 1) * pa, factor * doubt * pa);
    }
}
