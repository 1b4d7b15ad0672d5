package lungfish.networkfile;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import lungfish.json.JsonWriter;
import lungfish.network.Answer;
import lungfish.network.AsSet;
import lungfish.network.DropFlow;
import lungfish.network.Network;
import lungfish.network.PipeFlow;
import lungfish.network.Quality;
import lungfish.network.Refused;
import lungfish.network.Solved;
import lungfish.network.SourceFlow;
import lungfish.network.Tuned;
import lungfish.network.TunedDrop;
import lungfish.network.TunedSource;

/** Writes answers as JSON: an object with a key for each question. What does not exist is null. */
public final class AnswerWriter {
    private AnswerWriter() {}

    /**
     * The text.
     *
     * @param answers under {@code as_set}, {@code tuned}, or both, in the order of the map
     */
    public static String text(Map<String, Answer> answers) {
        return JsonWriter.text(
                out -> answers.forEach((mode, answer) -> out.object(mode, inner -> write(inner, answer))));
    }

    /** Writes one answer into an object. */
    public static void write(JsonWriter out, Answer answer) {
        Consumer<JsonWriter> fields = answer.match(
                asSet -> inner -> asSet(inner, asSet),
                tuned -> inner -> tuned(inner, tuned),
                refused -> inner -> refused(inner, refused));
        fields.accept(out);
    }

    private static void refused(JsonWriter out, Refused refused) {
        out.truth("ok", false).text("reason", refused.reason());
    }

    private static void asSet(JsonWriter out, AsSet answer) {
        Network network = answer.network();
        beginning(out, "as_set", answer);
        out.object("drops", drops -> {
            for (int i = 0; i < network.drops().size(); i++) {
                DropFlow flow = answer.drop(i);
                drops.flatObject(network.drops().get(i).id(), drop -> drop(drop, flow));
            }
        });
        out.object("sources", sources -> {
            for (int i = 0; i < network.sources().size(); i++) {
                SourceFlow flow = answer.source(i);
                sources.flatObject(network.sources().get(i).id(), source -> source(source, flow));
            }
        });
        quality(out, answer.quality());
    }

    private static void tuned(JsonWriter out, Tuned answer) {
        Network network = answer.network();
        beginning(out, "tuned", answer);
        out.object("drops", drops -> {
            for (int i = 0; i < network.drops().size(); i++) {
                TunedDrop tuned = answer.tunedDrop(i);
                drops.flatObject(network.drops().get(i).id(), drop -> tunedDrop(drop, tuned));
            }
        });
        out.object("sources", sources -> {
            for (int i = 0; i < network.sources().size(); i++) {
                TunedSource tuned = answer.source(i);
                sources.flatObject(network.sources().get(i).id(), source -> tunedSource(source, tuned));
            }
        });
        quality(out, answer.quality());
        verdict(out, answer);
    }

    private static void beginning(JsonWriter out, String mode, Solved answer) {
        Network network = answer.network();
        out.truth("ok", true)
                .text("mode", mode)
                .whole("iterations", answer.iterations())
                .number("ambient_pa", network.conditions().ambientPa())
                .number("total_flow_m3s", answer.totalFreeM3PerS());
        out.object("nodes", nodes -> {
            for (int i = 0; i < network.nodes().size(); i++) {
                double gaugePa = answer.nodeGaugePa(i);
                nodes.flatObject(network.nodes().get(i), node -> node.number("gauge_pa", gaugePa));
            }
        });
        out.object("pipes", pipes -> {
            for (int i = 0; i < network.pipes().size(); i++) {
                PipeFlow flow = answer.pipe(i);
                pipes.flatObject(network.pipes().get(i).id(), pipe -> pipe(pipe, flow));
            }
        });
    }

    private static void pipe(JsonWriter out, PipeFlow flow) {
        out.number("free_m3s", flow.freeM3PerS()).number("re", flow.re());
        orNull(out, "darcy_f", flow.darcy());
        out.word("regime", flow.regime()).number("dp_pa", flow.dropPa());
    }

    private static void drop(JsonWriter out, DropFlow flow) {
        out.number("free_m3s", flow.freeM3PerS())
                .number("tap_gauge_pa", flow.tapGaugePa())
                .number("opens_at_gauge_pa", flow.opensAtGaugePa());
        orNull(out, "over_target", flow.overTarget());
        out.word("state", flow.state());
    }

    private static void tunedDrop(JsonWriter out, TunedDrop tuned) {
        drop(out, tuned.flow());
        orNull(out, "spare_pa", tuned.sparePa());
        orNull(out, "tuned_valve_k", tuned.tunedValveK());
    }

    private static void source(JsonWriter out, SourceFlow flow) {
        out.number("gauge_pa", flow.gaugePa())
                .number("free_m3s", flow.freeM3PerS())
                .truth("inside_curve", flow.insideCurve())
                .truth("shut", flow.shut());
    }

    private static void tunedSource(JsonWriter out, TunedSource tuned) {
        double asked = tuned.askedM3PerS();
        source(out, new SourceFlow(tuned.gaugePa(), asked, tuned.insideCurve(), tuned.shut()));
        out.number("asked_m3s", asked);
        orNull(out, "gives_m3s", tuned.givesM3PerS());
        orNull(out, "headroom_m3s", tuned.headroomM3PerS());
        orNull(out, "pressure_at_asked_flow_pa", tuned.pressureAtAskedFlowPa());
    }

    private static void quality(JsonWriter out, Quality quality) {
        out.object("quality", inner -> inner.number("max_mass_imbalance_over_total", quality.massImbalanceOverTotal())
                .number("max_pipe_residual_pa", quality.residualPa()));
    }

    private static void verdict(JsonWriter out, Tuned answer) {
        out.number("required_gauge_pa", answer.requiredGaugePa())
                .text(
                        "index_drop",
                        answer.network().drops().get(answer.indexDrop()).id());
        orNull(out, "headroom_m3s", answer.headroomM3PerS());
        out.truth("feasible", answer.feasible()).texts("why_not", answer.whyNot());
    }

    private static void orNull(JsonWriter out, String key, OptionalDouble value) {
        if (value.isPresent()) {
            out.number(key, value.getAsDouble());
        } else {
            out.nothing(key);
        }
    }
}
