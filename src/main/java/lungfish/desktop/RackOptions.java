package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.edit.RackTemplate;
import lungfish.quantity.DisplayUnits;
import net.miginfocom.swing.MigLayout;

/** What the rack that is drawn next is made of: shelves, tanks, one device in each. */
final class RackOptions extends JPanel {
    private static final int MOST_SHELVES = 8;
    private static final int MOST_TANKS = 12;

    private final transient Catalogue catalogue;
    private final JSpinner shelves = spinner("Shelves", 3, MOST_SHELVES);
    private final JSpinner tanks = spinner("Tanks on a shelf", 4, MOST_TANKS);
    private final Choice<TankSize> size = new Choice<>("Tank size");
    private final Choice<Optional<DeviceClass>> device = new Choice<>("Device in each tank");

    RackOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0, hidemode 3"));
        this.catalogue = view.desk().shared().catalogue();
        setOpaque(false);
        add(shelves);
        add(Line.title(view, "shelves of"));
        add(tanks);
        add(size, "wmin 0, wmax " + view.px(180));
        add(device, "wmin 0, wmax " + view.px(180));
        device.offer(
                TradeSizes.devicesOrNone(catalogue),
                one -> one.map(DeviceClass::name).orElse("no device"),
                one -> one.filter(TradeSizes::isUsual).isPresent());
        view.follow(this, () -> offerSizes(view.desk().units()));
    }

    private void offerSizes(DisplayUnits units) {
        size.offer(TradeSizes.ordered(catalogue, units), TankSize::name, one -> TradeSizes.isUsual(one, units));
    }

    private static JSpinner spinner(String says, int usual, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(usual, 1, most, 1));
        spinner.setName(says);
        spinner.setToolTipText(says);
        spinner.getAccessibleContext().setAccessibleName(says);
        return spinner;
    }

    RackTemplate template() {
        return new RackTemplate(
                number(shelves),
                number(tanks),
                size.chosen().orElse(catalogue.tankSizes().get(0)),
                device.chosen().flatMap(one -> one).map(DeviceClass::id));
    }

    private static int number(JSpinner spinner) {
        return ((Number) spinner.getValue()).intValue();
    }

    /** What a smaller place may be filled with: sizes of the same trade as the one chosen. */
    List<TankSize> sizes() {
        TankSize.Trade trade = template().size().trade();
        return catalogue.tankSizes().stream()
                .filter(one -> one.trade() == trade)
                .toList();
    }
}
