package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class RefusalsTest {
    private static Refused asSet(Small network) {
        return Small.refusal(Solver.of(network.build()).asSet());
    }

    private static Refused tuned(Small network) {
        return Small.refusal(Solver.of(network.build()).tuned());
    }

    @Test
    void aDropThatNoSourceReachesIsNamed() {
        Small network = Small.network()
                .fixed("a", 5000.0)
                .add(Small.drop("fed", "a", 1e10))
                .add(Small.drop("lonely", "b", 1e10));
        assertThat(asSet(network))
                .extracting(Refused::why, Refused::partId)
                .containsExactly(Refused.Why.NO_SOURCE, "lonely");
        assertThat(asSet(network).reason()).contains("'lonely'").contains("'b'");
        assertThat(tuned(network).partId()).isEqualTo("lonely");
    }

    @Test
    void aLoosePieceWithoutDropsStandsStillAtAmbient() {
        AsSet answer = Small.network()
                .fixed("a", 5000.0)
                .add(Small.drop("d", "a", 1e10))
                .pipe("x", "y", 1.0, 0.02)
                .asSet();
        assertThat(answer.nodeGaugePa(1)).isZero();
        assertThat(answer.pipe(0).regime()).isEqualTo(Regime.STILL);
    }

    @Test
    void twoPressuresOnNodesTiedTogetherAreRefused() {
        Small network = Small.network().fixed("a", 5000.0).fixed("b", 6000.0).tie("a", "b");
        assertThat(asSet(network))
                .extracting(Refused::why, Refused::partId)
                .containsExactly(Refused.Why.TWO_PRESSURES, "at-b");
    }

    @Test
    void aDropWithoutAnyResistanceIsRefused() {
        Drop open = new Drop(
                "hole",
                "a",
                0.0,
                0.0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0.1,
                OptionalDouble.empty());
        assertThat(asSet(Small.network().fixed("a", 5000.0).add(open)))
                .extracting(Refused::why, Refused::partId)
                .containsExactly(Refused.Why.NO_RESISTANCE, "hole");
    }

    @Test
    void aBlowerThatNeverGivesInNeedsADrop() {
        Curve never = Curve.of(List.of(new Curve.Point(0, 1e-3), new Curve.Point(1000, 1e-3)));
        assertThat(asSet(Small.network().blower("a", never)))
                .extracting(Refused::why, Refused::partId)
                .containsExactly(Refused.Why.NO_OUTLET, "b-a");
    }

    @Test
    void nothingToTuneIsRefused() {
        Small network = Small.network()
                .fixed("a", 5000.0)
                .add(Small.drop("d", "a", 1e10).withoutTarget());
        assertThat(tuned(network).why()).isEqualTo(Refused.Why.NO_TARGET);
    }

    @Test
    void aTargetThroughAHairIsBeyondTheModel() {
        Small network = Small.network()
                .fixed("a", 5000.0)
                .pipe("a", "b", 100.0, 0.0005)
                .add(Small.drop("far", "b", 1e10).withTarget(1e-3));
        assertThat(tuned(network))
                .extracting(Refused::why, Refused::partId)
                .containsExactly(Refused.Why.BEYOND_MODEL, "far");
    }

    @Test
    void aWeakBlowerIsSaidToBeInfeasibleWithItsFigures() {
        Tuned answer = Small.network()
                .blower("a", Small.straight(1e-5, 8000.0))
                .add(Small.drop("d", "a", 1e10))
                .tuned();
        assertThat(answer.feasible()).isFalse();
        assertThat(answer.whyNot())
                .singleElement()
                .asString()
                .contains("'b-a'")
                .contains("'d'")
                .contains("2.0 L/min");
        assertThat(answer.headroomM3PerS().orElseThrow()).isNegative();
    }

    @Test
    void aFixedPressureBelowTheNeedIsInfeasible() {
        Tuned answer = Small.network()
                .fixed("a", 1000.0)
                .add(Small.drop("d", "a", 1e10))
                .tuned();
        assertThat(answer.feasible()).isFalse();
        assertThat(answer.headroomM3PerS()).isEmpty();
    }
}
