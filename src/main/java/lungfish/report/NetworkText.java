package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Source;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What a network is made of, as text for people. */
public final class NetworkText {
    private final Quantities quantities;

    private NetworkText(Quantities quantities) {
        this.quantities = quantities;
    }

    /** The text. */
    public static String text(Network network, Quantities quantities) {
        return new NetworkText(quantities).page(network).text();
    }

    private Page page(Network network) {
        Conditions conditions = network.conditions();
        return new Page()
                .heading(network.title().orElse("A network of pipes"))
                .paragraph(network.nodes().size() + " nodes, " + network.pipes().size() + " pipes, "
                        + network.drops().size() + " drops, "
                        + network.sources().size() + " sources; air at "
                        + show(conditions.ambientPa(), Dimension.PRESSURE) + " absolute and "
                        + show(conditions.roomTemperatureK(), Dimension.TEMPERATURE) + ".")
                .heading("Sources")
                .table(sources(network))
                .heading("Pipes")
                .table(pipes(network))
                .heading("Drops")
                .table(drops(network));
    }

    private Table sources(Network network) {
        Table table = new Table(words("Source"), words("Node"), words("Gives"));
        network.sources().forEach(source -> table.row(source.id(), source.node(), gives(source)));
        return table;
    }

    private String gives(Source source) {
        if (source instanceof Source.FixedPressure fixed) {
            return "any flow at " + show(fixed.gaugePa(), Dimension.PRESSURE);
        }
        Source.Blower blower = (Source.Blower) source;
        Curve.Point first = blower.curve().points().get(0);
        return (blower.count() > 1 ? blower.count() + " × " : "") + show(first.freeM3PerS(), Dimension.AIR_FLOW)
                + " at "
                + show(first.gaugePa(), Dimension.PRESSURE) + ", nothing from "
                + show(blower.curve().shutGaugePa(), Dimension.PRESSURE) + " on";
    }

    private Table pipes(Network network) {
        Table table = new Table(
                words("Pipe"), words("From"), words("To"), numbers("Length"), numbers("Bore"), numbers("Loss factors"));
        for (Pipe pipe : network.pipes()) {
            table.row(
                    pipe.id(),
                    pipe.from(),
                    pipe.to(),
                    show(pipe.lengthM(), Dimension.LENGTH),
                    show(pipe.boreM(), Dimension.BORE),
                    show(pipe.kSum(), Dimension.RATIO));
        }
        return table;
    }

    private Table drops(Network network) {
        Table table = new Table(words("Drop"), words("Node"), numbers("Depth"), numbers("Target"));
        for (Drop drop : network.drops()) {
            String target =
                    drop.targetM3PerS().isPresent() ? show(drop.targetM3PerS().getAsDouble(), Dimension.AIR_FLOW) : "";
            table.row(drop.id(), drop.node(), show(drop.depthM(), Dimension.DEPTH), target);
        }
        return table;
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
