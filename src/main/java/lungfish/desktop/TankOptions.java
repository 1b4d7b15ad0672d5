package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JPanel;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.edit.TankEdits;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Tank;
import net.miginfocom.swing.MigLayout;

/** Of what size the tank is that is put down next, and what is in it: a common size, or one's own. */
final class TankOptions extends JPanel {
    private final transient View view;
    private final transient Catalogue catalogue;
    private final Choice<Optional<TankSize>> size = new Choice<>("Tank size");
    private final Choice<Optional<DeviceClass>> device = new Choice<>("Device in it");
    private final JPanel own = new JPanel(new MigLayout("insets 0, gap 4 0"));
    private double lengthM = 0.6;
    private double widthM = 0.3;
    private double heightM = 0.36;

    /** An own setter for a side. */
    private interface Side {
        void set(double m);
    }

    TankOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0, hidemode 3"));
        this.view = view;
        this.catalogue = view.desk().shared().catalogue();
        setOpaque(false);
        own.setOpaque(false);
        own.add(field("Length of the tank", () -> OptionalDouble.of(lengthM), m -> lengthM = m));
        own.add(Line.title(view, "×"));
        own.add(field("Tank from front to back", () -> OptionalDouble.of(widthM), m -> widthM = m));
        own.add(Line.title(view, "×"));
        own.add(field("Height of the tank", () -> OptionalDouble.of(heightM), m -> heightM = m));
        add(size, "wmin 0, wmax " + view.px(210));
        add(own);
        add(Line.title(view, "with"));
        add(device, "wmin 0, wmax " + view.px(170));
        size.addActionListener(event -> tellOwn());
        device.offer(
                TradeSizes.devicesOrNone(catalogue),
                one -> one.map(DeviceClass::name).orElse("no device"),
                one -> one.filter(TradeSizes::isUsual).isPresent());
        view.onChange(() -> offerSizes(view.desk().units()));
    }

    private QuantityField field(String says, java.util.function.Supplier<OptionalDouble> now, Side side) {
        QuantityField field =
                new QuantityField(view, Dimension.DEPTH, now, si -> si.ifPresent(side::set), this::setToolTipText);
        field.setColumns(5);
        field.setName(says);
        field.getAccessibleContext().setAccessibleName(says);
        return field;
    }

    private void offerSizes(DisplayUnits units) {
        Stream<Optional<TankSize>> common =
                TradeSizes.ordered(catalogue, units).stream().map(Optional::of);
        List<Optional<TankSize>> all = new ArrayList<>(common.toList());
        all.add(Optional.empty());
        size.offer(all, one -> one.map(TankSize::name).orElse("own size"), one -> one.filter(
                        each -> TradeSizes.isUsual(each, units))
                .isPresent());
        tellOwn();
    }

    private void tellOwn() {
        own.setVisible(common().isEmpty());
        revalidate();
    }

    private Optional<TankSize> common() {
        return size.chosen().flatMap(one -> one);
    }

    Tank.Size outside() {
        return common().map(TankEdits::outside).orElseGet(() -> new Tank.Size(lengthM, widthM, heightM));
    }

    double waterDepthM() {
        return common().map(TankSize::waterDepthM).orElseGet(() -> TankEdits.usualWaterM(heightM));
    }

    Optional<String> device() {
        return device.chosen().flatMap(one -> one).map(DeviceClass::id);
    }
}
