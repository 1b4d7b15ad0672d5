package lungfish.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Backup.Standby;
import lungfish.room.Room;

/** Tells how each way to give a room its air stands up to failures. */
final class Standings {
    private final Rates rates;
    private final Central central;
    private final Feeding feeding;
    private final Standby.Start start;
    private final int tanks;
    private final double blowerMainsS;
    private final double pumpsMainsS;

    /**
     * @param blowerMainsS time a year in which the mains take the air of a blower
     * @param pumpsMainsS the same of small pumps
     */
    Standings(Room room, Rates rates, double blowerMainsS, double pumpsMainsS) {
        this.rates = rates;
        this.central = Central.of(room);
        this.feeding = Feeding.of(room);
        this.start = room.backup().standby().map(Standby::start).orElse(Standby.Start.MANUAL);
        this.tanks = (int) room.seats().stream()
                .filter(seat -> !seat.planned())
                .map(seat -> seat.tank().id())
                .distinct()
                .count();
        this.blowerMainsS = blowerMainsS;
        this.pumpsMainsS = pumpsMainsS;
    }

    int tanks() {
        return tanks;
    }

    List<Standing> all() {
        return List.of(
                one(),
                standby(Way.STANDBY_BY_HAND, Standby.Start.MANUAL),
                standby(Way.STANDBY_BY_ITSELF, Standby.Start.AUTOMATIC),
                shared(),
                pumps());
    }

    private Standing one() {
        boolean drawn = central.count() == 1 && !central.hasStandby();
        Loss loss = new Loss(tanks, 0, 1, rates.backS());
        return central(Way.ONE_BLOWER, drawn, 1, Machines.one(rates), loss, tanks);
    }

    private Standing standby(Way way, Standby.Start by) {
        boolean drawn = central.hasStandby() && start == by;
        int running = drawn ? central.count() : 1;
        boolean byHand = by == Standby.Start.MANUAL;
        double noticeS = running == 1 ? rates.noticeS() : rates.quietNoticeS();
        double startS = byHand ? noticeS + rates.handS() : rates.selfS();
        double backS = byHand ? noticeS + rates.mendS() : rates.quietBackS();
        int byCircuit = drawn && !byHand && central.standbyIsApart() ? 0 : tanks;
        return central(
                way,
                drawn,
                running + 1,
                Machines.withStandby(running, rates, startS, backS),
                byHand ? lossOf(running, startS) : new Loss(0, 0, 1, startS),
                byCircuit);
    }

    private Standing shared() {
        boolean drawn = central.count() > 1 && !central.hasStandby();
        int running = Math.max(2, central.count());
        int byCircuit = drawn && central.runningAreApart() ? 0 : tanks;
        Loss loss = lossOf(running, rates.quietBackS());
        return central(Way.SHARED, drawn, running, Machines.sharing(running, rates), loss, byCircuit);
    }

    private Loss lossOf(int running, double forS) {
        return running == 1 ? new Loss(tanks, 0, 1, forS) : new Loss(0, tanks, (running - 1.0) / running, forS);
    }

    private Standing central(Way way, boolean drawn, int machines, Machines share, Loss loss, int byCircuit) {
        List<Common> common = new ArrayList<>();
        common.add(new Common(Common.Cause.MAINS, tanks, OptionalDouble.of(blowerMainsS)));
        common.add(new Common(Common.Cause.CIRCUIT, byCircuit, OptionalDouble.empty()));
        common.add(new Common(Common.Cause.PIPE, tanks, OptionalDouble.empty()));
        return standing(way, drawn, machines, share, loss, common);
    }

    /** Each on its own airline: there is no pipe that all share. */
    private Standing pumps() {
        List<Machines> shares = feeding.machinesByTank().stream()
                .distinct()
                .map(count -> Machines.sharing(count, rates))
                .toList();
        Machines worst = new Machines(
                shares.stream().mapToDouble(Machines::shortShare).max().orElse(0),
                shares.stream().mapToDouble(Machines::airlessShare).max().orElse(0));
        List<Common> common = List.of(
                new Common(Common.Cause.MAINS, feeding.tanks(), OptionalDouble.of(pumpsMainsS)),
                new Common(Common.Cause.CIRCUIT, feeding.byOneCircuit(), OptionalDouble.empty()),
                new Common(Common.Cause.PIPE, 0, OptionalDouble.empty()));
        Loss loss = feeding.worst(rates.quietBackS());
        return standing(Way.SMALL_PUMPS, feeding.drawn(), feeding.machines(), worst, loss, common);
    }

    private Standing standing(Way way, boolean drawn, int machines, Machines share, Loss loss, List<Common> common) {
        double rate = machines * rates.ratePerS();
        return new Standing(
                way,
                drawn,
                machines,
                rate * Availability.YEAR_S,
                Availability.reliability(rate, Availability.YEAR_S),
                share.shortShare() * Availability.YEAR_S,
                share.airlessShare() * Availability.YEAR_S,
                loss,
                common);
    }
}
