package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Climate;
import lungfish.room.OwnClasses;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shell;
import lungfish.room.Spreads;
import lungfish.room.Supply;
import lungfish.room.Wishes;

/**
 * A whole room from three questions: how big it is, how many tanks, and what runs today. What it makes is a first drawing
 * that is right in itself and every line of which can be changed: racks along the walls, a loop under the ceiling, today's
 * pumps, and a place for the blower, which the plan chooses.
 *
 * @param shell how big the room is; its doors and inner walls are drawn anew
 * @param tanks how many, each with one device
 * @param size of every tank
 * @param device in every tank
 * @param pumps how many run today
 * @param pump their class, or that which one would buy here: its mains are those of the room
 */
public record QuickStart(Shell shell, int tanks, TankSize size, DeviceClass device, int pumps, BlowerClass pump) {
    /** More is no first sketch. */
    private static final int MOST_TANKS = 2000;

    /** An empty room, of which nothing but its walls is known. */
    public static Room emptyRoom(String name, DisplayUnits units) {
        return new Room(
                name,
                Optional.empty(),
                units,
                units == DisplayUnits.US ? shell(4.2672, 3.048, 2.4384) : shell(4, 3, 2.4),
                Climate.UNKNOWN,
                Supply.UNKNOWN,
                Wishes.NONE,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Backup.NONE,
                List.of(),
                OwnClasses.NONE,
                Spreads.UNKNOWN);
    }

    /** A box of walls without anything in them: m. */
    public static Shell shell(double lengthM, double widthM, double heightM) {
        return new Shell(lengthM, widthM, heightM, OptionalDouble.empty(), List.of(), List.of());
    }

    /** Makes the room of this one, which keeps its name, air, wishes and listener; or says what is in the way. */
    public Attempt in(Room room, Catalogue catalogue) {
        Optional<Refused> trouble = trouble();
        if (trouble.isPresent()) {
            return trouble.get();
        }
        Shell walls = QuickRacks.withDoor(shell);
        List<Rack> racks = QuickRacks.along(walls, tanks, size, device.id());
        int placed = racks.stream().mapToInt(rack -> (int) rack.tanks().count()).sum();
        if (placed < tanks) {
            return tooMany(placed);
        }
        return Edit.tried(room, "Set up the room", before -> made(before, walls, racks, catalogue));
    }

    private Optional<Refused> trouble() {
        List<Refused> troubles = new ArrayList<>();
        Sizes.span("The room's length", shell.lengthM(), troubles);
        Sizes.span("The room's width", shell.widthM(), troubles);
        Sizes.span("The room's height", shell.heightM(), troubles);
        if (tanks < 1 || tanks > MOST_TANKS) {
            troubles.add(Refused.because(
                    tanks + " tanks cannot be set up at once.", "Say a number from 1 to " + MOST_TANKS + "."));
        }
        if (pumps < 0 || pumps > tanks) {
            troubles.add(Refused.because(
                    pumps + " pumps cannot share " + tanks + " tanks.",
                    "Say a number from none to one for each tank; those that rest do not count."));
        }
        if (troubles.isEmpty() && QuickRacks.shelvesIn(shell, size) < 1) {
            troubles.add(Refused.because(
                    "Under a ceiling of {ceiling} no such tank fits on a rack.",
                    "Take a lower tank.",
                    Refused.length("ceiling", shell.heightM())));
        }
        return troubles.stream().findFirst();
    }

    private static Refused tooMany(int placed) {
        String fit = placed == 0 ? "No such tank fits" : "Only " + placed + " such tanks fit";
        return Refused.because(
                fit + " on racks along the walls.", "Take smaller tanks, fewer of them, or a larger room.");
    }

    private Room made(Room before, Shell walls, List<Rack> racks, Catalogue catalogue) {
        QuickAir air = new QuickAir(walls, racks, this, catalogue);
        List<Blower> blowers = new ArrayList<>(air.today());
        blowers.add(air.planned());
        return new Room(
                before.name(),
                before.notes(),
                before.displayUnits(),
                walls,
                before.climate(),
                supply(before.supply()),
                before.wishes(),
                before.listener().map(ear -> ear.at(QuickRacks.inside(walls, ear.place()))),
                before.circuits(),
                racks,
                List.of(air.main()),
                List.of(),
                blowers,
                before.backup(),
                List.of(),
                before.ownClasses(),
                before.spreads());
    }

    /** The mains of the pumps that are sold here, unless the room says. */
    private Supply supply(Supply before) {
        return before.voltageV().isPresent()
                ? before
                : new Supply(pump.voltageV(), pump.frequencyHz(), before.pricePerJ(), before.currency());
    }
}
