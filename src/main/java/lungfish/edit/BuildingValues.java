package lungfish.edit;

import java.util.Map;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.room.Building;
import lungfish.room.Room;

/** The numbers that a keeper may say of how the pipe is built. */
public final class BuildingValues {
    private static final Holder<Building> BUILDING = new Holder<>(Room::building, Room::withBuilding);

    /** The length in which pipe is bought; the usual one of its standard where nothing is said. */
    public static final OwnValue STOCK = BUILDING.value(
            "Length that pipe is bought in",
            Dimension.LENGTH,
            Limits.from(0.5, 12),
            Building::stockM,
            Building::withStockM);

    public static final OwnValue KERF = BUILDING.value(
            "What a cut of the saw takes", Dimension.BORE, Limits.from(0, 0.01), Building::kerfM, Building::withKerfM);
    public static final OwnValue SPARE_SHARE = BUILDING.value(
            "Small parts bought to spare",
            Dimension.SHARE,
            Limits.from(0, 2),
            Building::spareShare,
            Building::withSpareShare);
    static final Map<Assumable, OwnValue> BY_KEY = Map.of(Assumable.KERF, KERF, Assumable.SPARE_PARTS, SPARE_SHARE);

    private BuildingValues() {}
}
