package lungfish.roomfile;

import java.util.List;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.DeviceClass;
import lungfish.json.Place;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Reading;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Service;
import lungfish.room.Shelf;
import lungfish.room.Stirrer;
import lungfish.room.Tank;

/** Every named part of a room, with its place in the file. */
record Spots(
        Room room,
        List<Spot<Rack>> racks,
        List<Spot<Shelf>> shelves,
        List<Spot<Tank>> tanks,
        List<Spot<Outlet>> outlets,
        List<Spot<Run>> runs,
        List<Spot<Gang>> gangs,
        List<Spot<Blower>> blowers,
        List<Spot<Circuit>> circuits,
        List<Spot<Backup.Battery>> batteries,
        List<Spot<Stirrer>> stirrers,
        List<Spot<DeviceClass>> ownDevices,
        List<Spot<BlowerClass>> ownBlowers,
        List<Spot<Reading>> readings,
        List<Spot<Service>> services) {
    static Spots of(Room room) {
        List<Spot<Rack>> racks = Spot.each(key("racks"), room.racks());
        List<Spot<Shelf>> shelves = Spot.inside(racks, "shelves", Rack::shelves);
        List<Spot<Tank>> tanks = Spot.inside(shelves, "tanks", Shelf::tanks);
        return new Spots(
                room,
                racks,
                shelves,
                tanks,
                Spot.inside(tanks, "outlets", Tank::outlets),
                Spot.each(key("runs"), room.runs()),
                Spot.each(key("gangs"), room.gangs()),
                Spot.each(key("blowers"), room.blowers()),
                Spot.each(key("circuits"), room.circuits()),
                Spot.each(key("backup").key("batteries"), room.backup().batteries()),
                Spot.each(key("stirrers"), room.stirrers()),
                Spot.each(key("own_classes").key("devices"), room.ownClasses().devices()),
                Spot.each(key("own_classes").key("blowers"), room.ownClasses().blowers()),
                Spot.each(key("log").key("readings"), room.log().readings()),
                Spot.each(key("log").key("services"), room.log().services()));
    }

    private static Place key(String key) {
        return Place.ROOT.key(key);
    }
}
