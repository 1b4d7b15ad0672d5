package lungfish.edit;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.room.Building;
import lungfish.room.Room;

/** Edits of how the keeper builds: stock, saw, spare, thread and prices. */
public final class BuildingEdits {
    private static final Holder<Building> BUILDING = new Holder<>(Room::building, Room::withBuilding);

    /** The length in which pipe is bought. */
    public static final OwnValue STOCK = BUILDING.value(
            "Length in which pipe is bought",
            Dimension.LENGTH,
            Limits.above(0, 1000),
            Building::stockM,
            Building::withStockM);

    /** What a cut takes away. */
    public static final OwnValue KERF = BUILDING.value(
            "What the saw takes", Dimension.BORE, Limits.from(0, 0.1), Building::kerfM, Building::withKerfM);

    /** What is bought beyond what is counted. */
    public static final OwnValue SPARE = BUILDING.value(
            "Bought to spare", Dimension.SHARE, Limits.SHARE, Building::spareShare, Building::withSpareShare);

    private static final Limits PRICE = Limits.from(0, 1e9);

    private BuildingEdits() {}

    /** Taps of this thread of the catalogue; empty: unknown. */
    public static Edit thread(Optional<String> thread) {
        return new Edit(
                "Set the thread of the taps",
                room -> room.withBuilding(room.building().withThread(thread)));
    }

    /**
     * What a part costs.
     *
     * @param part its key in the parts list
     * @param name as the list calls it
     * @param price of one piece or one metre; empty: what its class costs
     */
    public static Attempt price(String part, String name, OptionalDouble price) {
        if (price.isPresent() && !PRICE.hold(price.getAsDouble())) {
            return PRICE.refused("The price", price.getAsDouble(), Dimension.MONEY);
        }
        return new Edit(
                "Price of " + Words.midSentence(name),
                room -> room.withBuilding(room.building().withPrice(part, price)));
    }
}
