package lungfish.desktop;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.plan.Plan;
import lungfish.reason.Finding;
import lungfish.reason.PartId;

/** What the plan finds, the gravest first. A click, or Enter, leads to the place. */
final class FindingsList extends JList<Finding> {
    private final transient View view;
    private final transient Consumer<PartId> leadTo;
    private final DefaultListModel<Finding> findings = new DefaultListModel<>();
    private transient List<Finding> shown = List.of();
    private boolean isOpen;

    FindingsList(View view, Consumer<PartId> leadTo) {
        this.view = view;
        this.leadTo = leadTo;
        setModel(findings);
        setName("findings");
        getAccessibleContext().setAccessibleName("Findings");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new FindingCell(view));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                lead();
            }
        });
        Keys.bind(this, "ENTER", this::lead);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                measure();
            }
        });
        view.onChange(this::tell);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true; // sentences wrap
    }

    /** Whether it is looked at: sentences that nobody sees are not measured, so that a drag is not held up by them. */
    void open(boolean isLookedAt) {
        isOpen = isLookedAt;
        tell();
    }

    private void tell() {
        if (!isOpen) {
            return;
        }
        List<Finding> now = view.plan().map(Plan::findings).orElse(List.of());
        if (!now.equals(shown)) {
            shown = now;
            findings.clear();
            findings.addAll(now);
        }
        setBackground(view.look().palette().sheet());
        measure();
        repaint();
    }

    /** Cells are as high as their text at this width: the list forgets the heights it knew. */
    private void measure() {
        setFixedCellHeight(1);
        setFixedCellHeight(-1);
    }

    private void lead() {
        Finding chosen = getSelectedValue();
        if (chosen != null) {
            leadTo.accept(chosen.where());
            view.led().by(chosen);
        }
    }
}
