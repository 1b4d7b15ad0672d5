package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.oxygen.TankTime;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds what a card tells to do against what the room has. */
final class DrillCardsTest {
    private static final Quantities METRIC = Quantities.in(DisplayUnits.METRIC);

    private static DrillCard card(Plan plan) {
        return DrillCards.of(plan, DemoPlans.CATALOGUE, METRIC);
    }

    private static DrillCard card(String demo, UnaryOperator<Backup> change) {
        Room room = DemoPlans.room(demo);
        return card(new Planner(DemoPlans.CATALOGUE).plan(room.withBackup(change.apply(room.backup()))));
    }

    private static List<String> actions(DrillCard card, int part) {
        return card.parts().get(part).steps().stream()
                .map(DrillCard.Step::action)
                .toList();
    }

    private static String details(DrillCard card) {
        return card.parts().stream()
                .flatMap(part -> part.steps().stream())
                .toList()
                .toString();
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void theFirstTankIsTheOneThatThePlanNames(String demo) {
        Plan plan = DemoPlans.plan(demo);
        TankTime first = plan.airless().first().orElseThrow();
        DrillCard card = card(plan);
        assertThat(card.tanks().get(0).name()).isEqualTo(first.tank().name());
        assertThat(card.clock().saying()).contains(first.tank().name());
        assertThat(card.tanks().get(0).danger().s())
                .isLessThanOrEqualTo(first.cautiousS().orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everyTankInPlaceIsCounted(String demo) {
        Plan plan = DemoPlans.plan(demo);
        DrillCard card = card(plan);
        long inPlace = plan.room().racks().stream()
                .filter(rack -> !rack.isPlanned())
                .flatMap(rack -> rack.tanks())
                .count();
        assertThat(card.tanks().size() + card.later() + card.safe() + card.unjudged())
                .isEqualTo((int) inPlace);
    }

    @Test
    void tanksStandInTheOrderOfTheirDanger() {
        List<DrillCard.TankRow> tanks = card(DemoPlans.plan("club-hall")).tanks();
        assertThat(tanks).hasSize(12).extracting(tank -> tank.danger().s()).isSorted();
        assertThat(tanks).allMatch(tank -> tank.alarm().s() <= tank.danger().s());
        assertThat(tanks).allMatch(tank -> tank.danger().s() <= tank.likely().s());
    }

    /** Down to the minute, from an hour on to five, from ten to the hour. By hand. */
    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
            # s, said, in a column
            59, at once, 0:00
            179, 2 min, 0:02
            3599, 59 min, 0:59
            3600, 1 h, 1:00
            4199, 1 h 5 min, 1:05
            35999, 9 h 55 min, 9:55
            52199, 14 h, 14:00
            172799, 47 h, 47:00
            """)
    void timesAreRoundedDown(double s, String said, String brief) {
        DrillTimes times = new DrillTimes(
                DemoPlans.room("starting-out"), DemoPlans.plan("starting-out").airless(), METRIC);
        DrillCard.Moment moment = times.moment(OptionalDouble.of(s));
        assertThat(moment.said()).isEqualTo(said);
        assertThat(moment.brief()).isEqualTo(brief);
        assertThat(moment.s()).isLessThanOrEqualTo(s);
    }

    @Test
    void whereNothingIsAtHandOnePoursByHand() {
        DrillCard card = card("starting-out", backup -> Backup.NONE);
        assertThat(actions(card, 1)).contains("Aerate by hand");
        assertThat(actions(card, 2)).contains("Aerate by hand");
        assertThat(card.atHand()).extracting(DrillCard.Have::what).containsExactly("Nothing");
    }

    @Test
    void theValveThatShedsAndWhoTurnsItAreNamed() {
        DrillCard card = card(DemoPlans.plan("club-hall"));
        assertThat(actions(card, 1)).contains("Shut all but essential", "Start the generator");
        assertThat(details(card))
                .contains("The ball valves at the ends of the two cross pipes", "Whoever holds the key of the hall");
    }

    @Test
    void aStandbyByHandIsStartedAndOneByItselfIsLookedAt() {
        DrillCard byHand = card("club-hall", backup -> backup.withStandby(Optional.empty()));
        DrillCard itself = card(
                "club-hall",
                backup -> backup.withStandby(
                        Optional.of(new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.empty()))));
        assertThat(actions(byHand, 2)).first().isEqualTo("Start the standby");
        assertThat(actions(itself, 2)).first().isEqualTo("Check the standby");
    }

    @Test
    void aGeneratorThatCannotStartTheBlowerIsNotSaidToCarryIt() {
        DrillCard card = card(
                "club-hall",
                backup -> backup.withGenerator(Optional.of(
                        new Backup.Generator(OptionalDouble.of(50), OptionalDouble.of(3600), OptionalDouble.empty()))));
        assertThat(details(card)).contains("Too small to start the air");
    }

    @Test
    void aFuelTimeThatNobodySaidIsSaidToBeAssumed() {
        DrillCard card = card("club-hall", backup -> backup.withGenerator(Optional.of(Backup.Generator.UNKNOWN)));
        assertThat(details(card)).contains("Fuel for 8 h (assumed)");
    }

    @Test
    void batteryPumpsAreLookedAtWhenTheMainsFailAndSwitchedOnWhenABlowerStops() {
        DrillCard card = card(
                "garage-killifish",
                backup -> backup.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-medium", 3))));
        assertThat(actions(card, 1)).contains("Check the battery pumps").doesNotContain("Aerate by hand");
        assertThat(actions(card, 2)).contains("Switch battery pumps on");
        assertThat(details(card)).contains("3 of them, 12 h each"); // runtime_h of the class in backup-gear.csv
    }

    /** US CPSC: a portable generator runs outside only, at least 20 feet from the house; 20 ft are 6.1 m. */
    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void whereHelpCanHurtIsSaidOnEveryCard(String demo) {
        String cautions = String.join(" ", card(DemoPlans.plan(demo)).cautions());
        assertThat(cautions)
                .contains(
                        "20 ft (6 m) from the house",
                        "outdoors only",
                        "Mains beside water",
                        "ventilated",
                        "Local codes");
    }

    @Test
    void aRoomWithEverythingStillHasACard() {
        DrillCard card = card(
                "club-hall",
                backup -> backup.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-large", 40))));
        assertThat(DemoPlans.room("club-hall").blowers(Blower.Role.STANDBY)).isNotEmpty();
        assertThat(card.parts().stream().mapToInt(part -> part.steps().size()).sum())
                .isBetween(10, DrillCard.MOST_STEPS);
    }

    @Test
    void actionsAreShortEnoughToBeReadFromAfar() {
        DemoPlans.names()
                .map(demo -> card(DemoPlans.plan(demo)))
                .flatMap(card -> card.parts().stream())
                .flatMap(part -> part.steps().stream())
                .forEach(step -> assertThat(step.action()).hasSizeLessThanOrEqualTo(26));
    }
}
