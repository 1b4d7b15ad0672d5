package lungfish.report;

import lungfish.catalogue.BlowerClass;
import lungfish.json.JsonWriter;
import lungfish.plan.Duty;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Running;

/** The duty and the candidates as JSON. */
final class DutyJson {
    private DutyJson() {}

    static void duty(JsonWriter out, Duty duty) {
        Candidate candidate = duty.candidate();
        out.text("blower", candidate.fleet().name())
                .text("class", candidate.kind().id())
                .truth("recommended", duty.recommended())
                .truth("fits", candidate.fits());
        out.flatObjects("machines", candidate.fleet().placed(), DutyJson::machine);
        Keys.number(out, "needed_pressure_pa", duty.needed().pressurePa());
        Keys.number(out, "needed_free_air_m3_per_s", duty.needed().freeM3PerS());
        Keys.number(out, "needed_pressure_clean_pa", duty.neededClean().pressurePa());
        Keys.number(out, "pipe_loss_pa", duty.needed().pipePa());
        out.text("index_outlet", duty.needed().index().id().text());
        running(out, candidate.tired());
        out.object("when_new", inner -> running(inner, candidate.fresh()));
        Keys.number(out, "continuous_pressure_pa", candidate.fleet().continuousPa());
        Keys.number(out, "reserve_share", candidate.reserveShare());
    }

    private static void machine(JsonWriter out, Fleet.Placed placed) {
        out.text("id", placed.machine().part().id())
                .text("name", placed.machine().name())
                .text("class", placed.machine().kind().id())
                .whole("count", placed.machine().count());
    }

    private static void running(JsonWriter out, Running running) {
        Keys.number(out, "running_pressure_pa", running.gaugePa());
        Keys.number(out, "running_free_air_m3_per_s", running.freeM3PerS());
        Keys.number(out, "bled_m3_per_s", running.bledM3PerS());
        Keys.number(out, "power_w", running.watts());
        Keys.number(out, "discharge_temperature_k", running.discharge().coolK());
        Keys.number(out, "discharge_temperature_hot_end_k", running.discharge().hotK());
        out.truth("inside_curve", running.insideCurve());
    }

    static void candidate(JsonWriter out, Candidate candidate) {
        BlowerClass kind = candidate.kind();
        out.text("class", kind.id()).text("name", kind.name()).word("kind", kind.kind());
        out.truth("fits", candidate.fits());
        out.flatObjects("breaks", candidate.broken(), DutyJson::broken);
        Keys.number(out, "reserve_share", candidate.reserveShare());
        Keys.number(out, "noise_dba", candidate.dba());
        running(out, candidate.tired());
        Keys.number(out, "price", kind.price());
    }

    static void broken(JsonWriter out, Limit.Broken broken) {
        out.word("limit", broken.limit());
        Keys.number(out, "found_si", broken.foundSi());
        Keys.number(out, "allowed_si", broken.allowedSi());
        Keys.number(out, "by_si", broken.bySi());
        out.word("dimension", broken.limit().dimension());
    }
}
