package lungfish.siphon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CheckValveClass;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;

/** What to say of the ways of water: of each kind the worst, with how many more there are, never one for every outlet. */
public final class SiphonFindings {
    private final Siphons siphons;
    private final Catalogue catalogue;
    private final List<Finding> findings = new ArrayList<>();

    private SiphonFindings(Siphons siphons, Catalogue catalogue) {
        this.siphons = siphons;
        this.catalogue = catalogue;
    }

    /** The findings; none where nothing can run. */
    public static List<Finding> of(Siphons siphons, Catalogue catalogue) {
        SiphonFindings own = new SiphonFindings(siphons, catalogue);
        own.machines();
        own.tanks(Code.SIPHON_BY_ITSELF, Way.Start.BY_ITSELF);
        own.tanks(Code.SIPHON, Way.Start.ONCE_LIFTED);
        own.unknown();
        return own.findings;
    }

    /** The way that a finding is about; empty for a finding of another kind. */
    public static Optional<Way> way(Finding finding, Siphons siphons) {
        return siphons.ways().stream()
                .filter(way -> finding.code() == code(way) && finding.where().equals(where(way)))
                .findFirst();
    }

    private static Code code(Way way) {
        if (way.reachesMachine()) {
            return Code.BELOW_WATER_LINE;
        }
        return way.start() == Way.Start.BY_ITSELF ? Code.SIPHON_BY_ITSELF : Code.SIPHON;
    }

    /** Where it is to be mended: the machine that stands too low, or the outlet without a check valve. */
    private static PartId where(Way way) {
        return way.reachesMachine()
                ? way.into().part()
                : way.from().outlet().outlet().id().part();
    }

    private void machines() {
        siphons.ways().stream()
                .filter(Way::reachesMachine)
                .forEach(way -> findings.add(Finding.of(
                                Code.BELOW_WATER_LINE,
                                where(way),
                                height("line", way.from().lineM()),
                                height("found", way.into().lineM()),
                                new Amount("lift", way.liftM(), Dimension.DEPTH))
                        .with("tank", tank(way))));
    }

    private void tanks(Code code, Way.Start start) {
        List<Way> ways = siphons.ways(start).stream()
                .filter(way -> !way.reachesMachine())
                .toList();
        if (!ways.isEmpty()) {
            findings.add(finding(code, ways.get(0), ways.size()));
        }
    }

    private Finding finding(Code code, Way worst, int reached) {
        int valves = siphons.leaving().size();
        return Finding.of(
                        code,
                        where(worst),
                        height("line", worst.from().lineM()),
                        height("crest", worst.crestM()),
                        new Amount("lift", worst.liftM(), Dimension.DEPTH),
                        new Amount("water", worst.waterM3(), Dimension.VOLUME),
                        new Amount("free", worst.into().freeM3().orElse(0), Dimension.VOLUME),
                        new Amount("reached", reached, Dimension.COUNT),
                        new Amount("valves", valves, Dimension.COUNT),
                        new Amount("price", valves * cheapest(), Dimension.MONEY),
                        height("above", siphons.safeHeightM().orElse(0.0)))
                .with("into", worst.into().tank().map(tank -> tank.name()).orElse(""));
    }

    private static String tank(Way way) {
        return way.from().outlet().tank().name();
    }

    private static Amount height(String name, double metres) {
        return new Amount(name, metres, Dimension.LENGTH);
    }

    private double cheapest() {
        return catalogue.checkValves().stream()
                .min(Comparator.comparingDouble(CheckValveClass::price))
                .map(CheckValveClass::price)
                .orElse(0.0);
    }

    private void unknown() {
        List<Leaving> unknown = siphons.leaving().stream()
                .filter(each -> each.checkValve() == Leaving.CheckValve.UNKNOWN)
                .toList();
        if (!unknown.isEmpty()) {
            findings.add(Finding.of(
                    Code.CHECK_VALVE_UNKNOWN,
                    unknown.get(0).outlet().outlet().id().part(),
                    new Amount("found", unknown.size(), Dimension.COUNT)));
        }
    }
}
