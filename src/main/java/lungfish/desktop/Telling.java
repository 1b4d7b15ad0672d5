package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.demand.Need;
import lungfish.drawing.OutagePlayed;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.PartId;
import lungfish.report.Names;
import lungfish.report.OutageBrief;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;

/** One line about a part of the room: what is under the pointer, or chosen. */
final class Telling {
    private static final String BETWEEN = " · ";

    private final View view;
    private final Room room;
    private final Names names;
    private final Quantities quantities;

    Telling(View view) {
        this.view = view;
        this.room = view.plan().map(Plan::room).orElseGet(() -> view.desk().room());
        this.names = view.names();
        this.quantities = view.quantities();
    }

    String of(PartId part) {
        return switch (part.kind()) {
            case OUTLET -> outlet(part).orElseGet(() -> names.of(part));
            case RACK -> rack(part).orElseGet(() -> names.of(part));
            case SHELF -> shelf(part).orElseGet(() -> names.of(part));
            case TANK -> tank(part).orElseGet(() -> names.of(part));
            case RUN -> run(part).orElseGet(() -> names.of(part));
            case ROOM ->
                room.listener()
                        .map(listener -> listener.name() + ": where you sit and listen")
                        .orElse(room.name());
            default -> names.of(part);
        };
    }

    private Optional<String> outlet(PartId part) {
        return outlets()
                .filter(outlet -> outlet.need().id().part().equals(part))
                .findFirst()
                .map(outlet ->
                        say(outlet.need(), new OutletRow(outlet.need().seat(), Optional.of(outlet), view.shown())));
    }

    private Stream<OutletPlan> outlets() {
        return view.plan().stream().flatMap(plan -> plan.outlets().stream());
    }

    private String say(Need need, OutletRow row) {
        String gets = row.getsM3PerS().isPresent()
                ? "gets " + flow(row.getsM3PerS().getAsDouble()) + " of "
                        + flow(need.targetM3PerS().si())
                : "wants " + flow(need.targetM3PerS().si());
        return String.join(
                        BETWEEN,
                        List.of(
                                need.id().text() + ", " + need.seat().tank().name(),
                                need.device().name() + " "
                                        + quantities.show(need.depthM().si(), Dimension.DEPTH) + " deep",
                                gets))
                + spare(row)
                + BETWEEN
                + row.state().word();
    }

    private String spare(OutletRow row) {
        if (row.sparePa().isEmpty()) {
            return "";
        }
        double spare = row.sparePa().getAsDouble();
        String figure = quantities.show(Math.abs(spare), Dimension.PRESSURE);
        return BETWEEN + (spare < 0 ? "short by " + figure : figure + " to spare");
    }

    private Optional<String> rack(PartId part) {
        return room.racks().stream()
                .filter(rack -> rack.id().part().equals(part))
                .findFirst()
                .map(this::say);
    }

    private String say(Rack rack) {
        long outlets = rack.tanks().mapToLong(tank -> tank.outlets().size()).sum();
        return String.join(
                BETWEEN,
                List.of(
                        rack.name() + planned(rack),
                        count(rack.shelves().size(), "shelf", "shelves"),
                        count(rack.tanks().count(), "tank", "tanks"),
                        count(outlets, "outlet", "outlets"),
                        "Enter or double click: its front"));
    }

    private static String planned(Rack rack) {
        int step = rack.step().number();
        String when = rack.step().name().map(name -> " " + name).orElse(step > 1 ? " for step " + step : "");
        return rack.isPlanned() ? ", planned" + when : "";
    }

    private Optional<String> shelf(PartId part) {
        return room.racks().stream()
                .flatMap(rack -> rack.shelves().stream())
                .filter(shelf -> shelf.id().part().equals(part))
                .findFirst()
                .map(shelf -> String.join(
                        BETWEEN,
                        List.of(
                                names.of(part),
                                quantities.show(shelf.heightM(), Dimension.DEPTH) + " above the floor",
                                count(shelf.tanks().size(), "tank", "tanks"))));
    }

    private Optional<String> tank(PartId part) {
        return room.racks().stream()
                .flatMap(Rack::tanks)
                .filter(tank -> tank.id().part().equals(part))
                .findFirst()
                .map(this::say);
    }

    private String say(Tank tank) {
        return String.join(
                        BETWEEN,
                        List.of(
                                tank.name(),
                                quantities.show(tank.waterM3(), Dimension.VOLUME) + " of water, "
                                        + quantities.show(tank.waterDepthM(), Dimension.DEPTH) + " deep",
                                count(tank.outlets().size(), "outlet", "outlets")))
                + oxygen(tank);
    }

    /** While an outage is played: how the tank stands at its time. */
    private String oxygen(Tank tank) {
        return view.breathing()
                .flatMap(laid -> laid.drill(tank)
                        .map(drill -> BETWEEN
                                + OutagePlayed.state(drill, laid.how(), laid.atS())
                                        .word()
                                + BETWEEN
                                + new OutageBrief(laid.played().drill(), quantities).tells(drill, laid.atS())))
                .orElse("");
    }

    private Optional<String> run(PartId part) {
        return room.runs().stream()
                .filter(run -> run.id().part().equals(part))
                .findFirst()
                .map(this::say);
    }

    private String say(Run run) {
        return run.name() + BETWEEN + quantities.show(run.lengthM(), Dimension.LENGTH) + " of pipe";
    }

    private static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }
}
