package lungfish.desktop;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BlowerEdits;
import lungfish.edit.Edit;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.sizing.Candidate;

/** The blowers that could serve the room, the best first, each with its verdict; the room's own machines among them. */
final class BlowerSheet extends SideSheet {
    private final DefaultListModel<Candidate> candidates = new DefaultListModel<>();
    private final JList<Candidate> list = new JList<>(candidates);
    private final JButton take = new JButton("Take it");
    private final JButton letChoose = new JButton("Let the plan choose");
    private final Paragraph stands;

    BlowerSheet(View view, Side side) {
        super(view, side, "Choose the blower");
        stands = new Paragraph(view, Type::body, Palette::softInk, this::innerPx);
        add(stands, "growx");
        candidateList();
        JScrollPane pane = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.getVerticalScrollBar().setUnitIncrement(24);
        add(pane, "grow, push, hmin 0");
        take.setName("take");
        take.addActionListener(event -> take());
        letChoose.addActionListener(event -> choose(BlowerEdits.letThePlanChoose()));
        add(take, "split 2, growx");
        add(letChoose, "growx");
        view.follow(this, this::tell);
    }

    private void candidateList() {
        list.setName("candidates");
        list.getAccessibleContext().setAccessibleName("Blowers, the best first");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new CandidateCell(view(), this::isTaken, () -> innerPx() - view().px(24)));
        list.addListSelectionListener(event -> take.setEnabled(!list.isSelectionEmpty()));
        Keys.bind(list, "ENTER", this::take);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    take();
                }
            }
        });
    }

    private void tell() {
        List<Candidate> now = view().plan().map(Plan::candidates).orElse(List.of());
        int at = list.getSelectedIndex();
        String chosen =
                at >= 0 && at < candidates.size() ? candidates.get(at).kind().id() : "";
        candidates.clear();
        candidates.addAll(now);
        for (int i = 0; i < now.size(); i++) {
            if (now.get(i).kind().id().equals(chosen)) {
                list.setSelectedIndex(i);
            }
        }
        take.setEnabled(!list.isSelectionEmpty());
        list.setBackground(view().look().palette().sheet());
        boolean isLeftToPlan =
                view().plan().flatMap(Plan::duty).map(Duty::recommended).orElse(true);
        letChoose.setEnabled(!isLeftToPlan);
        stands.setText(
                now.isEmpty()
                        ? "The room cannot be solved yet, so no blower can be judged: see what must be mended first."
                        : count(now)
                                + (isLeftToPlan
                                        ? " The plan chooses the first."
                                        : " You chose the one that is marked."));
    }

    private static String count(List<Candidate> all) {
        long fit = all.stream().filter(Candidate::fits).count();
        return fit + " of " + all.size() + " classes fit, tired and with devices due for cleaning."
                + " On its curve: ○ needed, ● where it runs.";
    }

    /** Whether the current plan runs on it. */
    private boolean isTaken(Candidate candidate) {
        return view().plan()
                .flatMap(Plan::duty)
                .map(duty -> duty.candidate().fleet().placed().stream()
                        .map(placed -> placed.machine().kind().id())
                        .collect(Collectors.toCollection(TreeSet::new)))
                .map((Set<String> kinds) -> kinds.contains(candidate.kind().id()))
                .orElse(false);
    }

    private void take() {
        Candidate chosen = list.getSelectedValue();
        if (chosen != null) {
            choose(BlowerEdits.choose(chosen.kind()));
        }
    }

    private void choose(Edit edit) {
        view().desk().apply(edit);
    }

    @Override
    void takeFocus() {
        list.requestFocusInWindow();
        if (list.isSelectionEmpty() && !candidates.isEmpty()) {
            list.setSelectedIndex(0);
        }
    }

    /** What the room says of its bleed. */
    static Blower.Bleed bleed(View view) {
        List<Blower> planned = view.desk().room().blowers(Blower.Role.PLANNED);
        return planned.isEmpty() ? new Blower.Unsaid() : planned.get(0).bleed();
    }
}
