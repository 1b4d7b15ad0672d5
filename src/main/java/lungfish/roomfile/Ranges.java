package lungfish.roomfile;

import lungfish.json.Range;

/**
 * What a number in a room file may be. Wide on purpose: they catch a wrong unit (millimetres, degrees Celsius, litres)
 * and a wrong sign, and leave taste to the plan. The same numbers stand in room.schema.json.
 */
final class Ranges {
    static final Range SPAN_M = Range.aboveTo(0, 1000);
    static final Range PLACE_M = Range.between(-1000, 1000);
    static final Range ALONG_SHELF_M = Range.between(0, 1000);
    static final Range ALONG_RUN_M = Range.between(0, 100_000);
    static final Range TUBING_M = Range.between(0, 1000);
    static final Range KERF_M = Range.between(0, 0.1);
    static final Range HEIGHT_M = Range.between(0, 100);
    static final Range BORE_M = Range.aboveTo(0, 1);
    static final Range ALTITUDE_M = Range.between(-500, 9000);
    static final Range TEMPERATURE_K = Range.between(200, 400);
    static final Range FLOW_M3_PER_S = Range.aboveTo(0, 1);
    static final Range NO_FLOW_M3_PER_S = Range.between(0, 1);
    static final Range TURNOVER_PER_S = Range.aboveTo(0, 1);
    static final Range GAUGE_PA = Range.aboveTo(0, 1e6);
    static final Range NO_GAUGE_PA = Range.between(0, 1e6);
    static final Range SPARE_PA = Range.between(0, 1e5);
    static final Range SECONDS = Range.aboveTo(0, 1e10);
    static final Range WAIT_S = Range.between(0, 1e10);
    static final Range AGE_S = Range.between(0, 1e10);
    static final Range VOLTAGE_V = Range.aboveTo(0, 1000);
    static final Range FREQUENCY_HZ = Range.aboveTo(0, 400);
    static final Range POWER_W = Range.between(0, 1e6);
    static final Range DRAWN_W = Range.aboveTo(0, 1e6);
    static final Range CHARGE_C = Range.aboveTo(0, 1e9);
    static final Range PRICE_PER_J = Range.SHARE;
    static final Range MONEY = Range.between(0, 1e9);
    static final Range LEVEL_DB = Range.between(0, 200);
    static final Range NEAR_M = Range.aboveTo(0, 100);
    static final Range RACK_KG = Range.between(0, 1e5);
    static final Range FISH_KG = Range.aboveTo(0, 100);
    static final Range FOOD_KG = Range.between(0, 100);
    static final Range OXYGEN_KG_PER_M3 = Range.aboveTo(0, 0.05);
    static final Range SALINITY = Range.between(0, 0.3);
    static final Range SHARE = Range.SHARE;
    static final Range SOME_SHARE = Range.aboveTo(0, 1);
    static final Range DEPTH_SPREAD_M = Range.between(0, 1);
    static final Range CURVE_SPREAD = Range.between(0, 0.5);
    static final Range BORE_SPREAD = Range.between(0, 0.2);
    static final Range GROWTH = Range.between(0, 10);
    static final Range JAR_M3 = Range.aboveTo(0, 1);
    static final Range LOSS_FACTOR = Range.between(0, 1e6);
    static final Range LINEAR_LOSS = Range.between(0, 1e12);
    static final Range SQUARE_LOSS = Range.between(0, 1e16);
    static final Range SURGE = Range.between(1, 100);
    static final int MOST_MACHINES = 1000;
    static final int MOST_FISH = 1_000_000;

    private Ranges() {}
}
