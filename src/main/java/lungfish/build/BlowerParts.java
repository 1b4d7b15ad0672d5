package lungfish.build;

import java.util.OptionalDouble;
import lungfish.build.PartsList.Group;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BlowerClass;

/** The blower with what is fitted to it, alarm and drain, and its rebuild kit for later. */
final class BlowerParts {
    private final Ways ways;
    private final Tally tally;
    private final Placing placing;

    BlowerParts(Ways ways, Tally tally, Placing placing) {
        this.ways = ways;
        this.tally = tally;
        this.placing = placing;
    }

    void add() {
        placing.machines().forEach(this::machine);
        once("bleed-valve", placing.bled());
        if (!placing.machines().isEmpty()) {
            boolean drawn = ways.room().runs().stream()
                    .flatMap(run -> run.fittings().stream())
                    .anyMatch(fitting -> fitting.kind().equals("gauge"));
            once("gauge", !drawn);
            alarm();
        }
        tally.supply(Group.BLOWER, "drain-valve", "", "", placing.drains().size());
        placing.machines().forEach(this::rebuild);
    }

    private void once(String supply, boolean needed) {
        tally.supply(Group.BLOWER, supply, "", "", needed ? 1 : 0);
    }

    private void machine(Placing.Standing standing) {
        BlowerClass kind = standing.machine().kind();
        int count = standing.count();
        tally.exact(Group.BLOWER, kind.id(), kind.name(), "", count, OptionalDouble.of(kind.price()));
        for (AccessoryClass fitted : standing.machine().accessories().fitted()) {
            tally.exact(Group.BLOWER, fitted.id(), fitted.name(), "", count, OptionalDouble.of(fitted.price()));
        }
        tally.supply(Group.BLOWER, "port-adapter", "", "", count);
        tally.supply(Group.BLOWER, "hose", "", "", count * standing.hoseM());
        tally.supply(Group.BLOWER, "hose-clamp", "", "", 2.0 * count);
        tally.supply(Group.BLOWER, "blower-check", "", "", count);
        tally.supply(
                Group.BLOWER,
                "pipe-adapter",
                standing.pipe().orElse(""),
                standing.pipe().map(size -> ways.pipe(size).name()).orElse(""),
                count);
        tally.supply(Group.BLOWER, "relief-valve", "", "", standing.reliefPa().isPresent() ? count : 0);
        tally.supply(Group.BLOWER, "pad", "", "", count);
    }

    private void alarm() {
        boolean there = ways.room().backup().alarm().isPresent();
        ways.catalogue().backupGear(BackupClass.Kind.ALARM).stream()
                .findFirst()
                .ifPresent(alarm -> tally.having(
                        Group.BLOWER,
                        alarm.id(),
                        alarm.name(),
                        "",
                        1,
                        there ? 1 : 0,
                        OptionalDouble.of(alarm.price())));
    }

    private void rebuild(Placing.Standing standing) {
        BlowerClass kind = standing.machine().kind();
        tally.exact(
                Group.LATER,
                "rebuild-kit/" + kind.id(),
                "Rebuild kit",
                kind.name(),
                standing.count(),
                OptionalDouble.of(kind.rebuildPrice()));
    }
}
