package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.room.Backup;
import lungfish.room.Backup.Battery;
import lungfish.room.BatteryId;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Point;
import lungfish.room.Room;

/** Edits that give a room what keeps its tanks alive: several things as one step. */
public final class RescueEdits {
    private static final String BATTERY = "battery";
    private static final String STANDBY = "standby";

    /** How far from the first blower a new standby is drawn, where the room has so much space. */
    private static final double BESIDE_M = 0.4;

    private RescueEdits() {}

    /**
     * A room gets the backup and the standbys of another version of itself, as one step.
     *
     * @param done its words, fit to follow "Undo"
     */
    public static Attempt become(Room room, String done, Room kept) {
        return Edit.tried(room, done, before -> before.withBackup(kept.backup())
                .withBlowers(withStandbys(before.blowers(), kept.blowers(Blower.Role.STANDBY))));
    }

    private static List<Blower> withStandbys(List<Blower> blowers, List<Blower> standbys) {
        Set<BlowerId> known = blowers.stream().map(Blower::id).collect(Collectors.toSet());
        List<Blower> with = new ArrayList<>(blowers);
        standbys.stream().filter(each -> !known.contains(each.id())).forEach(with::add);
        return with;
    }

    /**
     * The room with more batteries of a class: more of the very ones it has, else new ones.
     *
     * @param chargeC rated charge of a new one
     */
    public static Room moreBatteries(Room room, BatteryClass kind, double chargeC, int more) {
        if (more == 0) {
            return room;
        }
        List<Battery> batteries = new ArrayList<>(room.backup().batteries());
        for (int i = 0; i < batteries.size(); i++) {
            Battery there = batteries.get(i);
            if (there.kind().equals(kind.id())) {
                batteries.set(i, there.times(there.count() + more));
                return room.withBackup(room.backup().withBatteries(batteries));
            }
        }
        batteries.add(battery(room, kind, chargeC, more));
        return room.withBackup(room.backup().withBatteries(batteries));
    }

    private static Battery battery(Room room, BatteryClass kind, double chargeC, int count) {
        Fresh ids = Fresh.of(
                room.backup().batteries().stream().map(each -> each.id().text()).toList());
        return new Battery(
                new BatteryId(ids.like(BATTERY)),
                kind.id(),
                count,
                kind.blockV(),
                chargeC,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** The room with one standby more, beside one of its blowers: where that joins the pipe, and on the same circuit. */
    public static Room oneStandby(Room room, BlowerClass kind, BlowerId beside) {
        BlowerId id = new BlowerId(Fresh.blowers(room).like(STANDBY));
        Blower like = Find.blower(room, beside.text()).orElseGet(() -> Blower.planned(id));
        Blower standby = new Blower(
                id,
                Names.unique(Words.opening(STANDBY), Taken.blowerNames(room)),
                Blower.Role.STANDBY,
                Optional.of(kind.id()),
                1,
                like.siting().at(like.siting().place().map(place -> beside(place, room))),
                like.fittings(),
                like.bleed(),
                like.circuit(),
                OptionalDouble.empty(),
                List.of(),
                like.feeds());
        List<Blower> with = new ArrayList<>(room.blowers());
        with.add(standby);
        return room.withBlowers(with);
    }

    private static Point beside(Point place, Room room) {
        boolean fits = place.xM() + 2 * BESIDE_M <= room.shell().lengthM();
        return place.moved(fits ? BESIDE_M : -BESIDE_M, 0, 0);
    }

    /** The room with its backup changed so that a standby starts by itself. */
    public static Room startingItself(Room room) {
        Backup.Standby now = room.backup().standby().orElse(Backup.Standby.BY_HAND);
        return room.withBackup(room.backup()
                .withStandby(Optional.of(new Backup.Standby(Backup.Standby.Start.AUTOMATIC, now.readyS()))));
    }
}
