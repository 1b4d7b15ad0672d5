package lungfish.roomfile;

import static lungfish.roomfile.Ranges.KERF_M;
import static lungfish.roomfile.Ranges.MONEY;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.SPAN_M;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Building;

/** How the keeper builds. */
final class BuildingFormat {
    private BuildingFormat() {}

    static Building read(Fields in) {
        return new Building(
                in.maybeNumber("stock_length_m", SPAN_M),
                in.maybeNumber("kerf_m", KERF_M),
                in.maybeNumber("spare_share", SHARE),
                in.maybeId("thread"),
                in.maybeObjects("prices", BuildingFormat::readPrice));
    }

    static void write(JsonWriter out, Building building) {
        out.maybeNumber("stock_length_m", building.stockM())
                .maybeNumber("kerf_m", building.kerfM())
                .maybeNumber("spare_share", building.spareShare())
                .maybeText("thread", building.thread())
                .maybeFlatObjects("prices", building.prices(), BuildingFormat::writePrice);
    }

    private static Building.OwnPrice readPrice(Fields in) {
        return new Building.OwnPrice(in.text("part"), in.number("price", MONEY));
    }

    private static void writePrice(JsonWriter out, Building.OwnPrice price) {
        out.text("part", price.part()).number("price", price.price());
    }
}
