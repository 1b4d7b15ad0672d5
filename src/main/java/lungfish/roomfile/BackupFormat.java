package lungfish.roomfile;

import static lungfish.roomfile.Ranges.CHARGE_C;
import static lungfish.roomfile.Ranges.DRAWN_W;
import static lungfish.roomfile.Ranges.GAUGE_PA;
import static lungfish.roomfile.Ranges.MOST_MACHINES;
import static lungfish.roomfile.Ranges.POWER_W;
import static lungfish.roomfile.Ranges.SECONDS;
import static lungfish.roomfile.Ranges.SOME_SHARE;
import static lungfish.roomfile.Ranges.TEMPERATURE_K;
import static lungfish.roomfile.Ranges.VOLTAGE_V;
import static lungfish.roomfile.Ranges.WAIT_S;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.CircuitId;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankId;

/** What helps when the air stops: batteries, generator, standby, alarm, shedding, and stirring without air. */
final class BackupFormat {
    private BackupFormat() {}

    static Backup read(Fields in) {
        return new Backup(
                in.maybeObjects("batteries", BackupFormat::readBattery),
                in.maybeObject("inverter", BackupFormat::readInverter),
                in.maybeObject("alarm", BackupFormat::readAlarm),
                in.maybeObject("shedding", shed -> new Backup.Shedding(shed.text("valve"), shed.text("who"))),
                in.maybeObject("generator", BackupFormat::readGenerator),
                in.maybeObject("battery_pumps", BackupFormat::readPumps),
                in.maybeObject("standby", BackupFormat::readStandby),
                in.maybeNumber("notice_s", WAIT_S),
                in.maybeNumber("mend_s", SECONDS),
                in.maybeNumber("charger_w", DRAWN_W));
    }

    static void write(JsonWriter out, Backup backup) {
        out.maybeObjects("batteries", backup.batteries(), BackupFormat::writeBattery)
                .maybeObject("inverter", backup.inverter(), BackupFormat::writeInverter)
                .maybeFlatObject("alarm", backup.alarm(), BackupFormat::writeAlarm)
                .maybeObject("shedding", backup.shedding(), BackupFormat::writeShedding)
                .maybeFlatObject("generator", backup.generator(), BackupFormat::writeGenerator)
                .maybeFlatObject("battery_pumps", backup.batteryPumps(), BackupFormat::writePumps)
                .maybeFlatObject("standby", backup.standby(), BackupFormat::writeStandby)
                .maybeNumber("notice_s", backup.noticeS())
                .maybeNumber("mend_s", backup.mendS())
                .maybeNumber("charger_w", backup.chargerW());
    }

    private static Backup.Alarm readAlarm(Fields in) {
        return new Backup.Alarm(
                in.maybeNumber("set_gauge_pa", GAUGE_PA), in.maybeId("circuit").map(CircuitId::new));
    }

    private static void writeAlarm(JsonWriter out, Backup.Alarm alarm) {
        out.maybeNumber("set_gauge_pa", alarm.setPa())
                .maybeText("circuit", alarm.circuit().map(CircuitId::text));
    }

    private static Backup.Generator readGenerator(Fields in) {
        return new Backup.Generator(
                in.maybeNumber("rated_w", DRAWN_W),
                in.maybeNumber("fuel_s", SECONDS),
                in.maybeNumber("ready_s", WAIT_S));
    }

    private static void writeGenerator(JsonWriter out, Backup.Generator generator) {
        out.maybeNumber("rated_w", generator.ratedW())
                .maybeNumber("fuel_s", generator.fuelS())
                .maybeNumber("ready_s", generator.readyS());
    }

    private static Backup.BatteryPumps readPumps(Fields in) {
        return new Backup.BatteryPumps(in.id("kind"), in.required("count").whole(1, MOST_MACHINES));
    }

    private static void writePumps(JsonWriter out, Backup.BatteryPumps pumps) {
        out.text("kind", pumps.kind()).whole("count", pumps.count());
    }

    private static Backup.Standby readStandby(Fields in) {
        return new Backup.Standby(in.word("start", Backup.Standby.Start.class), in.maybeNumber("ready_s", WAIT_S));
    }

    private static void writeStandby(JsonWriter out, Backup.Standby standby) {
        out.word("start", standby.start()).maybeNumber("ready_s", standby.readyS());
    }

    private static void writeShedding(JsonWriter out, Backup.Shedding shedding) {
        out.text("valve", shedding.valve()).text("who", shedding.who());
    }

    private static Backup.Battery readBattery(Fields in) {
        return new Backup.Battery(
                new BatteryId(in.id("id")),
                in.id("kind"),
                in.required("count").whole(1, MOST_MACHINES),
                in.number("voltage_v", VOLTAGE_V),
                in.number("capacity_c", CHARGE_C),
                in.maybeNumber("temperature_k", TEMPERATURE_K),
                in.maybeNumber("capacity_left", SOME_SHARE),
                in.maybeId("charged_from").map(CircuitId::new));
    }

    private static void writeBattery(JsonWriter out, Backup.Battery battery) {
        out.text("id", battery.id().text())
                .text("kind", battery.kind())
                .whole("count", battery.count())
                .number("voltage_v", battery.voltageV())
                .number("capacity_c", battery.capacityC())
                .maybeNumber("temperature_k", battery.temperatureK())
                .maybeNumber("capacity_left", battery.wear())
                .maybeText("charged_from", battery.chargedFrom().map(CircuitId::text));
    }

    private static Backup.Inverter readInverter(Fields in) {
        return new Backup.Inverter(
                in.maybeNumber("efficiency", SOME_SHARE),
                in.maybeNumber("idle_w", POWER_W),
                in.maybeNumber("rated_w", POWER_W),
                in.maybeNumber("surge_w", POWER_W),
                in.maybeWord("wave", Backup.Inverter.Wave.class));
    }

    private static void writeInverter(JsonWriter out, Backup.Inverter inverter) {
        out.maybeNumber("efficiency", inverter.efficiency())
                .maybeNumber("idle_w", inverter.idleW())
                .maybeNumber("rated_w", inverter.ratedW())
                .maybeNumber("surge_w", inverter.surgeW())
                .maybeWord("wave", inverter.wave());
    }

    static Stirrer readStirrer(Fields in) {
        return new Stirrer(
                new StirrerId(in.id("id")),
                new TankId(in.id("tank")),
                in.word("kind", Stirrer.Kind.class),
                in.maybeNumber("power_w", POWER_W),
                in.maybeId("circuit").map(CircuitId::new));
    }

    static void writeStirrer(JsonWriter out, Stirrer stirrer) {
        out.text("id", stirrer.id().text())
                .text("tank", stirrer.tank().text())
                .word("kind", stirrer.kind())
                .maybeNumber("power_w", stirrer.powerW())
                .maybeText("circuit", stirrer.circuit().map(CircuitId::text));
    }
}
