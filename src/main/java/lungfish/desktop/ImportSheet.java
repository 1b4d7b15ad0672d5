package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BadCell;
import lungfish.edit.DecimalMark;
import lungfish.edit.Edit;
import lungfish.edit.Sheet.Separator;
import lungfish.edit.TankDraft;
import net.miginfocom.swing.MigLayout;

/** A list of tanks before it comes into the room: what its columns mean, and every bad cell, to be mended here. */
final class ImportSheet extends SideSheet {
    private static final String HOW =
            "Each tank is a row, under a row of headings: its name, rack and shelf, its size or a common size, its device."
                    + " Export the list from your spreadsheet as CSV, or copy it there. Any unit is understood.";

    private final TankImports imports;
    private final Paragraph from;
    private final Paragraph trouble;
    private final JButton choose = new JButton("Choose a file…");
    private final JButton paste = new JButton("From the clipboard");
    private final Choice<Separator> separator = new Choice<>("Cells are parted by");
    private final Choice<DecimalMark> decimals = new Choice<>("Decimals come after");
    private final JCheckBox headed = new JCheckBox("The first row is one of headings");
    private final JPanel reading;
    private final TankListTable table;
    private final JScrollPane preview;
    private final DefaultListModel<BadCell> complaints = new DefaultListModel<>();
    private final JList<BadCell> list = new JList<>(complaints);
    private final JScrollPane told;
    private final Paragraph count;
    private final JButton take = new JButton();
    private Optional<Edit> edit = Optional.empty();
    private boolean telling;

    ImportSheet(View view, Side side, TankImports imports, String said) {
        super(view, side, "Import a list of tanks");
        this.imports = imports;
        this.from = new Paragraph(view, Type::body, Palette::softInk, this::innerPx);
        this.trouble = new Paragraph(view, Type::body, Palette::accent, this::innerPx);
        this.count = new Paragraph(view, Type::label, Palette::ink, this::innerPx);
        this.table = new TankListTable(view, this::change);
        this.preview = scrolling(table);
        table.putHeadingsOn(preview);
        this.told = scrolling(list);
        this.reading = reading();
        trouble.setName("import-trouble");
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
        names();
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap " + view.px(8) + " 0"));
        buttons.setOpaque(false);
        buttons.add(choose);
        buttons.add(paste);
        add(from, "growx");
        add(buttons, "growx");
        add(trouble, "growx, hidemode 3");
        add(reading, "growx, hidemode 3");
        add(preview, "grow, push, hmin " + view.px(120) + ", hidemode 3");
        add(count, "growx, hidemode 3");
        add(told, "growx, hidemode 3, hmax " + view.px(170));
        add(take, "growx, hidemode 3");
        view.follow(this, this::tell);
    }

    /** As wide as it can be without hiding the room. */
    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void names() {
        choose.setName("choose-list");
        choose.addActionListener(event -> imports.choose());
        paste.setName("paste-list");
        paste.addActionListener(event -> imports.paste());
        count.setName("import-count");
        take.setName("import");
        take.addActionListener(event -> edit.ifPresent(imports::take));
        list.setName("bad-rows");
        list.getAccessibleContext().setAccessibleName("What is to mend");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new BadCellLine(view(), () -> innerPx() - view().px(16)));
        list.addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && list.getSelectedValue() != null) {
                table.lead(list.getSelectedValue());
            }
        });
    }

    /** How the text is read. */
    private JPanel reading() {
        JPanel how = new JPanel(new MigLayout(
                "insets 0, fillx, wrap 2, gap " + view().px(8) + " " + view().px(4),
                "[grow, fill, sg][grow, fill, sg]"));
        how.setOpaque(false);
        how.add(Line.over(view(), "Cells are parted by", separator), "wmin 0");
        how.add(Line.over(view(), "Decimals come after", decimals), "wmin 0");
        how.add(headed, "spanx 2");
        headed.setName("headed");
        headed.setOpaque(false);
        separator.addActionListener(event -> separator.chosen().ifPresent(by -> change(draft -> draft.parted(by))));
        decimals.addActionListener(event -> decimals.chosen().ifPresent(mark -> change(draft -> draft.with(mark))));
        headed.addActionListener(event -> change(draft -> draft.headed(headed.isSelected())));
        return how;
    }

    private void change(UnaryOperator<TankDraft> change) {
        if (!telling) {
            imports.draft().map(change).ifPresent(imports::keep);
            tell();
        }
    }

    private void tell() {
        telling = true;
        Optional<TankDraft> draft = imports.draft();
        List.of(reading, preview, count, take).forEach(part -> part.setVisible(draft.isPresent()));
        told.setVisible(false);
        from.setText(draft.isPresent() ? imports.source() : HOW);
        list.setBackground(view().look().palette().sheet());
        draft.ifPresent(this::tell);
        telling = false;
        revalidate();
        repaint();
    }

    private void tell(TankDraft draft) {
        separator.offer(List.of(Separator.values()), Separator::words, draft.separator()::equals);
        decimals.offer(List.of(DecimalMark.values()), DecimalMark::words, draft.decimals()::equals);
        headed.setSelected(draft.headed());
        TankDraft.Look look = draft.look(view().desk().room(), view().reader());
        table.show(draft, look);
        List<BadCell> bad = look.bad();
        BadCell before = list.getSelectedValue();
        complaints.clear();
        complaints.addAll(bad);
        list.setSelectedValue(before, false);
        told.setVisible(!bad.isEmpty());
        int all = draft.list().rows().size();
        int good = look.fit().tanks();
        edit = look.fit().edit();
        count.setText(
                bad.isEmpty()
                        ? "All " + all + " rows can be brought in."
                        : (all - good) + " of " + all
                                + " rows cannot be brought in as they are. Mend them here, or leave them out.");
        take.setText(good == all ? "Import all " + all + " tanks" : "Import " + good + " of " + all + " tanks");
        take.setEnabled(edit.isPresent());
    }

    @Override
    void takeFocus() {
        if (imports.draft().isPresent()) {
            table.requestFocusInWindow();
        } else {
            choose.requestFocusInWindow();
        }
    }
}
