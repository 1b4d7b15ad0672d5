package lungfish.desktop;

import javax.swing.JPanel;
import lungfish.catalogue.DeviceClass;
import net.miginfocom.swing.MigLayout;

/** Which device is hung into a tank next. */
final class DeviceOptions extends JPanel {
    private final Choice<DeviceClass> device = new Choice<>("Device");

    DeviceOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0"));
        setOpaque(false);
        add(device, "wmin 0, wmax " + view.px(240));
        device.offer(view.desk().shared().catalogue().devices(), DeviceClass::name, TradeSizes::isUsual);
    }

    DeviceClass device() {
        return device.chosen().orElseThrow();
    }
}
