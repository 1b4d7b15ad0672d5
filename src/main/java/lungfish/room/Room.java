package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.quantity.DisplayUnits;

/**
 * A fish room as drawn. Immutable; absent values are unknown, never defaults.
 *
 * @param name as the keeper calls it
 * @param notes free text
 * @param displayUnits the units it was last shown in
 * @param racks in the order drawn, those in place and those planned
 * @param runs the lengths of pipe: main, branches, risers
 * @param gangs taps that several outlets share
 * @param ownClasses devices and blowers typed in from a data sheet
 * @param spreads how far what is said may be off
 * @param building how the keeper builds
 * @param log what has happened since
 */
public record Room(
        String name,
        Optional<String> notes,
        DisplayUnits displayUnits,
        Shell shell,
        Climate climate,
        Supply supply,
        Wishes wishes,
        Optional<Listener> listener,
        List<Circuit> circuits,
        List<Rack> racks,
        List<Run> runs,
        List<Gang> gangs,
        List<Blower> blowers,
        Backup backup,
        List<Stirrer> stirrers,
        OwnClasses ownClasses,
        Spreads spreads,
        Building building,
        Log log) {
    public Room {
        circuits = List.copyOf(circuits);
        racks = List.copyOf(racks);
        runs = List.copyOf(runs);
        gangs = List.copyOf(gangs);
        blowers = List.copyOf(blowers);
        stirrers = List.copyOf(stirrers);
    }

    /** A room of which nothing is said about building it, and in which nothing has happened yet. */
    public Room(
            String name,
            Optional<String> notes,
            DisplayUnits displayUnits,
            Shell shell,
            Climate climate,
            Supply supply,
            Wishes wishes,
            Optional<Listener> listener,
            List<Circuit> circuits,
            List<Rack> racks,
            List<Run> runs,
            List<Gang> gangs,
            List<Blower> blowers,
            Backup backup,
            List<Stirrer> stirrers,
            OwnClasses ownClasses,
            Spreads spreads) {
        this(
                name,
                notes,
                displayUnits,
                shell,
                climate,
                supply,
                wishes,
                listener,
                circuits,
                racks,
                runs,
                gangs,
                blowers,
                backup,
                stirrers,
                ownClasses,
                spreads,
                Building.UNKNOWN,
                Log.EMPTY);
    }

    /** Every outlet with its tank, shelf and rack, in the order drawn; those of planned racks too. */
    public List<Seat> seats() {
        List<Seat> seats = new ArrayList<>();
        for (Rack rack : racks) {
            for (Shelf shelf : rack.shelves()) {
                for (Tank tank : shelf.tanks()) {
                    for (int i = 0; i < tank.outlets().size(); i++) {
                        seats.add(new Seat(rack, shelf, tank, tank.outlets().get(i), i));
                    }
                }
            }
        }
        return seats;
    }

    /** The blowers of one role. */
    public List<Blower> blowers(Blower.Role role) {
        return blowers.stream().filter(blower -> blower.role() == role).toList();
    }

    /** The same room under another name. */
    public Room withName(String that) {
        return said(that, supply, circuits, wishes, backup);
    }

    /** The same room in other air. */
    public Room withClimate(Climate that) {
        return surrounded(displayUnits, shell, that, listener);
    }

    /** The same room on other mains. */
    public Room withSupply(Supply that) {
        return said(name, that, circuits, wishes, backup);
    }

    /** The same room with these circuits for all of its own. */
    public Room withCircuits(List<Circuit> those) {
        return said(name, supply, those, wishes, backup);
    }

    /** The same room, of which this is wished. */
    public Room withWishes(Wishes that) {
        return said(name, supply, circuits, that, backup);
    }

    /** The same room, kept going by this. */
    public Room withBackup(Backup that) {
        return said(name, supply, circuits, wishes, that);
    }

    /** The same room within other walls. */
    public Room withShell(Shell that) {
        return surrounded(displayUnits, that, climate, listener);
    }

    /** The same room, heard from there, or by nobody. */
    public Room withListener(Optional<Listener> that) {
        return surrounded(displayUnits, shell, climate, that);
    }

    /** The same room, last shown in these units. */
    public Room withDisplayUnits(DisplayUnits those) {
        return surrounded(those, shell, climate, listener);
    }

    /** The same room with these blowers for all of its own. */
    public Room withBlowers(List<Blower> those) {
        return furnished(racks, runs, gangs, those, stirrers);
    }

    /** The same room with these racks for all of its own. */
    public Room withRacks(List<Rack> those) {
        return furnished(those, runs, gangs, blowers, stirrers);
    }

    /** The same room with these runs for all of its own. */
    public Room withRuns(List<Run> those) {
        return furnished(racks, those, gangs, blowers, stirrers);
    }

    /** The same room with these gangs for all of its own. */
    public Room withGangs(List<Gang> those) {
        return furnished(racks, runs, those, blowers, stirrers);
    }

    /** The same room with these stirrers for all of its own. */
    public Room withStirrers(List<Stirrer> those) {
        return furnished(racks, runs, gangs, blowers, those);
    }

    /** The same room, of which this may be so far off. */
    public Room withSpreads(Spreads those) {
        return known(ownClasses, those, building, log);
    }

    /** The same room, built so. */
    public Room withBuilding(Building that) {
        return known(ownClasses, spreads, that, log);
    }

    /** The same room, in which this has happened. */
    public Room withLog(Log that) {
        return known(ownClasses, spreads, building, that);
    }

    /** The same room with these classes typed from data sheets for all of its own. */
    public Room withOwnClasses(OwnClasses those) {
        return known(those, spreads, building, log);
    }

    private Room known(OwnClasses own, Spreads off, Building built, Log happened) {
        return new Room(
                name,
                notes,
                displayUnits,
                shell,
                climate,
                supply,
                wishes,
                listener,
                circuits,
                racks,
                runs,
                gangs,
                blowers,
                backup,
                stirrers,
                own,
                off,
                built,
                happened);
    }

    private Room said(String called, Supply mains, List<Circuit> wiring, Wishes wished, Backup kept) {
        return new Room(
                called,
                notes,
                displayUnits,
                shell,
                climate,
                mains,
                wished,
                listener,
                wiring,
                racks,
                runs,
                gangs,
                blowers,
                kept,
                stirrers,
                ownClasses,
                spreads,
                building,
                log);
    }

    private Room surrounded(DisplayUnits units, Shell walls, Climate air, Optional<Listener> ear) {
        return new Room(
                name,
                notes,
                units,
                walls,
                air,
                supply,
                wishes,
                ear,
                circuits,
                racks,
                runs,
                gangs,
                blowers,
                backup,
                stirrers,
                ownClasses,
                spreads,
                building,
                log);
    }

    private Room furnished(
            List<Rack> furniture, List<Run> pipe, List<Gang> shared, List<Blower> machines, List<Stirrer> others) {
        return new Room(
                name,
                notes,
                displayUnits,
                shell,
                climate,
                supply,
                wishes,
                listener,
                circuits,
                furniture,
                pipe,
                shared,
                machines,
                backup,
                others,
                ownClasses,
                spreads,
                building,
                log);
    }
}
