package lungfish.roomfile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.BlowerId;
import lungfish.room.Log;
import lungfish.room.OutletId;
import lungfish.room.Service;
import lungfish.room.ServiceId;

/** What has happened to the room since it was built. */
final class LogFormat {
    private LogFormat() {}

    static Log read(Fields in) {
        return new Log(
                in.maybeObjects("readings", ReadingFormat::read),
                in.maybeObjects("services", LogFormat::readService),
                in.maybeObjects("ticks", LogFormat::readTick));
    }

    static void write(JsonWriter out, Log log) {
        out.maybeFlatObjects("readings", log.readings(), ReadingFormat::write)
                .maybeFlatObjects("services", log.services(), LogFormat::writeService)
                .maybeFlatObjects("ticks", log.ticks(), LogFormat::writeTick);
    }

    private static Service readService(Fields in) {
        return new Service(
                new ServiceId(in.id("id")),
                day(in, "on"),
                in.word("kind", Service.Kind.class),
                outlets(in),
                in.maybeId("blower").map(BlowerId::new),
                in.maybeText("note"));
    }

    private static void writeService(JsonWriter out, Service service) {
        out.text("id", service.id().text())
                .text("on", service.on().toString())
                .word("kind", service.kind())
                .maybeTexts("outlets", texts(service.outlets()))
                .maybeText("blower", service.blower().map(BlowerId::text))
                .maybeText("note", service.note());
    }

    private static Log.Tick readTick(Fields in) {
        return new Log.Tick(in.text("step"), day(in, "on"));
    }

    private static void writeTick(JsonWriter out, Log.Tick tick) {
        out.text("step", tick.step()).text("on", tick.on().toString());
    }

    /** A day of the calendar, as ISO 8601 writes it. */
    static LocalDate day(Fields in, String key) {
        At at = in.required(key);
        String text = at.text();
        if (text.isEmpty()) {
            return LocalDate.EPOCH;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            at.problem("found \"" + text + '"', "a day of the calendar, such as 2026-03-01");
            return LocalDate.EPOCH;
        }
    }

    /** The outlets under the key of that name; left out, none. */
    static List<OutletId> outlets(Fields in) {
        return in.optional("outlets")
                .map(list -> list.list(each -> new OutletId(each.id())))
                .orElse(List.of());
    }

    static List<String> texts(List<OutletId> outlets) {
        return outlets.stream().map(OutletId::text).toList();
    }
}
