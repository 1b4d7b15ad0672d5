package lungfish.rescue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.air.Water;
import lungfish.backup.BatteryRuntime;
import lungfish.backup.Load;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BackupClass.Kind;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.outage.Drills;
import lungfish.piping.PipedRoom;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import lungfish.room.RunId;
import lungfish.sizing.Fleet;

/** The means that a room may take, as far as the catalogue has a class that is large enough. */
final class Offers {
    /** A battery as it is often sold; no more than a suggestion. */
    private static final double CHARGE_C = 100 * 3600;

    private static final int MOST_BATTERIES = 100;

    private final Plan plan;
    private final Room room;
    private final Catalogue catalogue;
    private final Drills drills;
    private final Load load;
    private final double wantedS;
    private final List<Unfit> unfit = new ArrayList<>();

    Offers(Plan plan, Catalogue catalogue, Drills drills, double wantedS) {
        this.plan = plan;
        this.room = plan.room();
        this.catalogue = catalogue;
        this.drills = drills;
        this.load = drills.load();
        this.wantedS = wantedS;
    }

    /** All of them. */
    List<Slot> slots() {
        return Stream.of(alarm(), batteryPumps(), batteries(), shedding(), generators(), standbys())
                .filter(ladders -> !ladders.isEmpty())
                .map(Slot::new)
                .toList();
    }

    /** Where no class was large enough; known once the slots were asked for. */
    List<Unfit> unfit() {
        return List.copyOf(unfit);
    }

    private List<Ladder> alarm() {
        boolean helps =
                room.backup().alarm().isEmpty() && room.backup().noticeS().isEmpty();
        return catalogue.backupGear(Kind.ALARM).stream()
                .filter(kind -> helps)
                .min(Comparator.comparingDouble(BackupClass::price))
                .map(kind -> Ladder.of(new Means.Alarm(kind, plan.alarmPa())))
                .stream()
                .toList();
    }

    /** Only pumps that reach the deepest essential outlet, and no more of them than its targets ask for. */
    private List<Ladder> batteryPumps() {
        List<Need> essential = drills.needs().stream().filter(Need::essential).toList();
        double askedM3PerS =
                essential.stream().mapToDouble(need -> need.targetM3PerS().si()).sum();
        double deepestPa =
                essential.stream().mapToDouble(Offers::columnPa).max().orElse(0);
        Optional<Backup.BatteryPumps> there = room.backup().batteryPumps();
        return catalogue.backupGear(Kind.BATTERY_PUMP).stream()
                .filter(kind -> there.isEmpty() || there.get().kind().equals(kind.id()))
                .filter(kind -> kind.ratedPa() > deepestPa)
                .flatMap(kind -> batteryPumps(
                        kind,
                        (int) Math.ceil(askedM3PerS / kind.ratedM3PerS())
                                - there.map(Backup.BatteryPumps::count).orElse(0))
                        .stream())
                .toList();
    }

    private static Optional<Ladder> batteryPumps(BackupClass kind, int most) {
        List<Means> rungs = new ArrayList<>();
        for (int count = 1; count <= most; count++) {
            rungs.add(new Means.BatteryPumps(kind, count));
        }
        return rungs.isEmpty() ? Optional.empty() : Optional.of(new Ladder(rungs));
    }

    private static double columnPa(Need need) {
        return need.waterDensityKgPerM3()
                * Water.GRAVITY_M_PER_S2
                * need.depthM().si();
    }

    /** Batteries of another class than those that hang on the same charger already are not mixed with them. */
    private List<Ladder> batteries() {
        Optional<Backup.Battery> there = room.backup().batteries().stream().findFirst();
        Optional<BackupClass> inverter = Optional.empty();
        if (!bearsBlowers(room.backup().inverter())) {
            inverter = inverter();
            if (inverter.isEmpty()) {
                unfit.add(new Unfit(Kind.INVERTER, load.runningW(), load.startingW()));
                return List.of();
            }
        }
        List<Ladder> ladders = new ArrayList<>();
        for (BatteryClass kind : catalogue.batteries()) {
            if (there.isEmpty() || there.get().kind().equals(kind.id())) {
                batteries(kind, there, inverter).ifPresent(ladders::add);
            }
        }
        return ladders;
    }

    private boolean bearsBlowers(Optional<Backup.Inverter> inverter) {
        return inverter.filter(each -> each.ratedW().orElse(Double.MAX_VALUE) >= load.runningW()
                        && each.surgeW().orElse(Double.MAX_VALUE) >= load.startingW())
                .isPresent();
    }

    private Optional<BackupClass> inverter() {
        return cheapest(Kind.INVERTER, load.runningW(), load.startingW());
    }

    private Optional<BackupClass> cheapest(Kind kind, double watts, double surgeW) {
        return catalogue.backupGear(kind).stream()
                .filter(each -> each.ratedW() >= watts && each.surgeW() >= surgeW)
                .min(Comparator.comparingDouble(BackupClass::price));
    }

    private Optional<Ladder> batteries(
            BatteryClass kind, Optional<Backup.Battery> there, Optional<BackupClass> inverter) {
        double chargeC = there.map(Backup.Battery::capacityC).orElse(CHARGE_C);
        double voltageV = there.map(Backup.Battery::voltageV).orElse(kind.blockV());
        List<Means> rungs = new ArrayList<>();
        int count = there.isPresent() && inverter.isPresent() ? 0 : 1;
        double runsS = room.backup().batteries().isEmpty() || inverter.isPresent() ? 0 : runtimeS(room);
        while (runsS < wantedS && count <= MOST_BATTERIES) {
            Means.Battery rung = new Means.Battery(kind, count, chargeC, voltageV, inverter);
            rungs.add(rung);
            runsS = runtimeS(rung.in(room));
            count++;
        }
        return rungs.isEmpty() ? Optional.empty() : Optional.of(new Ladder(rungs));
    }

    private double runtimeS(Room with) {
        return BatteryRuntime.runtimeS(with, catalogue, load.runningW()).orElse(0);
    }

    private List<Ladder> shedding() {
        if (load.essentialW().isEmpty()) {
            return List.of();
        }
        if (room.backup().shedding().isPresent()) {
            return List.of(Ladder.of(new Means.AllOn()));
        }
        return catalogue.backupGear(Kind.SHED_VALVE).stream()
                .max(Comparator.comparingDouble(BackupClass::price))
                .map(kind -> Ladder.of(new Means.Shedding(kind, shedValves())))
                .stream()
                .toList();
    }

    /** One for each run from which nothing essential is fed; other outlets are shut at their own valves. */
    private int shedValves() {
        Map<RunId, Boolean> sheddable = new HashMap<>();
        plan.piped().ifPresent(piped -> {
            for (int i = 0; i < piped.needs().size(); i++) {
                boolean stays = piped.needs().get(i).essential();
                run(piped, i).ifPresent(run -> sheddable.merge(run, !stays, Boolean::logicalAnd));
            }
        });
        return (int)
                Math.max(1, sheddable.values().stream().filter(sheds -> sheds).count());
    }

    private static Optional<RunId> run(PipedRoom piped, int need) {
        String node = piped.network().drops().get(need).node();
        return Optional.ofNullable(piped.spots().get(node)).flatMap(spot -> spot.run());
    }

    /** Each that is large enough bears the room as well as the next, so only the cheapest is tried in sets. */
    private List<Ladder> generators() {
        Optional<Backup.Generator> there = room.backup().generator();
        boolean carries = there.filter(each -> each.ratedW().orElse(Double.MAX_VALUE) >= load.startingW())
                .isPresent();
        if (carries) {
            boolean lasts = drills.habits().fuelS() >= wantedS;
            return lasts ? List.of() : List.of(Ladder.of(new Means.Generator(Optional.empty(), wantedS)));
        }
        Optional<BackupClass> kind = cheapest(Kind.GENERATOR, load.startingW(), 0);
        if (kind.isEmpty()) {
            unfit.add(new Unfit(Kind.GENERATOR, load.startingW(), load.startingW()));
        }
        return kind.map(each -> Ladder.of(new Means.Generator(kind, fuelS(each)))).stream()
                .toList();
    }

    /** Whole fillings of its tank, as many as the wanted time takes. */
    private double fuelS(BackupClass generator) {
        return generator.runtimeS() * Math.ceil(wantedS / generator.runtimeS());
    }

    private List<Ladder> standbys() {
        return drills.isPlannedBlower()
                ? plan.duty().map(duty -> standbys(duty.candidate().fleet())).orElse(List.of())
                : spares();
    }

    /** Beside each blower, and beside all of them; by hand and, where that is not so already, by itself. */
    private List<Ladder> standbys(Fleet fleet) {
        List<BlowerId> places = fleet.placed().stream()
                .map(each -> new BlowerId(each.machine().part().id()))
                .distinct()
                .toList();
        Optional<BackupClass> changeover = changeover(fleet.machines());
        int there = room.blowers(Blower.Role.STANDBY).size();
        List<Ladder> ladders = new ArrayList<>();
        if (there > 0 && !startsItself() && changeover.isPresent()) {
            ladders.add(Ladder.of(new Means.Standby(fleet.kind(), List.of(), changeover, there)));
        }
        places.forEach(place ->
                standbys(fleet.kind(), List.of(place), changeover, there).ifPresent(ladders::add));
        if (places.size() > 1) {
            standbys(fleet.kind(), places, changeover, there).ifPresent(ladders::add);
        }
        return ladders;
    }

    private Optional<Ladder> standbys(
            BlowerClass kind, List<BlowerId> beside, Optional<BackupClass> changeover, int there) {
        List<Means> rungs = new ArrayList<>();
        if (!startsItself()) {
            rungs.add(new Means.Standby(kind, beside, Optional.empty(), 0));
        }
        if (changeover.isPresent()) {
            int starting = beside.size() + (startsItself() ? 0 : there);
            rungs.add(new Means.Standby(kind, beside, changeover, starting));
        }
        return rungs.isEmpty() ? Optional.empty() : Optional.of(new Ladder(rungs));
    }

    /** One of the largest of the small pumps, to be put in the place of whichever stops. */
    private List<Ladder> spares() {
        if (!room.blowers(Blower.Role.STANDBY).isEmpty()) {
            return List.of();
        }
        return plan.pumps().stream()
                .max(Comparator.comparingDouble(pump -> pump.machine().kind().openM3PerS()))
                .map(pump -> Ladder.of(new Means.Standby(
                        pump.machine().kind(), List.of(pump.pump().id()), Optional.empty(), 0)))
                .stream()
                .toList();
    }

    private boolean startsItself() {
        return room.backup()
                .standby()
                .filter(each -> each.start() == Backup.Standby.Start.AUTOMATIC)
                .isPresent();
    }

    /** For one machine of those that run. */
    private Optional<BackupClass> changeover(int machines) {
        double watts = load.runningW() / machines;
        double surgeW = load.startingW() / machines;
        Optional<BackupClass> kind = cheapest(Kind.CHANGEOVER, watts, surgeW);
        if (kind.isEmpty()) {
            unfit.add(new Unfit(Kind.CHANGEOVER, watts, surgeW));
        }
        return kind;
    }
}
