package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.TankSize;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shell;

/** The air of a room that is set up at once: the loop, today's pumps, and where the blower may stand. */
final class QuickAir {
    private static final RunId MAIN = new RunId("main");
    /** From the wall, and below the ceiling: above every water line, so that nothing siphons into it. */
    private static final double CLEARANCE_M = 0.08;
    /** Of the air in the main, were it no loop; a wider pipe costs little. Common practice, no source. */
    private static final double FASTEST_M_PER_S = 3;
    /** Where one reaches for a pump. */
    private static final double PUMP_M = 1;

    private final Shell shell;
    private final List<Rack> racks;
    private final QuickStart asked;
    private final Catalogue catalogue;

    QuickAir(Shell shell, List<Rack> racks, QuickStart asked, Catalogue catalogue) {
        this.shell = shell;
        this.racks = racks;
        this.asked = asked;
        this.catalogue = catalogue;
    }

    /** A loop along the walls under the ceiling. */
    Run main() {
        double farXM = Metres.clean(shell.lengthM() - CLEARANCE_M);
        double farYM = Metres.clean(shell.widthM() - CLEARANCE_M);
        double zM = Metres.clean(shell.heightM() - CLEARANCE_M);
        return new Run(
                MAIN,
                "Loop under the ceiling",
                Run.Role.MAIN,
                pipe().id(),
                true,
                List.of(
                        new Point(CLEARANCE_M, CLEARANCE_M, zM),
                        new Point(farXM, CLEARANCE_M, zM),
                        new Point(farXM, farYM, zM),
                        new Point(CLEARANCE_M, farYM, zM)),
                List.of());
    }

    /** The narrowest that keeps the air slow, of the sort that is sold where such tanks are. */
    private PipeSize pipe() {
        String standard = asked.size().trade() == TankSize.Trade.US ? "Schedule 40" : "PN 16";
        double flowM3PerS = asked.tanks() * asked.device().typicalM3PerS();
        List<PipeSize> sold = catalogue.pipes().stream()
                .filter(pipe -> pipe.standard().contains(standard))
                .sorted(Comparator.comparingDouble(PipeSize::boreM))
                .toList();
        return sold.stream()
                .filter(pipe -> flowM3PerS <= FASTEST_M_PER_S * Math.PI / 4 * pipe.boreM() * pipe.boreM())
                .findFirst()
                .orElseGet(() -> sold.get(sold.size() - 1));
    }

    /** On a bracket beside the pipe at the far corner, its machine left to the plan. */
    Blower planned() {
        Point corner = main().points().get(2);
        double alongM = main().points().get(0).distanceM(main().points().get(1))
                + main().points().get(1).distanceM(corner);
        return new Blower(
                new BlowerId("central"),
                "Central blower",
                Blower.Role.PLANNED,
                Optional.empty(),
                1,
                siting(corner),
                Blower.Fittings.UNKNOWN,
                new Blower.BledTo(OptionalDouble.empty()),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.of(new Outlet.OnRun(MAIN, Metres.clean(alongM))));
    }

    /** Today's pumps, each with its share of the outlets, at the rack of the first of them. */
    List<Blower> today() {
        List<OutletId> outlets = racks.stream()
                .flatMap(Rack::tanks)
                .flatMap(tank -> tank.outlets().stream())
                .map(Outlet::id)
                .toList();
        return IntStream.range(0, asked.pumps())
                .mapToObj(i -> pump(i, share(outlets, i, asked.pumps())))
                .toList();
    }

    private static List<OutletId> share(List<OutletId> all, int i, int of) {
        return new ArrayList<>(all.subList(i * all.size() / of, (i + 1) * all.size() / of));
    }

    private Blower pump(int i, List<OutletId> serves) {
        Box rack = Box.of(rackOf(serves.get(0)));
        Point place = new Point(Metres.clean(rack.midXM()), Metres.clean(rack.midYM()), PUMP_M);
        return new Blower(
                new BlowerId("pump-" + (i + 1)),
                "Pump " + (i + 1),
                Blower.Role.TODAY,
                Optional.of(asked.pump().id()),
                1,
                siting(QuickRacks.inside(shell, place)),
                Blower.Fittings.UNKNOWN,
                new Blower.Unsaid(),
                Optional.empty(),
                OptionalDouble.empty(),
                serves,
                Optional.empty());
    }

    private Rack rackOf(OutletId outlet) {
        return racks.stream()
                .filter(rack -> rack.tanks().anyMatch(tank -> tank.outlets().stream()
                        .anyMatch(each -> each.id().equals(outlet))))
                .findFirst()
                .orElseThrow();
    }

    private static Blower.Siting siting(Point at) {
        return new Blower.Siting(Optional.of(at), false, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
