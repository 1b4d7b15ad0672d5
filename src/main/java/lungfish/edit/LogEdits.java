package lungfish.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.room.Log;
import lungfish.room.Outlet;
import lungfish.room.Reading;
import lungfish.room.ReadingId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Service;
import lungfish.room.ServiceId;

/** Edits of what has happened in the room: what was read, what was done, which steps of the first start are ticked. */
public final class LogEdits {
    private static final Limits SECONDS = Limits.above(0, 1e10);
    private static final Limits JAR_M3 = Limits.above(0, 1);
    private static final Limits GAUGE_PA = Limits.from(0, 1e6);
    private static final Limits WATTS = Limits.from(0, 1e6);
    private static final Limits LEVEL_DBA = Limits.from(0, 200);

    private LogEdits() {}

    /** Something new was read. */
    public static Attempt read(Room room, LocalDate on, Reading.Measured measured, Reading.Shut shut, String note) {
        Optional<Refused> wrong =
                wrong(measured).or(() -> place(room, measured)).or(() -> note(note));
        if (wrong.isPresent()) {
            return wrong.get();
        }
        ReadingId id = new ReadingId(fresh(
                room.log().readings().stream().map(each -> each.id().text()).toList(), "r"));
        Reading reading = new Reading(id, on, measured, shut, said(note));
        return readings("Write down a reading", all -> {
            List<Reading> after = new ArrayList<>(all);
            after.add(reading);
            return after;
        });
    }

    /** A reading was written down wrong: this is right, under the same id. */
    public static Attempt correct(Room room, Reading right) {
        if (room.log().readings().stream().noneMatch(each -> each.id().equals(right.id()))) {
            return Refused.nothing("reading");
        }
        return wrong(right.measured())
                .or(() -> note(right.note().orElse("")))
                .<Attempt>map(refused -> refused)
                .orElseGet(() -> readings("Correct a reading", all -> all.stream()
                        .map(each -> each.id().equals(right.id()) ? right : each)
                        .toList()));
    }

    /** These readings never were. */
    public static Attempt forgetReadings(List<ReadingId> ids) {
        return ids.isEmpty()
                ? Refused.nothing("reading")
                : readings("Delete " + Words.count(ids.size(), "reading"), all -> all.stream()
                        .filter(each -> !ids.contains(each.id()))
                        .toList());
    }

    /** Something was done. */
    public static Attempt serve(Room room, Service done) {
        Optional<Refused> wrong = note(done.note().orElse(""));
        if (wrong.isPresent()) {
            return wrong.get();
        }
        ServiceId id = new ServiceId(fresh(
                room.log().services().stream().map(each -> each.id().text()).toList(), "s"));
        Service service = new Service(id, done.on(), done.kind(), done.outlets(), done.blower(), done.note());
        return services("Write down a service", all -> {
            List<Service> after = new ArrayList<>(all);
            after.add(service);
            return after;
        });
    }

    /** These services never were. */
    public static Attempt forgetServices(List<ServiceId> ids) {
        return ids.isEmpty()
                ? Refused.nothing("service")
                : services("Delete " + Words.count(ids.size(), "service"), all -> all.stream()
                        .filter(each -> !ids.contains(each.id()))
                        .toList());
    }

    /** A step of the first start is done on a day; empty: not yet. */
    public static Edit tick(String step, Optional<LocalDate> on) {
        return log(on.isPresent() ? "Tick a step" : "Untick a step", log -> log.ticked(step, on));
    }

    /** Nothing of the first start is done: the room is started anew. */
    public static Edit untickAll() {
        return log("Untick all steps", log -> new Log(log.readings(), log.services(), List.of()));
    }

    private static String fresh(List<String> taken, String letter) {
        return Fresh.of(taken).numbered(letter);
    }

    private static Optional<Refused> note(String text) {
        return text.isBlank() || Names.trouble(text).isEmpty()
                ? Optional.empty()
                : Optional.of(Refused.because("A note is one line of text.", "Type it on one line."));
    }

    private static Optional<String> said(String note) {
        return Optional.of(note.strip()).filter(text -> !text.isEmpty());
    }

    private static Edit readings(String done, UnaryOperator<List<Reading>> change) {
        return log(done, log -> log.withReadings(change.apply(log.readings())));
    }

    private static Edit services(String done, UnaryOperator<List<Service>> change) {
        return log(done, log -> log.withServices(change.apply(log.services())));
    }

    private static Edit log(String done, UnaryOperator<Log> change) {
        return new Edit(done, room -> room.withLog(change.apply(room.log())));
    }

    /** What no gauge, jar or meter shows. */
    private static Optional<Refused> wrong(Reading.Measured measured) {
        if (measured instanceof Reading.Jar jar) {
            return beyond("The time of a jar", jar.s(), SECONDS, Dimension.DURATION)
                    .or(() -> jar.jarM3().isEmpty()
                            ? Optional.empty()
                            : beyond("A jar", jar.jarM3().getAsDouble(), JAR_M3, Dimension.VOLUME));
        }
        if (measured instanceof Reading.Gauge gauge) {
            return beyond("A gauge", gauge.gaugePa(), GAUGE_PA, Dimension.PRESSURE);
        }
        if (measured instanceof Reading.Watts watts) {
            return beyond("What a blower draws", watts.watts(), WATTS, Dimension.POWER);
        }
        if (measured instanceof Reading.Level level) {
            return beyond("A level", level.dba(), LEVEL_DBA, Dimension.SOUND_LEVEL);
        }
        return fall((Reading.Fall) measured);
    }

    /** A gauge is on a pipe that is there. */
    private static Optional<Refused> place(Room room, Reading.Measured measured) {
        return measured instanceof Reading.Gauge gauge ? gauge.at().flatMap(at -> beyond(room, at)) : Optional.empty();
    }

    private static Optional<Refused> beyond(Room room, Outlet.OnRun at) {
        Optional<Run> run = Find.run(room, at.run().text());
        return run.filter(pipe -> at.atM() >= 0 && at.atM() <= pipe.lengthM()).isPresent()
                ? Optional.empty()
                : Optional.of(run.map(pipe -> Refused.because(
                                "The gauge would be {at} along " + Words.run(pipe) + ", which is {long} long.",
                                "Type how far it is from the start of the pipe.",
                                new Amount("at", at.atM(), Dimension.LENGTH),
                                new Amount("long", pipe.lengthM(), Dimension.LENGTH)))
                        .orElseGet(() -> Refused.nothing("pipe")));
    }

    private static Optional<Refused> fall(Reading.Fall fall) {
        if (fall.toPa() >= fall.fromPa()) {
            return Optional.of(Refused.because(
                    "The gauge fell from {from} to {to}, which is no fall.",
                    "Type first what it showed when you started the watch, then what it showed at the end.",
                    new Amount("from", fall.fromPa(), Dimension.PRESSURE),
                    new Amount("to", fall.toPa(), Dimension.PRESSURE)));
        }
        return beyond("A gauge", fall.fromPa(), GAUGE_PA, Dimension.PRESSURE)
                .or(() -> beyond("A gauge", fall.toPa(), GAUGE_PA, Dimension.PRESSURE))
                .or(() -> beyond("The time of a fall", fall.s(), SECONDS, Dimension.DURATION));
    }

    private static Optional<Refused> beyond(String label, double si, Limits limits, Dimension dimension) {
        return limits.hold(si) ? Optional.empty() : Optional.of(limits.refusedAsNeeded(label, si, dimension));
    }
}
