package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.Executor;
import java.util.stream.IntStream;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.document.Document;
import lungfish.document.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about rows that stand on a sheet while what they say changes. */
final class DocumentViewTest {
    private static final int MANY = 300;

    private final Queue<Runnable> waiting = new ArrayDeque<>();
    private final DocumentView document;
    private boolean isQueued;

    DocumentViewTest(@TempDir Path folder) {
        Hands caller = Hands.ofTheCaller();
        Hands hands = new Hands(this::front, caller.planning(), caller.disk(), caller.keeping(), caller.ahead());
        View view = new Bench(Desks.in(folder, hands), "starting-out").pane().view();
        document = new DocumentView(view, () -> 400, (step, day) -> {});
    }

    /** As an event queue does, once that is wished; {@link Executor} of the front. */
    private void front(Runnable work) {
        if (isQueued) {
            waiting.add(work);
        } else {
            work.run();
        }
    }

    private void workOff() {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    private static List<Document.Section> steps(int many, String detail) {
        List<Part.Step> steps = IntStream.range(0, many)
                .mapToObj(i -> new Part.Step("step:" + i, "Open valve " + i, detail, "", Optional.empty()))
                .toList();
        return List.of(new Document.Section("start", "First start", false, List.of(new Part.Checklist(steps))));
    }

    @Test
    void rowsThatSayTheSameStayAndOthersAreToldAnew() {
        document.show(steps(40, "slowly"));
        Component[] before = document.getComponents();
        document.show(steps(40, "at once"));
        assertThat(document.getComponents()).isEqualTo(before);
        assertThat(Parts.all(document).filter(Paragraph.class::isInstance).map(each -> ((Paragraph) each).getText()))
                .contains("at once")
                .doesNotContain("slowly");
    }

    @Test
    void rowsThatAreNoLongerThereGo() {
        document.show(steps(40, "slowly"));
        document.show(steps(3, "slowly"));
        assertThat(document.getComponentCount()).isEqualTo(1 + 3); // with the title
    }

    /** A hall has hundreds of steps: what is typed and drawn meanwhile is heard between them. */
    @Test
    void manyRowsComeInTurnsAndAllOfThemInTheEnd() {
        isQueued = true;
        document.show(steps(MANY, "slowly"));
        assertThat(document.getComponentCount()).isPositive().isLessThan(MANY / 3);
        workOff();
        assertThat(document.getComponentCount()).isEqualTo(1 + MANY);
    }

    @Test
    void whatIsNewerIsShownInPlaceOfWhatWaits() {
        isQueued = true;
        document.show(steps(MANY, "slowly"));
        document.show(steps(2, "at once"));
        workOff();
        assertThat(document.getComponentCount()).isEqualTo(1 + 2);
    }
}
