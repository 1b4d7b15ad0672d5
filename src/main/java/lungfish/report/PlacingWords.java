package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.build.BuildPlan;
import lungfish.build.Placing;
import lungfish.catalogue.Catalogue;
import lungfish.document.Part;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Blower;
import lungfish.room.Room;

/** Where the blower stands, what is fitted to it, and at which pressures. */
final class PlacingWords {
    private final Placing placing;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final Names names;
    private final boolean hasStandby;

    PlacingWords(Room room, BuildPlan build, Catalogue catalogue, Quantities quantities, Names names) {
        this.placing = build.placing();
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.names = names;
        this.hasStandby = !room.blowers(Blower.Role.STANDBY).isEmpty();
    }

    List<Part> parts() {
        if (placing.machines().isEmpty()) {
            return List.of(new Part.Paragraph("The plan names no blower yet."));
        }
        List<Part.Fact> facts = new ArrayList<>();
        placing.machines().forEach(machine -> facts.addAll(standing(machine)));
        facts.addAll(pressures());
        placing.drains()
                .forEach(drain -> facts.add(new Part.Fact(
                        "Drain",
                        "at the lowest place of " + names.of(drain.run().part()) + ", "
                                + quantities.show(drain.place().zM(), Dimension.LENGTH)
                                + " above the floor; open it once a week")));
        List<Part> parts = new ArrayList<>(List.of(new Part.Facts(facts), new Part.Paragraph(order())));
        if (hasStandby) {
            parts.add(new Part.Paragraph(
                    "The standby is not in the parts list: it needs a hose, an adapter and a check valve of"
                            + " its own, or the air goes out through it."));
        }
        return parts;
    }

    private List<Part.Fact> standing(Placing.Standing machine) {
        String name = Sentences.capital(names.of(machine.part()));
        List<Part.Fact> facts = new ArrayList<>();
        String several = machine.count() > 1 ? machine.count() + " side by side, each a " : "";
        facts.add(new Part.Fact(name, several + machine.machine().kind().name()));
        facts.add(new Part.Fact("Stands", height(machine)));
        facts.add(new Part.Fact(
                "Port and hose",
                "port " + bore(machine.portM()) + "; hose of the same bore, "
                        + quantities.show(machine.hoseM(), Dimension.LENGTH) + ", clamped at both ends"
                        + machine.pipe()
                                .flatMap(catalogue::pipe)
                                .map(pipe -> "; adapter to " + pipe.name() + ", bore " + bore(pipe.boreM()))
                                .orElse("")));
        if (machine.reliefPa().isPresent()) {
            facts.add(new Part.Fact(
                    "Relief valve", "opens at " + pressure(machine.reliefPa().getAsDouble())));
        }
        facts.add(new Part.Fact(
                "Rebuild kit", "due after " + quantities.show(machine.rebuildS(), Dimension.DURATION) + " of running"));
        return facts;
    }

    private String height(Placing.Standing machine) {
        if (machine.heightM().isEmpty()) {
            return "not drawn yet: above the highest water line";
        }
        String height = quantities.show(machine.heightM().getAsDouble(), Dimension.LENGTH) + " above the floor";
        OptionalDouble above = machine.aboveM(placing.waterLineM());
        if (above.isEmpty()) {
            return height;
        }
        String apart = quantities.show(Math.abs(above.getAsDouble()), Dimension.DEPTH);
        return above.getAsDouble() >= 0
                ? height + ", " + apart + " above the highest water line"
                : height + ", " + apart
                        + " BELOW the highest water line: water can run into it when the air stops; raise it,"
                        + " or fit a check valve at each outlet";
    }

    private List<Part.Fact> pressures() {
        List<Part.Fact> facts = new ArrayList<>();
        placing.runsAtPa()
                .ifPresent(pa -> facts.add(new Part.Fact(
                        placing.bled() ? "Bleed valve" : "Pressure",
                        placing.bled()
                                ? "on the pipe near the blower; set so that the gauge reads " + pressure(pa)
                                : "the gauge should read " + pressure(pa) + " with all valves set")));
        placing.alarmPa()
                .ifPresent(pa -> facts.add(new Part.Fact("Low-pressure alarm", "rings below " + pressure(pa))));
        return facts;
    }

    private String bore(double boreM) {
        return quantities.show(boreM, Dimension.BORE);
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }

    private static String order() {
        return "In this order from the blower: its check valve, hose with clamps, adapter to the pipe, drain at the foot, gauge"
                + " and alarm, bleed with its muffler, then the pipe. Stand it on a pad, with free air round it, and let its"
                + " cord hang in a loop below the socket, so that water drips off there.";
    }
}
