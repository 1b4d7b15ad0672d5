package lungfish.desktop;

import java.awt.Component;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import lungfish.drawing.OutagePlayed;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.outage.TankDrill;
import lungfish.report.OutageBrief;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One tank of an outage: how it comes to stand by shape and word, its rack, and when it is in danger and alarm. */
final class TroubledCell extends JPanel implements ListCellRenderer<TankDrill> {
    private static final int HEIGHT = 52;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BooleanSupplier isCurrent;
    private final JLabel name = new JLabel();
    private final JLabel rack = new JLabel();
    private final JLabel danger = new JLabel();
    private final JLabel alarm = new JLabel();
    private transient @Nullable OutageBrief words;

    /**
     * For a list.
     *
     * @param widthPx of its cells
     * @param isCurrent whether what is shown is of the room as it is now
     */
    TroubledCell(View view, IntSupplier widthPx, BooleanSupplier isCurrent) {
        this.view = view;
        this.widthPx = widthPx;
        this.isCurrent = isCurrent;
    }

    void says(OutageBrief those) {
        words = those;
        removeAll();
        setLayout(new MigLayout(
                "insets " + view.px(4) + " " + view.px(6) + ", fillx, wrap 2, gap " + view.px(8) + " 0",
                "[grow, fill][]"));
        add(name, "wmin 0, wmax " + (widthPx.getAsInt() - view.px(140)));
        add(rack, "wmin 0");
        add(danger, "spanx 2, wmin 0, gapleft " + view.px(24));
        add(alarm, "spanx 2, wmin 0, gapleft " + view.px(24));
    }

    /** All are as high as this. */
    int heightPx() {
        return view.px(HEIGHT + 8);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends TankDrill> list, TankDrill tank, int index, boolean isSelected, boolean hasFocus) {
        Palette palette = view.look().palette();
        Type type = view.look().type();
        boolean isOld = !isCurrent.getAsBoolean();
        name.setIcon(new OxygenIcon(view, OutagePlayed.worst(tank)));
        name.setIconTextGap(view.px(6));
        name.setText(tank.tank().name() + (tank.essential() ? " · essential" : ""));
        rack.setText(tank.rack().name());
        danger.setText(words == null ? "" : words.danger(tank));
        alarm.setText(words == null ? "" : words.alarm(tank));
        name.setFont(type.label());
        name.setForeground(isOld ? palette.free() : palette.ink());
        for (JLabel each : new JLabel[] {rack, danger, alarm}) {
            each.setFont(type.body());
            each.setForeground(isOld ? palette.free() : palette.softInk());
        }
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext()
                .setAccessibleName(
                        String.join(", ", name.getText(), rack.getText(), danger.getText(), alarm.getText()));
        return this;
    }
}
