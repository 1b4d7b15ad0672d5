package lungfish.corpus;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.desk.ListText;
import lungfish.edit.TankList;
import lungfish.networkfile.NetworkReader;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.roomfile.RoomReader;

/** The readers of what comes from outside, each fed with bytes: it reads them or refuses them, and throws nothing. */
public enum Fed {
    ROOM,
    NETWORK,
    LIST,
    QUANTITY;

    private static final class Held {
        private static final Catalogue CATALOGUE = CatalogueFiles.load();
    }

    /** Feeds it. */
    public void take(byte[] bytes) {
        switch (this) {
            case ROOM -> new RoomReader(Held.CATALOGUE).read(bytes);
            case NETWORK -> NetworkReader.read(bytes);
            case LIST -> TankList.read(ListText.of(bytes).text());
            case QUANTITY -> quantity(bytes);
        }
    }

    /** In every dimension and all units. */
    private static void quantity(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (Dimension dimension : Dimension.values()) {
            for (DisplayUnits units : List.of(DisplayUnits.values())) {
                Quantities.parse(text, dimension, units);
            }
        }
    }
}
