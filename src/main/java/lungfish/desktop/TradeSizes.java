package lungfish.desktop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.quantity.DisplayUnits;

/** What is offered where something is drawn: tanks as the trade sells them, and devices. */
final class TradeSizes {
    private TradeSizes() {}

    /** The trade of one who reads these units. */
    static TankSize.Trade trade(DisplayUnits units) {
        return switch (units) {
            case METRIC -> TankSize.Trade.METRIC;
            case US -> TankSize.Trade.US;
        };
    }

    /** All common sizes; those of the reader's own trade come first. */
    static List<TankSize> ordered(Catalogue catalogue, DisplayUnits units) {
        return catalogue.tankSizes().stream()
                .sorted(Comparator.comparing(one -> one.trade() != trade(units)))
                .toList();
    }

    static boolean isUsual(TankSize size, DisplayUnits units) {
        String usual =
                switch (units) {
                    case METRIC -> "cm-60-30-36";
                    case US -> "gal-20-long";
                };
        return size.id().equals(usual);
    }

    /** All devices, and none. */
    static List<Optional<DeviceClass>> devicesOrNone(Catalogue catalogue) {
        List<Optional<DeviceClass>> all =
                new ArrayList<>(catalogue.devices().stream().map(Optional::of).toList());
        all.add(Optional.empty());
        return all;
    }

    static boolean isUsual(DeviceClass device) {
        return device.id().equals("sponge-medium");
    }
}
