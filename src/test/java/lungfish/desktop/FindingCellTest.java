package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ContainerEvent;
import java.awt.event.ContainerListener;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JList;
import lungfish.reason.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the cell that paints every finding of the list. */
final class FindingCellTest {
    @TempDir
    private Path folder;

    /** It is asked for each finding in every frame of a drag. */
    @Test
    void oneFindingAfterTheOtherLaysOutNothingAnew() {
        View view = new Bench(folder, "club-hall").pane().view();
        FindingCell cell = new FindingCell(view);
        JList<Finding> list = new JList<>();
        List<Finding> findings = view.plan().orElseThrow().findings();
        cell.getListCellRendererComponent(list, findings.get(0), 0, false, false);
        List<ContainerEvent> heard = new ArrayList<>();
        cell.addContainerListener(new ContainerListener() {
            @Override
            public void componentAdded(ContainerEvent event) {
                heard.add(event);
            }

            @Override
            public void componentRemoved(ContainerEvent event) {
                heard.add(event);
            }
        });
        findings.forEach(finding -> cell.getListCellRendererComponent(list, finding, 0, false, false));
        assertThat(findings).hasSizeGreaterThan(1);
        assertThat(heard).isEmpty();
    }

    /** To name every part of the hall takes a millisecond: once for a plan is enough. */
    @Test
    void thePartsOfOneRoomAreNamedOnce() {
        Bench bench = new Bench(folder, "club-hall");
        View view = bench.pane().view();
        assertThat(view.names()).isSameAs(view.names());
        var before = view.names();
        bench.desk().openDemo("starting-out");
        assertThat(view.names()).isNotSameAs(before);
    }
}
