package lungfish.desktop;

import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import lungfish.edit.TankProperty;

/** Above a list of tanks: its headings, and below each what the column means. */
final class MeaningHeader extends JPanel {
    private static final String LEFT_OUT = "– left out –";
    private static final List<Optional<TankProperty>> MEANINGS = Stream.concat(
                    Stream.of(Optional.<TankProperty>empty()),
                    Stream.of(TankProperty.values()).map(Optional::of))
            .toList();

    private final transient View view;
    private final TankListTable table;
    private final TankListModel model;
    private final List<Choice<Optional<TankProperty>>> meanings = new ArrayList<>();
    private boolean telling;

    MeaningHeader(View view, TankListTable table, TankListModel model) {
        super(null); // everything stands above its column
        this.view = view;
        this.table = table;
        this.model = model;
        takeHeadings();
        table.getColumnModel().addColumnModelListener(new Widths());
    }

    void takeHeadings() {
        add(table.getTableHeader());
    }

    /** Shows what the columns mean now. */
    void tell() {
        telling = true;
        if (meanings.size() != Math.max(0, model.getColumnCount() - 1)) {
            meanings.forEach(this::remove);
            meanings.clear();
            for (int column = 1; column < model.getColumnCount(); column++) {
                meanings.add(meaning(column));
            }
            meanings.forEach(this::add);
        }
        for (int i = 0; i < meanings.size(); i++) {
            Optional<TankProperty> now = model.meaning(i + 1);
            Choice<Optional<TankProperty>> choice = meanings.get(i);
            choice.setSelectedIndex(MEANINGS.indexOf(now));
            choice.getAccessibleContext().setAccessibleName("Meaning of column " + model.getColumnName(i + 1));
            choice.setToolTipText("What " + model.getColumnName(i + 1) + " means");
        }
        telling = false;
        setBackground(view.look().palette().sheet());
        revalidate();
        repaint();
    }

    private Choice<Optional<TankProperty>> meaning(int column) {
        Choice<Optional<TankProperty>> choice = new Choice<>("meaning " + column);
        choice.offer(MEANINGS, each -> each.map(TankProperty::label).orElse(LEFT_OUT), Optional::isEmpty);
        choice.addActionListener(event -> {
            if (!telling) {
                choice.chosen().ifPresent(property -> model.mean(column, property));
            }
        });
        choice.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                scrollRectToVisible(choice.getBounds());
                table.scrollRectToVisible(table.getCellRect(
                        Math.max(0, table.rowAtPoint(table.getVisibleRect().getLocation())), column, true));
            }
        });
        return choice;
    }

    @Override
    public Dimension getPreferredSize() {
        int choices = meanings.isEmpty() ? 0 : meanings.get(0).getPreferredSize().height + view.px(4);
        return new Dimension(
                table.getPreferredSize().width, table.getTableHeader().getPreferredSize().height + choices);
    }

    @Override
    public void doLayout() {
        int heading = table.getTableHeader().getPreferredSize().height;
        table.getTableHeader().setBounds(0, 0, Math.max(getWidth(), 1), heading);
        for (int i = 0; i < meanings.size() && i + 1 < table.getColumnCount(); i++) {
            java.awt.Rectangle cell = table.getTableHeader().getHeaderRect(i + 1);
            meanings.get(i)
                    .setBounds(
                            cell.x + view.px(1),
                            heading,
                            cell.width - view.px(2),
                            meanings.get(i).getPreferredSize().height);
        }
    }

    /** A column that is drawn wider takes its meaning along. */
    private final class Widths implements TableColumnModelListener {
        @Override
        public void columnMarginChanged(ChangeEvent event) {
            revalidate();
        }

        @Override
        public void columnAdded(TableColumnModelEvent event) {
            revalidate();
        }

        @Override
        public void columnRemoved(TableColumnModelEvent event) {}

        @Override
        public void columnMoved(TableColumnModelEvent event) {}

        @Override
        public void columnSelectionChanged(ListSelectionEvent event) {}
    }
}
