package lungfish.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import lungfish.air.FreeAir;
import lungfish.blower.Accessories;
import lungfish.blower.Discharge;
import lungfish.blower.Machine;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.Wishes.Wish;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Candidates with figures of our own, so that every step can be counted by hand. */
final class RankingTest {
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final double YEAR_S = 3.15576e7;

    /** What is told apart in these tests; the rest is alike. */
    private record Of(
            String id,
            double ratedLMin,
            double price,
            double dba,
            double perYear,
            double lifeYears,
            List<Limit.Broken> broken) {
        Of(String id, double ratedLMin, double price, double dba, double perYear, double lifeYears) {
            this(id, ratedLMin, price, dba, perYear, lifeYears, List.of());
        }

        Candidate candidate() {
            Machine machine = new Machine(id, PartId.ROOM, kind(), 1, Accessories.NONE, OptionalDouble.empty());
            Fleet fleet =
                    new Fleet(List.of(new Fleet.Placed(machine, "node")), new Blower.Unsaid(), FreeAir.at(0, 293.15));
            Running running =
                    new Running(1000, 1, 0, perYear, new Discharge(PartId.ROOM, 293, perYear, 300, 310), true);
            OptionalDouble heard = dba > 0 ? OptionalDouble.of(dba) : OptionalDouble.empty();
            return new Candidate(fleet, running, running, 0.5, heard, broken);
        }

        private BlowerClass kind() {
            return new BlowerClass(
                    id,
                    id,
                    BlowerClass.Kind.LINEAR_PISTON,
                    ratedLMin * L_PER_MIN,
                    10_000,
                    List.of(new CurvePoint(0, 1e-3, 40), new CurvePoint(20_000, 0, 60)),
                    15_000,
                    Optional.empty(),
                    0.018,
                    price,
                    price,
                    30,
                    1e8,
                    lifeYears * YEAR_S,
                    0.8,
                    0,
                    0.3,
                    1.5,
                    OptionalDouble.of(230),
                    OptionalDouble.of(50),
                    "made up for a test");
        }
    }

    private static Of quiet(String id, double dba, double price, Limit.Broken... broken) {
        return new Of(id, 80, price, dba, 50, 10, List.of(broken));
    }

    private static List<String> ranked(List<Wish> order, Of... candidates) {
        return ranked(order, Arrays.stream(candidates).map(Of::candidate).toList());
    }

    private static List<String> ranked(List<Wish> order, List<Candidate> all) {
        Asked asked = new Asked(0.25, 0, OptionalDouble.of(45), 1000, OptionalDouble.of(230), order);
        Ranking ranking = new Ranking(all, asked, each -> each.tired().watts());
        return all.stream()
                .sorted(ranking.comparator())
                .map(each -> each.kind().id())
                .toList();
    }

    private static Limit.Broken keeps(double reserve) {
        return Limit.RESERVE.broken(reserve, 0.25);
    }

    /** 40 and 42.9 dB are one step, so that the price decides between them; 43 dB is the next step however cheap. */
    @Test
    void levelsLessThanThreeDecibelsFromTheQuietestAreEquallyQuiet() {
        assertThat(ranked(
                        List.of(Wish.QUIETEST, Wish.CHEAPEST),
                        quiet("cheap but loud", 43, 50),
                        quiet("quietest", 40, 300),
                        quiet("as quiet and cheaper", 42.9, 100)))
                .containsExactly("as quiet and cheaper", "quietest", "cheap but loud");
    }

    /** 100 and 109 are one step, 110 and 120.9 the next, 121 = 100 · 1.1² the one after. */
    @Test
    void pricesLessThanATenthFromTheCheapestAreTheSamePrice() {
        assertThat(ranked(
                        List.of(Wish.CHEAPEST, Wish.QUIETEST),
                        quiet("121", 30, 121),
                        quiet("110", 38, 110),
                        quiet("120", 34, 120),
                        quiet("100", 44, 100),
                        quiet("109", 41, 109)))
                .containsExactly("109", "100", "120", "110", "121");
    }

    @Test
    void whatCostsNothingIsCheapest() {
        assertThat(ranked(List.of(Wish.CHEAPEST), quiet("bought", 30, 1), quiet("left over", 40, 0)))
                .containsExactly("left over", "bought");
    }

    @Test
    void cheapToRunIsWhatAYearCosts() {
        assertThat(ranked(
                        List.of(Wish.CHEAPEST_TO_RUN),
                        new Of("hungry", 60, 100, 40, 90, 10),
                        new Of("frugal", 80, 300, 40, 60, 10)))
                .containsExactly("frugal", "hungry");
    }

    @Test
    void longLivedIsTheYearsUntilItIsReplaced() {
        assertThat(ranked(
                        List.of(Wish.LONGEST_LIVED),
                        new Of("eight years", 60, 100, 40, 50, 8),
                        new Of("twelve years", 80, 300, 40, 50, 12)))
                .containsExactly("twelve years", "eight years");
    }

    @Test
    void whoeverServesStandsBeforeWhoeverDoesNotWhateverIsWished() {
        Of weak = quiet("silent but weak", 20, 10, Limit.FLOW.broken(0.9, 1));

        assertThat(ranked(List.of(Wish.QUIETEST, Wish.CHEAPEST), weak, quiet("serves", 44, 500)))
                .containsExactly("serves", "silent but weak");
    }

    @Test
    void theReserveComesFirstUnlessItIsSaidWhere() {
        Of tight = quiet("quiet without reserve", 30, 100, keeps(0.1));
        Of roomy = quiet("louder with reserve", 44, 100);

        assertThat(ranked(List.of(Wish.QUIETEST), tight, roomy))
                .containsExactly("louder with reserve", "quiet without reserve");
        assertThat(ranked(List.of(Wish.QUIETEST, Wish.RESERVE), tight, roomy))
                .containsExactly("quiet without reserve", "louder with reserve");
    }

    /** 25 % is wished for: 24 % is less than a step of 5 points short, 2 % more than four. */
    @Test
    void whoeverKeepsNearlyTheReserveStandsBeforeWhoeverKeepsHardlyAny() {
        assertThat(ranked(
                        List.of(Wish.RESERVE, Wish.SMALLEST),
                        new Of("small and tight", 40, 100, 40, 50, 10, List.of(keeps(0.02))),
                        new Of("nearly", 60, 100, 40, 50, 10, List.of(keeps(0.24)))))
                .containsExactly("nearly", "small and tight");
    }

    @Test
    void ratherTooLoudThanWithoutRoomToGrowUnlessQuietIsWishedFirst() {
        Of loud = quiet("too loud", 50, 100, Limit.NOISE.broken(50, 45));
        Of tight = quiet("tight", 40, 100, keeps(0.1));

        assertThat(ranked(List.of(), tight, loud)).containsExactly("too loud", "tight");
        assertThat(ranked(List.of(Wish.QUIETEST, Wish.RESERVE), loud, tight)).containsExactly("tight", "too loud");
    }

    /** Though it is in the same step of 3 dB as one that is within the limit. */
    @Test
    void whoeverIsTooLoudStandsBehindAllThatAreNotWhereQuietIsWishedFirst() {
        assertThat(ranked(
                        List.of(Wish.QUIETEST, Wish.RESERVE, Wish.CHEAPEST),
                        quiet("too loud", 46, 10, Limit.NOISE.broken(46, 45)),
                        quiet("just bearable", 44.9, 500)))
                .containsExactly("just bearable", "too loud");
    }

    @Test
    void wishesThatAreNotSaidFollowThoseThatAre() {
        assertThat(Wish.whole(List.of(Wish.LONGEST_LIVED, Wish.QUIETEST)))
                .containsExactly(
                        Wish.RESERVE,
                        Wish.LONGEST_LIVED,
                        Wish.QUIETEST,
                        Wish.SMALLEST,
                        Wish.CHEAPEST,
                        Wish.CHEAPEST_TO_RUN);
        assertThat(Wish.whole(List.of(Wish.CHEAPEST, Wish.RESERVE))).startsWith(Wish.CHEAPEST, Wish.RESERVE);
    }

    /** A comparison that ran in a circle would give an order that depends on where one began. */
    @Property(tries = 200)
    void theOrderIsTheSameWhereverOneBegins(@ForAll Random random) {
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            all.add(any("no. " + i, random).candidate());
        }
        List<Wish> order = new ArrayList<>(Arrays.asList(Wish.values()));
        Collections.shuffle(order, random);
        List<String> before = ranked(order, all);
        Collections.shuffle(all, random);

        assertThat(ranked(order, all)).isEqualTo(before);
    }

    private static Of any(String id, Random random) {
        double dba = 30 + 25 * random.nextDouble();
        List<Limit.Broken> broken = new ArrayList<>();
        if (dba > 45) {
            broken.add(Limit.NOISE.broken(dba, 45));
        }
        if (random.nextBoolean()) {
            broken.add(keeps(0.25 * random.nextDouble()));
        }
        return new Of(
                id,
                40 + 100 * random.nextDouble(),
                100 * random.nextInt(4),
                random.nextInt(5) == 0 ? 0 : dba,
                50 + 50 * random.nextDouble(),
                4 + 8 * random.nextDouble(),
                broken);
    }
}
