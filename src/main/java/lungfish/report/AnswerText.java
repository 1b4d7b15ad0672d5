package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.network.Answer;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.DropFlow;
import lungfish.network.PipeFlow;
import lungfish.network.Refused;
import lungfish.network.Solved;
import lungfish.network.Source;
import lungfish.network.SourceFlow;
import lungfish.network.Tuned;
import lungfish.network.TunedDrop;
import lungfish.network.TunedSource;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What the solver answers about a network, as text for people. */
public final class AnswerText {
    private final Quantities quantities;
    private final Page page;

    /** Writes onto a page. */
    public AnswerText(Quantities quantities, Page page) {
        this.quantities = quantities;
        this.page = page;
    }

    /** Adds one answer. */
    public void write(Answer answer) {
        answer.match(this::asSet, this::tuned, this::refused);
    }

    private Page refused(Refused refused) {
        return page.heading("No answer").paragraph(refused.reason());
    }

    private Page asSet(AsSet answer) {
        page.heading("As set: " + flow(answer.totalFreeM3PerS()) + " in all; " + states(answer) + ".");
        return rest(answer, sources(answer), drops(answer));
    }

    private Table sources(AsSet answer) {
        Table table = new Table(words("Source"), numbers("Pressure"), numbers("Gives"), words(""));
        List<Source> sources = answer.network().sources();
        for (int i = 0; i < sources.size(); i++) {
            SourceFlow flow = answer.source(i);
            String remark = remark(flow.shut(), flow.insideCurve());
            table.row(sources.get(i).id(), pressure(flow.gaugePa()), flow(flow.freeM3PerS()), remark);
        }
        return table;
    }

    private Table drops(AsSet answer) {
        Table table = new Table(words("Drop"), numbers("Tap"), numbers("Target"), numbers("Takes"), words("State"));
        List<Drop> drops = answer.network().drops();
        for (int i = 0; i < drops.size(); i++) {
            DropFlow flow = answer.drop(i);
            String target = flow(drops.get(i).targetM3PerS());
            String takes = flow(flow.freeM3PerS());
            table.row(drops.get(i).id(), pressure(flow.tapGaugePa()), target, takes, word(flow.state()));
        }
        return table;
    }

    private Page tuned(Tuned answer) {
        String index = answer.network().drops().get(answer.indexDrop()).id();
        page.heading("Tuned: " + flow(answer.totalFreeM3PerS()) + " at " + pressure(answer.requiredGaugePa())
                + "; the index drop is " + index + ".");
        answer.whyNot().forEach(page::paragraph);
        return rest(answer, sources(answer), drops(answer));
    }

    private Table sources(Tuned answer) {
        Table table = new Table(
                words("Source"),
                numbers("Pressure"),
                numbers("Asked"),
                numbers("Gives"),
                numbers("Headroom"),
                words(""));
        List<Source> sources = answer.network().sources();
        for (int i = 0; i < sources.size(); i++) {
            TunedSource source = answer.source(i);
            table.row(
                    sources.get(i).id(),
                    pressure(source.gaugePa()),
                    flow(source.askedM3PerS()),
                    flow(source.givesM3PerS()),
                    flow(source.headroomM3PerS()),
                    remark(source.shut(), source.insideCurve()));
        }
        return table;
    }

    private Table drops(Tuned answer) {
        Table table = new Table(words("Drop"), numbers("Tap"), numbers("Target"), numbers("Spare"));
        List<Drop> drops = answer.network().drops();
        for (int i = 0; i < drops.size(); i++) {
            TunedDrop drop = answer.tunedDrop(i);
            String target = flow(drops.get(i).targetM3PerS());
            table.row(drops.get(i).id(), pressure(drop.flow().tapGaugePa()), target, pressure(drop.sparePa()));
        }
        return table;
    }

    private Page rest(Solved answer, Table sources, Table drops) {
        page.table(sources).heading("Drops").table(drops);
        page.heading("Pipes").table(pipes(answer));
        return page.heading(String.format(
                Locale.ROOT,
                "Solved in %d steps; mass misses by %.1e of the total, pressure by %.1e Pa.",
                answer.iterations(),
                answer.quality().massImbalanceOverTotal(),
                answer.quality().residualPa()));
    }

    private Table pipes(Solved answer) {
        Table table = new Table(words("Pipe"), numbers("Flow"), words("Regime"), numbers("Loss"));
        for (int i = 0; i < answer.network().pipes().size(); i++) {
            PipeFlow flow = answer.pipe(i);
            table.row(
                    answer.network().pipes().get(i).id(),
                    flow(flow.freeM3PerS()),
                    word(flow.regime()),
                    pressure(flow.dropPa()));
        }
        return table;
    }

    /** "31 served, 2 starved", the states that occur. */
    private static String states(AsSet answer) {
        List<DropFlow.State> states = IntStream.range(
                        0, answer.network().drops().size())
                .mapToObj(i -> answer.drop(i).state())
                .toList();
        return Arrays.stream(DropFlow.State.values())
                .filter(states::contains)
                .map(state -> states.stream().filter(state::equals).count() + " " + word(state))
                .collect(Collectors.joining(", "));
    }

    private static String remark(boolean isShut, boolean isInside) {
        if (isShut) {
            return "shut by its check valve";
        }
        return isInside ? "" : "outside its curve";
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }

    private String flow(OptionalDouble m3PerS) {
        return m3PerS.isPresent() ? flow(m3PerS.getAsDouble()) : "";
    }

    private String pressure(double pa) {
        return quantities.show(pa, Dimension.PRESSURE);
    }

    private String pressure(OptionalDouble pa) {
        return pa.isPresent() ? pressure(pa.getAsDouble()) : "";
    }
}
