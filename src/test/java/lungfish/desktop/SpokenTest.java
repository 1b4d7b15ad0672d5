package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import lungfish.desk.Trouble;
import lungfish.json.Problem;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Facts about what a program that reads the screen aloud finds in a window, with each sheet opened in it. */
final class SpokenTest {
    private static final Trouble TROUBLE = new Trouble("not done", List.of(new Problem("/name", "7", "a text")));

    private static final List<AccessibleRole> NO_ROLES =
            List.of(AccessibleRole.UNKNOWN, AccessibleRole.SWING_COMPONENT, AccessibleRole.AWT_COMPONENT);

    @TempDir
    private Path folder;

    /** What is open. */
    enum Open {
        PANELS,
        BLOWERS,
        SURE,
        COMPARED,
        DATA_SHEET,
        TODAY,
        GROWTH,
        SHUT,
        CONDITIONS,
        BACKUP,
        WHY,
        TROUBLE,
        PIPES,
        IMPORT,
        RACK,
        EMPTY_ROOM
    }

    private static void open(Open what, Bench bench) {
        Side side = bench.pane().side();
        switch (what) {
            case PANELS -> {}
            case BLOWERS -> bench.ask(Question.BLOWERS);
            case SURE -> bench.ask(Question.SURE);
            case COMPARED -> {
                bench.ask(Question.BLOWERS);
                BenchList list = bench.part(BenchList.class, "candidates");
                list.mark(list.getModel().getElementAt(0));
                list.mark(list.getModel().getElementAt(1));
                bench.part(JButton.class, "compare").doClick(0);
            }
            case DATA_SHEET -> {
                bench.ask(Question.BLOWERS);
                bench.part(JButton.class, "data-sheet").doClick(0);
            }
            case TODAY -> bench.ask(Question.TODAY);
            case GROWTH -> bench.ask(Question.GROWTH);
            case SHUT -> {
                bench.pane()
                        .view()
                        .choose(bench.desk().room().racks().get(0).id().part());
                bench.act(ShutChosen.class);
            }
            case CONDITIONS -> bench.act(SetConditions.class);
            case BACKUP -> bench.act(SayBackup.class);
            case WHY -> side.ask(Subject.NOISE);
            case PIPES -> bench.ask(Question.PIPES);
            case TROUBLE -> side.open(new TroubleSheet(bench.pane().view(), side, TROUBLE));
            case IMPORT -> {
                TextClip.put("Tank,Size\nOne,20 gal long\nTwo,large\n");
                bench.pane().imports().paste();
            }
            case RACK ->
                bench.pane()
                        .center()
                        .openRack(bench.desk().room().racks().get(0).id());
            case EMPTY_ROOM -> bench.act(NewRoom.class);
        }
    }

    private Stream<Component> parts(Open open) {
        Bench bench = new Bench(folder, "basement-rainbows");
        open(open, bench);
        return Parts.all(bench.pane());
    }

    /** Everything that one can act upon is called something. */
    @ParameterizedTest
    @EnumSource
    void everyControlHasAName(Open open) {
        List<Component> controls = parts(open).filter(SpokenTest::isControl).toList();
        assertThat(controls).isNotEmpty();
        assertThat(controls.stream().filter(part -> name(part).isBlank()).map(SpokenTest::described))
                .isEmpty();
    }

    private static boolean isControl(Component part) {
        boolean isOfAKind = part instanceof AbstractButton
                || part instanceof JTextComponent
                || part instanceof JList
                || part instanceof JTable
                || part instanceof Canvas;
        return isOfAKind && part.isFocusable() && !isPieceOfAScrollBar(part);
    }

    private static boolean isPieceOfAScrollBar(Component part) {
        return part.getParent() instanceof javax.swing.JScrollBar;
    }

    private static String name(Component part) {
        return Optional.ofNullable(part.getAccessibleContext())
                .map(AccessibleContext::getAccessibleName)
                .orElse("");
    }

    private static String described(Component part) {
        List<String> path = new ArrayList<>();
        for (Component at = part; at != null; at = at.getParent()) {
            path.add(0, at.getClass().getSimpleName());
        }
        return String.join(" > ", path);
    }

    /** What the window paints itself says that it is a drawing, and of what. */
    @ParameterizedTest
    @EnumSource
    void everyPartOfOurOwnHasARole(Open open) {
        List<String> mute = parts(open)
                .filter(part -> part.getClass().getName().startsWith("lungfish."))
                .filter(part -> !isSpoken(part))
                .map(SpokenTest::described)
                .toList();
        assertThat(mute).isEmpty();
    }

    private static boolean isSpoken(Component part) {
        AccessibleContext spoken = part.getAccessibleContext();
        return spoken != null
                && !NO_ROLES.contains(spoken.getAccessibleRole())
                && (spoken.getAccessibleRole() != AccessibleRole.CANVAS
                        || !name(part).isBlank());
    }
}
