package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import lungfish.catalogue.BlowerClass;
import lungfish.edit.BlowerDraft;
import lungfish.everyday.Disturbance.Kind;
import lungfish.reason.PartId;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import org.jspecify.annotations.Nullable;

/** The column beside the room: the four panels, or one sheet over them until it is closed. */
final class Side extends JPanel {
    private static final String PANELS = "panels";
    private static final String SHEET = "sheet";
    /** A scroll bar stands beside the panels when they are longer than the window. */
    private static final int BAR = 12;
    /** Between the tabs and what they show. */
    private static final int GAP = 8;

    private final transient View view;
    private final CardLayout cards = new CardLayout();
    private final JPanel deck = new JPanel(cards);
    private final SideTabs tabs;
    private final JPanel over = new JPanel(new BorderLayout());
    private final SidePanel firstPanel;
    private final transient Map<Optional<BlowerClass>, BlowerDraft> unfinished = new HashMap<>();
    private transient Consumer<Blower.Role> drawing = role -> {};
    private transient Consumer<PartId> lead = part -> {};
    private @Nullable SideSheet open;
    private @Nullable Question asked;
    private @Nullable Component cameFrom;

    Side(View view) {
        this.view = view;
        this.tabs = new SideTabs(view, this);
        setLayout(new BorderLayout(0, GAP));
        setOpaque(false);
        deck.setOpaque(false);
        over.setOpaque(false);
        List<SidePanel> panels =
                Arrays.stream(Subject.values()).map(this::panel).toList();
        firstPanel = panels.get(0);
        deck.add(column(panels), PANELS);
        deck.add(over, SHEET);
        add(tabs, BorderLayout.NORTH);
        add(deck, BorderLayout.CENTER);
        view.onChange(this::revalidate);
        view.onMark(() -> {
            if (open != null) {
                open.marked();
            }
        });
    }

    private SidePanel panel(Subject subject) {
        SidePanel panel = new SidePanel(view, subject, Pictures.of(subject, view), this::ask);
        if (subject == Subject.BACKUP) {
            panel.offer("What there is…", "Batteries, inverter, generator, alarm, circuits", this::openBackup);
        }
        return panel;
    }

    /** All that keeps the air on, to be said. */
    void openBackup() {
        open(new BackupSheet(view, this));
    }

    /** The window is closed. */
    @Override
    public void removeNotify() {
        if (open != null) {
            open.left();
        }
        super.removeNotify();
    }

    /** How wide the panels are: they leave room for a scroll bar. */
    static int panelPx(View view) {
        return panelPx(view, view.sidePx());
    }

    static int panelPx(View view, int columnPx) {
        return columnPx - view.px(BAR);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(open == null ? view.sidePx() : open.widthPx(), 0);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    private static JScrollPane column(List<SidePanel> panels) {
        Stack column = new Stack();
        panels.forEach(panel -> column.add(panel, "growx"));
        return scrolling(column);
    }

    /** A pane that scrolls only up and down, and has no edge. */
    static JScrollPane scrolling(Component inside) {
        JScrollPane pane = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        pane.getVerticalScrollBar().setUnitIncrement(24);
        return pane;
    }

    void ask(Subject subject) {
        open(new WhySheet(view, this, subject::whys));
    }

    /** Explains the figures of an outlet, that of a column first, as the outlets are shown now. */
    void ask(OutletId outlet, OutletColumn first) {
        open(new WhySheet(view, this, plan -> first.whys(plan, outlet, view.shown())));
    }

    /** Answers a question on its sheet; one that is open already gets the focus. */
    void ask(Question question) {
        if (asked == question) {
            takeFocus();
        } else {
            open(question.sheet(view, this));
            asked = question;
        }
        tabs.tell(Optional.of(question), false);
    }

    /** Asks of an everyday disturbance, of what is chosen. */
    void ask(Kind kind) {
        ask(Question.EVERYDAY);
        if (open instanceof EverydaySheet sheet) {
            sheet.ask(kind);
        }
    }

    /** What leads to a part of the room. */
    void leadsWith(Consumer<PartId> leading) {
        lead = leading;
    }

    void lead(PartId part) {
        lead.accept(part);
    }

    /** What takes a machine into the hand, to be drawn. */
    void drawsWith(Consumer<Blower.Role> taking) {
        drawing = taking;
    }

    /** Leads to the drawing, with a machine in the hand. */
    void draw(Blower.Role role) {
        drawing.accept(role);
    }

    /** Shows a sheet over the panels; the focus goes into it, and back when it closes. */
    void open(SideSheet sheet) {
        if (open != null) {
            open.left();
        } else {
            cameFrom = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        }
        open = sheet;
        asked = null;
        tabs.tell(Optional.empty(), true);
        over.removeAll();
        over.add(sheet);
        cards.show(deck, SHEET);
        over.revalidate();
        sheet.takeFocus();
    }

    /** What was typed of a blower, or of a new one, and not kept. */
    Optional<BlowerDraft> unfinished(Optional<BlowerClass> before) {
        return Optional.ofNullable(unfinished.get(before));
    }

    void unfinished(Optional<BlowerClass> before, Optional<BlowerDraft> typed) {
        typed.ifPresentOrElse(draft -> unfinished.put(before, draft), () -> unfinished.remove(before));
    }

    boolean isSheetOpen() {
        return open != null;
    }

    /** To the sheet that is open, or to the first panel. */
    void takeFocus() {
        if (open != null) {
            open.takeFocus();
        } else {
            firstPanel.takeFocus();
        }
    }

    void close() {
        if (open != null) {
            open.left();
        }
        open = null;
        asked = null;
        tabs.tell(Optional.empty(), false);
        over.removeAll();
        cards.show(deck, PANELS);
        boolean isBack = cameFrom != null && cameFrom.isShowing() && cameFrom.requestFocusInWindow();
        if (!isBack) {
            firstPanel.takeFocus(); // where one came from is gone: the keys must still be heard
        }
    }
}
