package lungfish.roomfile;

import static lungfish.roomfile.Ranges.GROWTH;
import static lungfish.roomfile.Ranges.JAR_M3;
import static lungfish.roomfile.Ranges.LEVEL_DB;
import static lungfish.roomfile.Ranges.OXYGEN_KG_PER_M3;
import static lungfish.roomfile.Ranges.SECONDS;
import static lungfish.roomfile.Ranges.SPARE_PA;

import java.util.List;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Wishes;

/** What the keeper asks of the plan. */
final class WishesFormat {
    private WishesFormat() {}

    static Wishes read(Fields in) {
        return new Wishes(
                in.maybeNumber("growth_reserve", GROWTH),
                in.maybeNumber("index_spare_pa", SPARE_PA),
                in.maybeNumber("loudest_dba", LEVEL_DB),
                in.maybeNumber("runtime_s", SECONDS),
                in.maybeNumber("jar_m3", JAR_M3),
                in.maybeNumber("alarm_oxygen_kg_per_m3", OXYGEN_KG_PER_M3),
                in.maybeNumber("danger_oxygen_kg_per_m3", OXYGEN_KG_PER_M3),
                in.optional("order")
                        .map(order -> order.list(at -> at.word(Wishes.Wish.class)))
                        .orElse(List.of()));
    }

    static void write(JsonWriter out, Wishes wishes) {
        out.maybeNumber("growth_reserve", wishes.growthReserve())
                .maybeNumber("index_spare_pa", wishes.indexSparePa())
                .maybeNumber("loudest_dba", wishes.loudestDba())
                .maybeNumber("runtime_s", wishes.runtimeS())
                .maybeNumber("jar_m3", wishes.jarM3())
                .maybeNumber("alarm_oxygen_kg_per_m3", wishes.alarmKgPerM3())
                .maybeNumber("danger_oxygen_kg_per_m3", wishes.dangerKgPerM3())
                .maybeTexts("order", wishes.order().stream().map(At::wordOf).toList());
    }
}
