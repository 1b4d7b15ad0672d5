package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import lungfish.drawing.OxygenLaid;
import lungfish.outage.Failing;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.room.TankId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet on which the air stops: the basement has a battery, and 70 outlets in place. */
final class OutageSheetTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.OUTAGE);
    }

    private String text(String name) {
        return bench.part(JTextArea.class, name).getText();
    }

    private OxygenLaid laid() {
        return bench.pane().view().breathing().orElseThrow();
    }

    private OutageLine line() {
        return bench.part(OutageLine.class, "outage-line");
    }

    private void press(String key) {
        line().getActionForKeyStroke(KeyStroke.getKeyStroke(key)).actionPerformed(new ActionEvent(line(), 0, ""));
    }

    @SuppressWarnings("unchecked")
    private JList<TankDrill> tanks() {
        return bench.part(JList.class, "outage-tanks");
    }

    private List<TankDrill> listed() {
        List<TankDrill> all = new ArrayList<>();
        for (int i = 0; i < tanks().getModel().getSize(); i++) {
            all.add(tanks().getModel().getElementAt(i));
        }
        return all;
    }

    @SuppressWarnings("unchecked")
    private void fails(Failing.Kind kind) {
        Choice<Failing.Kind> kinds = bench.part(Choice.class, "What fails");
        kinds.choose(kind::equals);
    }

    private Failing what() {
        return laid().played().drill().scene().what();
    }

    @Test
    void theFirstTankInTroubleIsToldWithBothFigures() {
        String first = laid().played().drill().first().orElseThrow().tank().name();
        assertThat(text("outage-headline"))
                .startsWith(first + ": danger after ")
                .containsSubsequence(" at worst, ", "likely ");
        assertThat(text("outage-because")).contains("The battery carries all 70 outlets until ");
    }

    @Test
    void itSaysThatTheseAreEstimates() {
        assertThat(Parts.all(bench.pane().side()).filter(Line.class::isInstance).map(part -> ((Line) part).getText()))
                .contains("Estimates to plan by: watch the fish.");
    }

    @Test
    void theListIsInTheOrderOfTroubleAndNamesWhatNobodyCanJudge() {
        assertThat(listed()).hasSize(8);
        bench.part(JButton.class, "outage-all").doClick(0);
        List<Double> danger = listed().stream()
                .map(tank -> tank.dangerS(Case.CAUTIOUS).orElse(Double.POSITIVE_INFINITY))
                .toList();
        assertThat(danger).isSorted();
        assertThat(listed()).hasSize(laid().played().drill().tanks().size());
        TankDrill last = listed().get(listed().size() - 1);
        assertThat(last.isJudged()).isFalse();
        assertThat(tanks().getCellRenderer()
                        .getListCellRendererComponent(tanks(), last, 0, false, false)
                        .getAccessibleContext()
                        .getAccessibleName())
                .contains("not judged: tell who lives there");
    }

    @Test
    void aTankOfTheListIsLedToOnTheDrawing() {
        tanks().setSelectedIndex(2);
        tanks().getActionForKeyStroke(KeyStroke.getKeyStroke("ENTER")).actionPerformed(new ActionEvent(tanks(), 0, ""));
        TankId third = listed().get(2).tank().id();
        assertThat(bench.pane().view().chosen()).contains(third.part());
    }

    /** 24 h are looked at, in 96 steps of a quarter of an hour. */
    @Test
    void keysMoveTheTime() {
        press("RIGHT");
        press("RIGHT");
        assertThat(laid().atS()).isEqualTo(1800);
        press("PAGE_DOWN");
        assertThat(laid().atS()).isEqualTo(1800 + 6 * 900);
        press("END");
        assertThat(laid().atS()).isEqualTo(24 * 3600);
        press("RIGHT");
        assertThat(laid().atS()).isEqualTo(24 * 3600);
        press("HOME");
        assertThat(laid().atS()).isZero();
        assertThat(text("outage-now"))
                .startsWith("As it fails: all 70 outlets, with air from the battery; battery 100 %");
    }

    @Test
    void theTimeIsPlayedStepByStepAndStopsAtTheEnd() {
        OutagePlayer player = (OutagePlayer) Parts.all(bench.pane().side())
                .filter(OutagePlayer.class::isInstance)
                .findFirst()
                .orElseThrow();
        player.frame();
        double step = laid().atS();
        assertThat(step).isPositive();
        press("END");
        bench.part(JButton.class, "play").doClick(0);
        assertThat(player.isPlaying()).isTrue();
        assertThat(player.atS()).isZero(); // played again from the beginning
        player.go(24 * 3600);
        player.frame();
        assertThat(player.isPlaying()).isFalse();
    }

    @Test
    void whoLeavesTheSheetStopsThePlayAndTakesTheOxygenAway() {
        OutagePlayer player = (OutagePlayer) Parts.all(bench.pane().side())
                .filter(OutagePlayer.class::isInstance)
                .findFirst()
                .orElseThrow();
        player.playOrPause();
        bench.pane().addNotify(); // as in a frame: what is shown hears of every change
        bench.part(JButton.class, "back").doClick(0);
        assertThat(player.isPlaying()).isFalse();
        assertThat(bench.pane().view().breathing()).isEmpty();
    }

    @Test
    void theDrawingShowsWhatIsLikelyWhereAsked() {
        assertThat(laid().how()).isEqualTo(Case.CAUTIOUS);
        bench.part(JToggleButton.class, "outage-likely").doClick(0);
        assertThat(laid().how()).isEqualTo(Case.LIKELY);
    }

    @Test
    void aShorterTimeIsLookedAt() {
        bench.part(JButton.class, "ahead-6").doClick(0);
        assertThat(laid().played().drill().scene().untilS()).isEqualTo(6 * 3600);
        assertThat(bench.part(QuantityField.class, "until").getText()).isEqualTo("6 h");
    }

    @Test
    void aTimeThatNobodyLooksAtIsRefusedAndStays() {
        QuantityField until = bench.part(QuantityField.class, "until");
        until.setText("3 s");
        until.take();
        assertThat(until.trouble()).startsWith("Look ahead for 10 min to ");
        assertThat(until.getText()).isEqualTo("3 s");
        assertThat(laid().played().drill().scene().untilS()).isEqualTo(24 * 3600);
    }

    /** The battery is not yet empty then. */
    @Test
    void whereTheMainsComeBackSoonNoTankComesIntoDanger() {
        QuantityField back = bench.part(QuantityField.class, "back");
        back.setText("2 h");
        back.take();
        assertThat(text("outage-headline")).isEqualTo("No tank comes into danger in 24 h");
    }

    @Test
    void whatIsChosenOnTheDrawingIsWhatFails() {
        bench.pane().view().choose(laid().played().drill().needs().get(7).id().part());
        fails(Failing.Kind.AIRLINE_OFF);
        assertThat(what())
                .isEqualTo(new Failing.AirlineOff(
                        laid().played().drill().needs().get(7).id()));
    }

    @Test
    void aRoomInWhichNothingGivesAirSaysWhatToDraw() {
        bench = new Bench(folder, "starting-out");
        bench.act(NewRoom.class);
        bench.ask(Question.OUTAGE);
        assertThat(text("outage-headline")).isEqualTo("Nothing can fail yet");
        assertThat(text("outage-because")).contains("Draw tanks");
        assertThat(bench.pane().view().breathing()).isEqualTo(Optional.empty());
    }
}
