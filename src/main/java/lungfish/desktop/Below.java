package lungfish.desktop;

import java.awt.CardLayout;
import java.awt.Insets;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import lungfish.drawing.Shown;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.reason.Severity;
import lungfish.room.OutletId;
import net.miginfocom.swing.MigLayout;

/** The sheet below the room: the outlets as a table, the findings as a list, what is assumed, or what is chosen as fields. */
final class Below extends Sheet {
    private static final int WIDEST_TAB = 260;

    /** Not larger with larger text: the tray below needs the room then. */
    private static final int LEAST_TABLE = 60;

    private static final String OUTLETS = "outlets";
    private static final String FINDINGS = "findings";
    private static final String CHOSEN = "chosen";
    private static final String ASSUMED = "assumed";

    private final transient View view;
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JPanel head = new JPanel();
    private final JToggleButton outletsTab = new JToggleButton();
    private final JToggleButton findingsTab = new JToggleButton();
    private final JToggleButton assumedTab = new JToggleButton();
    private final JToggleButton chosenTab = new JToggleButton();
    private final JTextField filter = new JTextField();
    private final JCheckBox asSet = new JCheckBox("as it is set");
    private final OutletsTable table;
    private final FindingsList findings;
    private final AssumedSheet assumed;
    private final ChosenSheet chosen;
    private boolean isTight;

    Below(View view, Consumer<PartId> leadTo, BiConsumer<OutletId, OutletColumn> whyAsked) {
        super(view, new MigLayout("insets 8 12 10 12, fill, wrap 1, gap 0 6", "[grow, fill]", "[][grow, fill]"));
        this.view = view;
        this.table = new OutletsTable(view, new OutletsModel(), leadTo, whyAsked);
        this.findings = new FindingsList(view, leadTo);
        this.assumed = new AssumedSheet(view, leadTo);
        this.chosen = new ChosenSheet(view);
        middle.setOpaque(false);
        middle.add(outlets(), OUTLETS);
        middle.add(scrolling(findings), FINDINGS);
        middle.add(assumed, ASSUMED);
        middle.add(chosen, CHOSEN);
        fillHead();
        add(head);
        add(middle, "grow, hmin 0");
        view.onChange(this::tell);
        view.onMark(this::tellChosen);
    }

    /** The table, and below it what can be done there. */
    private JPanel outlets() {
        JPanel outlets = new JPanel(new MigLayout(
                "insets 0, fill, wrap 1, gap 0 2",
                "[grow, fill]",
                "[grow, fill, shp 200][]")); // the table gives way first
        outlets.setOpaque(false);
        outlets.add(scrolling(table), "grow, hmin " + LEAST_TABLE);
        outlets.add(new TableTray(view, table), "growx, wmin 0");
        return outlets;
    }

    private void fillHead() {
        head.setOpaque(false);
        ButtonGroup tabs = new ButtonGroup();
        tab(outletsTab, OUTLETS, tabs);
        tab(findingsTab, FINDINGS, tabs);
        tab(assumedTab, ASSUMED, tabs);
        tab(chosenTab, CHOSEN, tabs);
        outletsTab.setSelected(true);
        filter.putClientProperty("JTextField.placeholderText", "Filter outlets");
        filter.putClientProperty("JTextField.showClearButton", true);
        filter.getAccessibleContext().setAccessibleName("Filter outlets by words");
        filter.setColumns(14);
        filter.setName("filter");
        Typing.on(filter, () -> table.filter(filter.getText()));
        asSet.setName("as-set");
        asSet.setOpaque(false);
        asSet.setToolTipText("Off: every valve as it should be set. On: every valve as it is set.");
        asSet.addActionListener(
                event -> view.show(asSet.isSelected() ? Shown.AS_IT_IS_SET : Shown.AS_IT_SHOULD_BE_SET));
        layOutHead();
    }

    /** Where it is tight, what belongs to the outlets has a line of its own, and only while they are shown. */
    private void layOutHead() {
        isTight = view.isTight();
        head.removeAll();
        head.setLayout(new MigLayout(
                "insets 0, fillx, hidemode 3, gap 6 2", "[][shp 50][shp 60][shp 80][grow, right][shp 200]"));
        head.add(outletsTab);
        head.add(findingsTab, "wmin " + view.px(36));
        head.add(assumedTab, "wmin " + view.px(36));
        head.add(
                chosenTab,
                "wmin " + view.px(36) + (isTight ? ", wrap, wmax " + view.px(100) : ", wmax " + view.px(WIDEST_TAB)));
        head.add(asSet, isTight ? "spanx, split 2" : "");
        head.add(filter, isTight ? "growx, wmin 0" : "wmin " + view.px(60));
        Insets margin = isTight ? new Insets(2, 2, 2, 2) : null;
        List.of(outletsTab, findingsTab, assumedTab, chosenTab).forEach(tab -> tab.setMargin(margin));
        tellFilter();
    }

    private void tellFilter() {
        boolean outlets = outletsTab.isSelected();
        filter.setEnabled(outlets);
        filter.setVisible(outlets || !isTight);
        asSet.setVisible(outlets || !isTight);
    }

    private void tab(JToggleButton tab, String card, ButtonGroup tabs) {
        tab.setName(card + "-tab");
        tab.addActionListener(event -> show(card));
        tabs.add(tab);
    }

    private void tell() {
        if (view.isTight() != isTight) {
            layOutHead();
        }
        asSet.setSelected(view.shown() == Shown.AS_IT_IS_SET);
        outletsTab.setText(
                "Outlets " + view.plan().map(plan -> plan.outlets().size()).orElse(0));
        tellChosen();
        assumedTab.setText(AssumedSheet.count(view) + " assumed");
        String found = view.plan().map(Below::count).orElse("Findings");
        findingsTab.setText(isTight ? found.replaceFirst(" · .*", "") : found);
        findingsTab.setToolTipText(found);
        boolean toMend = view.plan().map(plan -> toMend(plan) > 0).orElse(false);
        findingsTab.setForeground(
                toMend ? view.look().palette().accent() : view.look().palette().ink());
    }

    private void tellChosen() {
        int many = view.selection().parts().size();
        String one = view.selection()
                .lead()
                .flatMap(new SmallTelling(view)::name)
                .or(() -> view.chosen().map(view.names()::of))
                .orElse("The room");
        chosenTab.setText(many > 1 ? many + " chosen" : one);
        chosenTab.setToolTipText("Everything that can be said of " + chosenTab.getText());
    }

    private static long toMend(Plan plan) {
        return plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKING || finding.severity() == Severity.WARNING)
                .count();
    }

    private static String count(Plan plan) {
        long toMend = toMend(plan);
        long others = plan.findings().size() - toMend;
        return toMend == 0 ? "Nothing to mend · " + others + " to know" : toMend + " to mend · " + others + " to know";
    }

    private void show(String card) {
        findings.open(card.equals(FINDINGS));
        assumed.open(card.equals(ASSUMED));
        cards.show(middle, card);
        outletsTab.setSelected(card.equals(OUTLETS));
        findingsTab.setSelected(card.equals(FINDINGS));
        assumedTab.setSelected(card.equals(ASSUMED));
        chosenTab.setSelected(card.equals(CHOSEN));
        tellFilter();
    }

    void showFindings() {
        show(FINDINGS);
        findings.requestFocusInWindow();
        if (findings.isSelectionEmpty()) {
            findings.setSelectedIndex(0);
        }
    }

    /** To what is assumed. */
    void showAssumed() {
        show(ASSUMED);
        assumed.takeFocus();
    }

    /** To the fields of what is chosen. */
    void showChosen() {
        show(CHOSEN);
        chosen.takeFocus();
    }

    void showOutlets() {
        show(OUTLETS);
        table.requestFocusInWindow();
    }

    OutletsTable table() {
        return table;
    }

    TableEdits edits() {
        return table.edits();
    }

    /** To the field in which outlets are looked for. */
    void find() {
        show(OUTLETS);
        filter.requestFocusInWindow();
        filter.selectAll();
    }

    /** To the table, list or fields that are shown. */
    void takeFocus() {
        if (outletsTab.isSelected()) {
            table.requestFocusInWindow();
        } else if (chosenTab.isSelected()) {
            chosen.takeFocus();
        } else if (assumedTab.isSelected()) {
            assumed.takeFocus();
        } else {
            findings.requestFocusInWindow();
        }
    }
}
