package lungfish.terminal;

import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.roomfile.RoomReader;
import picocli.CommandLine.Parameters;

/** A command about one room: reads it, plans it, and tells one side of the plan. */
abstract class RoomCommand extends Command {
    @Parameters(paramLabel = "ROOM", description = "A room file, or the name of a demo room.")
    private String room = "";

    /** The same with its room, as if the line had been read. */
    final RoomCommand about(String thatRoom) {
        room = thatRoom;
        return this;
    }

    @Override
    final Outcome call() {
        Catalogue catalogue = CatalogueFiles.load();
        RoomReader reader = new RoomReader(catalogue);
        Planner planner = new Planner(catalogue);
        return Outcome.of(
                Input.room(room), bytes -> Outcome.of(reader.read(bytes), read -> answer(planner.plan(read))));
    }

    private Outcome answer(Plan plan) {
        Room read = plan.room();
        DisplayUnits units = unitsOr(read.displayUnits());
        return answer(plan, new Quantities(units, read.supply().currency().orElse("")));
    }

    abstract Outcome answer(Plan plan, Quantities quantities);

    /** An answer; a plan that does not work until something is mended is told by the exit code too. */
    static Outcome told(Plan plan, String text) {
        return new Outcome.Answer(plan.isBlocked() ? Exit.BLOCKED : Exit.FINE, text);
    }
}
