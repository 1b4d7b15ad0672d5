package lungfish.report;

import lungfish.json.JsonWriter;
import lungfish.standing.Common;
import lungfish.standing.Loss;
import lungfish.standing.Rates;
import lungfish.standing.Standing;
import lungfish.standing.StandingAnswer;

/** Redundancy as JSON, as docs/schemas/standing.schema.json says: SI units, named in the keys. */
public final class StandingJson {
    private StandingJson() {}

    /** The fields of one object. */
    public static void node(JsonWriter out, StandingAnswer answer) {
        out.whole("tanks", answer.tanks());
        out.object("habits", inner -> rates(inner, answer.rates()));
        out.objects("ways", answer.ways(), (inner, each) -> way(inner, each, answer.tanks()));
    }

    private static void rates(JsonWriter out, Rates rates) {
        Keys.number(out, "mean_time_between_failures_s", rates.mtbfS());
        Keys.number(out, "notice_s", rates.noticeS());
        Keys.number(out, "notice_without_alarm_s", rates.quietNoticeS());
        Keys.number(out, "mend_s", rates.mendS());
        Keys.number(out, "standby_by_hand_s", rates.handS());
        Keys.number(out, "standby_by_itself_s", rates.selfS());
        Keys.number(out, "mains_failures_per_year", rates.mainsPerYear());
        Keys.number(out, "mains_outage_s", rates.mainsS());
    }

    private static void way(JsonWriter out, Standing standing, int tanks) {
        out.word("way", standing.way()).truth("as_drawn", standing.drawn()).whole("machines", standing.machines());
        Keys.number(out, "failures_per_year", standing.failuresPerYear());
        Keys.number(out, "year_without_failure_share", standing.quietYear());
        Keys.number(out, "without_air_s_per_year", standing.allAirlessSPerYear());
        Keys.number(out, "without_air_by_machines_s_per_year", standing.airlessSPerYear());
        Keys.number(out, "not_all_air_by_machines_s_per_year", standing.shortSPerYear());
        Keys.number(out, "without_air_by_mains_s_per_year", standing.mainsSPerYear());
        out.object("one_failure", inner -> loss(inner, standing.loss(), tanks));
        out.flatObjects("common_causes", standing.common(), StandingJson::common);
    }

    private static void loss(JsonWriter out, Loss loss, int tanks) {
        out.whole("tanks_without_air", loss.tanks());
        Keys.number(out, "share_of_tanks", tanks == 0 ? 0 : (double) loss.tanks() / tanks);
        out.whole("tanks_with_less", loss.less());
        Keys.number(out, "air_left_share", loss.leftShare());
        Keys.number(out, "for_s", loss.forS());
    }

    private static void common(JsonWriter out, Common common) {
        out.word("cause", common.cause()).whole("tanks", common.tanks());
        Keys.number(out, "without_air_s_per_year", common.sPerYear());
    }
}
