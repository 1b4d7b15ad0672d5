package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.report.SharedAssumption;

/** Everything that the plan assumes because the room does not say it, each with a field in which it can be said. */
final class AssumedSheet extends JPanel {
    private final transient View view;
    private final transient Consumer<PartId> leadTo;
    private final Stack stack = new Stack();
    private final Paragraph intro;
    private boolean isOpen;
    private transient Map<SharedAssumption, AssumedRow> rows = new LinkedHashMap<>();

    AssumedSheet(View view, Consumer<PartId> leadTo) {
        super(new BorderLayout());
        this.view = view;
        this.leadTo = leadTo;
        this.intro = new Paragraph(view, Type::body, Palette::softInk, this::innerPx);
        setName("assumed");
        getAccessibleContext().setAccessibleName("What is assumed");
        setOpaque(false);
        add(Side.scrolling(stack));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                stack.revalidate();
            }
        });
        view.onChange(this::tell);
    }

    private int innerPx() {
        return Math.max(view.px(200), getWidth() - view.px(24));
    }

    private static List<SharedAssumption> assumed(View view) {
        return SharedAssumption.of(view.plan().map(Plan::assumptions).orElse(List.of()));
    }

    /** How many things are assumed. */
    static int count(View view) {
        return assumed(view).size();
    }

    /** Whether it is looked at: fields that nobody sees wait. */
    void open(boolean isLookedAt) {
        isOpen = isLookedAt;
        tell();
    }

    /** A row that stays keeps what is being typed in it. */
    private void tell() {
        if (!isOpen) {
            return;
        }
        List<SharedAssumption> now = assumed(view);
        intro.setText(
                now.isEmpty()
                        ? "Nothing is assumed: the room says everything."
                        : "The plan takes these because the room does not say them. Say your own, or keep the value as"
                                + " your own; none of it is in the file until you do.");
        if (!List.copyOf(rows.keySet()).equals(now)) {
            fill(now);
        }
        rows.values().forEach(AssumedRow::tell);
    }

    private void fill(List<SharedAssumption> now) {
        int held = held();
        Map<SharedAssumption, AssumedRow> fresh = new LinkedHashMap<>();
        for (SharedAssumption each : now) {
            AssumedRow row = rows.get(each);
            fresh.put(each, row != null ? row : new AssumedRow(view, each, this::innerPx, leadTo));
        }
        rows = fresh;
        stack.removeAll();
        stack.add(intro);
        rows.values().forEach(stack::add);
        stack.revalidate();
        stack.repaint();
        if (held >= 0) {
            takeFocus(Math.min(held, rows.size() - 1));
        }
    }

    /** The row that has the focus; when it goes, the next one takes its place. */
    private int held() {
        List<AssumedRow> all = List.copyOf(rows.values());
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).holdsFocus()) {
                return i;
            }
        }
        return -1;
    }

    private void takeFocus(int row) {
        List<AssumedRow> all = List.copyOf(rows.values());
        if (row >= 0 && row < all.size()) {
            all.get(row).takeFocus();
        }
    }

    /** To the first that can be said. */
    void takeFocus() {
        Optional<AssumedRow> first =
                rows.values().stream().filter(AssumedRow::canBeSaid).findFirst();
        first.ifPresent(AssumedRow::takeFocus);
    }
}
