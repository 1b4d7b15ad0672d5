package lungfish.desktop;

import java.awt.Component;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.SwingConstants;
import lungfish.drawing.OutletState;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.everyday.Moved;
import lungfish.network.DropFlow;
import lungfish.quantity.Dimension;
import lungfish.report.EverydayWords;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** An outlet in a disturbance: how it stands once it has happened, by shape and word, and what it gets before and after. */
final class MovedCell extends JPanel implements ListCellRenderer<Moved> {
    private final transient View view;
    private final transient IntSupplier widthPx;
    private final JLabel name = new JLabel();
    private final JLabel change = new JLabel("", SwingConstants.TRAILING);
    private final JLabel flows = new JLabel();
    private final transient BooleanSupplier isCurrent;
    private transient @Nullable EverydayWords words;

    /**
     * For a list.
     *
     * @param widthPx of its cells
     * @param isCurrent whether what is shown is of the room as it is now
     */
    MovedCell(View view, IntSupplier widthPx, BooleanSupplier isCurrent) {
        this.view = view;
        this.isCurrent = isCurrent;
        this.widthPx = widthPx;
    }

    void says(EverydayWords those) {
        words = those;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Moved> list, Moved moved, int index, boolean isSelected, boolean hasFocus) {
        removeAll();
        setLayout(new MigLayout(
                "insets " + view.px(4) + " " + view.px(6) + ", fillx, wrap 2, gap " + view.px(8) + " 0",
                "[grow, fill][]"));
        add(name, "wmin 0, wmax " + (widthPx.getAsInt() - view.px(64)));
        add(change, "");
        add(flows, "spanx 2, wmin 0, gapleft " + view.px(22));
        dress(moved);
        Palette palette = view.look().palette();
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext().setAccessibleName(name.getText() + ", " + change.getText() + ", " + flows.getText());
        return this;
    }

    private void dress(Moved moved) {
        Palette palette = view.look().palette();
        Type type = view.look().type();
        boolean isOld = !isCurrent.getAsBoolean();
        name.setIcon(new StateIcon(view, OutletState.of(moved.after().state())));
        name.setIconTextGap(view.px(6));
        name.setText(
                moved.need().id().text() + "  " + moved.need().seat().tank().name());
        name.setFont(type.label());
        name.setForeground(isOld ? palette.free() : palette.ink());
        change.setText(words == null ? "" : words.change(moved));
        change.setFont(type.label());
        change.setForeground(isOld ? palette.free() : palette.ink());
        flows.setText( // the unit stands behind the second figure
                view.quantities().number(moved.before().freeM3PerS(), Dimension.AIR_FLOW) + " → "
                        + flow(moved.after().freeM3PerS()) + ", "
                        + word(moved.after().state()));
        flows.setFont(type.body());
        flows.setForeground(isOld ? palette.free() : palette.softInk());
    }

    private String flow(double m3PerS) {
        return view.quantities().show(m3PerS, Dimension.AIR_FLOW);
    }

    private static String word(DropFlow.State state) {
        return switch (state) {
            case CLOSED -> "no air";
            case STARVED -> "short of air";
            case SERVED -> "served";
            case GREEDY -> "too much";
        };
    }
}
