package lungfish.desktop;

import java.awt.Insets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * Over the column beside the room: in the first row the panels at a glance and the questions of living with the air, in the
 * second those that are asked before choosing what gives it, in the third what is done with hands.
 */
final class SideTabs extends JPanel {
    private final JToggleButton glance = new JToggleButton("Now");
    private final Map<Question, JToggleButton> questions = new EnumMap<>(Question.class);
    private final ButtonGroup group = new ButtonGroup();

    SideTabs(View view, Side side) {
        super(new MigLayout("insets 0, fillx, wrap 1, gap 0 2", "[grow, fill]"));
        setOpaque(false);
        Map<Question.Row, JPanel> rows = new EnumMap<>(Question.Row.class);
        for (Question.Row each : Question.Row.values()) {
            rows.put(each, row());
        }
        getAccessibleContext().setAccessibleName("Questions");
        tab(row(rows, Question.Row.LIVING), glance, "The panels at a glance (Esc)", side::close);
        for (Question question : Question.values()) {
            JToggleButton tab = new JToggleButton(question.word());
            questions.put(question, tab);
            tab(
                    row(rows, question.row()),
                    tab,
                    question.says() + Keys.inBrackets(question.key()),
                    () -> side.ask(question));
        }
        view.follow(this, () -> {
            glance.setFont(view.look().type().label());
            questions.values().forEach(tab -> tab.setFont(view.look().type().label()));
        });
        tell(Optional.empty(), false);
    }

    private static JPanel row(Map<Question.Row, JPanel> rows, Question.Row which) {
        return Objects.requireNonNull(rows.get(which));
    }

    private JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, gap 2 0", "[grow, fill]"));
        row.setOpaque(false);
        add(row, "growx, wmin 0");
        return row;
    }

    private void tab(JPanel row, JToggleButton tab, String tip, Runnable does) {
        tab.setName("side-" + tab.getText());
        tab.setToolTipText(tip);
        tab.setMargin(new Insets(2, 4, 2, 4));
        tab.addActionListener(event -> does.run());
        group.add(tab);
        row.add(tab, "wmin 0");
    }

    /** What is shown below: a question, another sheet, or the panels. */
    void tell(Optional<Question> question, boolean isOtherSheet) {
        group.clearSelection();
        question.map(questions::get).ifPresent(tab -> tab.setSelected(true));
        glance.setSelected(question.isEmpty() && !isOtherSheet);
    }
}
