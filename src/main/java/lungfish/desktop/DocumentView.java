package lungfish.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiConsumer;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import lungfish.document.Document;
import lungfish.drawing.Look;
import net.miginfocom.swing.MigLayout;

/**
 * Sections of a document on a sheet of the window: the words that stand on paper, with boxes that can be ticked. Rows that say
 * what they said stay as they are, and many new ones come a few at a time, so that a hall's checklist holds nothing up.
 */
final class DocumentView extends JPanel {
    /** So many rows are made or told anew in one go; they take some tens of milliseconds. */
    private static final int AT_ONCE = 24;

    private static final int GAP = 6;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient DocumentRows rows;
    private final transient Executor front;
    private final transient List<DocumentRows.Row> shown = new ArrayList<>();
    private transient Optional<Dress> dress = Optional.empty();
    private transient Optional<String> held = Optional.empty();
    private int round;

    /** What rows are made for: with another look or width they are made anew. */
    private record Dress(Look look, int widthPx) {}

    /**
     * Nothing yet.
     *
     * @param ticks takes the key of a step, and the day on which it was done; empty: not done after all
     */
    DocumentView(View view, IntSupplier widthPx, BiConsumer<String, Optional<LocalDate>> ticks) {
        super(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view.px(GAP), "[grow, fill]"));
        this.view = view;
        this.widthPx = widthPx;
        this.rows = new DocumentRows(view, widthPx, ticks);
        this.front = view.desk().shared().hands().front();
        setOpaque(false);
    }

    /** Shows these from now on; what had the focus has it again, where it is still there. */
    void show(List<Document.Section> sections) {
        held = held().or(() -> held);
        Dress now = new Dress(view.look(), widthPx.getAsInt());
        if (!dress.equals(Optional.of(now))) {
            dress = Optional.of(now);
            shown.clear();
            removeAll();
        }
        round++;
        goOn(DocumentRows.items(sections), 0, round);
    }

    /** From the row of that number; nothing, when something newer is to be shown. */
    private void goOn(List<DocumentRows.Item> items, int from, int number) {
        if (number != round) {
            return;
        }
        int changed = 0;
        int at = from;
        while (at < items.size() && changed < AT_ONCE) {
            changed += put(at, items.get(at)) ? 1 : 0;
            at++;
        }
        int next = at;
        if (next < items.size()) {
            front.execute(() -> goOn(items, next, number));
        } else {
            dropFrom(items.size());
            giveFocusBack();
        }
        if (changed > 0) {
            revalidate();
            repaint();
        }
    }

    /** Whether anything had to be done for it. */
    private boolean put(int at, DocumentRows.Item item) {
        Optional<DocumentRows.Row> there = at < shown.size() ? Optional.of(shown.get(at)) : Optional.empty();
        if (there.filter(row -> row.item().equals(item)).isPresent()) {
            return false;
        }
        Optional<DocumentRows.Row> told = there.flatMap(row -> rows.tell(row, item));
        if (told.isPresent()) {
            shown.set(at, told.get());
            return true;
        }
        dropFrom(at);
        DocumentRows.Row row = rows.row(item);
        shown.add(row);
        add(row.part(), rows.constraints(item));
        return true;
    }

    private void dropFrom(int size) {
        while (shown.size() > size) {
            remove(shown.remove(shown.size() - 1).part());
            revalidate();
            repaint();
        }
    }

    private void giveFocusBack() {
        held.flatMap(name ->
                        inside(this).filter(each -> name.equals(each.getName())).findFirst())
                .filter(each -> !each.isFocusOwner())
                .ifPresent(Component::requestFocusInWindow);
        held = Optional.empty();
    }

    private Optional<String> held() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Optional.ofNullable(owner)
                .filter(that -> SwingUtilities.isDescendingFrom(that, this))
                .map(Component::getName);
    }

    private static Stream<Component> inside(Container holder) {
        return Stream.of(holder.getComponents())
                .flatMap(each -> each instanceof Container more
                        ? Stream.concat(Stream.of(each), inside(more))
                        : Stream.of(each));
    }
}
