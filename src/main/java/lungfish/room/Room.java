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
        OwnClasses ownClasses) {
    public Room {
        circuits = List.copyOf(circuits);
        racks = List.copyOf(racks);
        runs = List.copyOf(runs);
        gangs = List.copyOf(gangs);
        blowers = List.copyOf(blowers);
        stirrers = List.copyOf(stirrers);
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

    /** The same room in other air. */
    public Room withClimate(Climate that) {
        return copy(displayUnits, that, racks, blowers);
    }

    /** The same room with these blowers for all of its own. */
    public Room withBlowers(List<Blower> those) {
        return copy(displayUnits, climate, racks, those);
    }

    /** The same room with these racks for all of its own. */
    public Room withRacks(List<Rack> those) {
        return copy(displayUnits, climate, those, blowers);
    }

    /** The same room, last shown in these units. */
    public Room withDisplayUnits(DisplayUnits those) {
        return copy(those, climate, racks, blowers);
    }

    private Room copy(DisplayUnits units, Climate air, List<Rack> furniture, List<Blower> machines) {
        return new Room(
                name,
                notes,
                units,
                shell,
                air,
                supply,
                wishes,
                listener,
                circuits,
                furniture,
                runs,
                gangs,
                machines,
                backup,
                stirrers,
                ownClasses);
    }
}
