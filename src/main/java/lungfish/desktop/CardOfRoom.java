package lungfish.desktop;

import java.time.LocalDate;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.plan.Planner;
import lungfish.print.DrillCardPage;
import lungfish.print.Printout;
import lungfish.quantity.Quantities;
import lungfish.room.Room;

/**
 * The drill card of a room as it stands now, with the date of today: what hangs on a wall grows old. The room is planned for
 * it anew, so that a card never shows figures of an older one; that takes a while, away from the front.
 */
record CardOfRoom(Room room, Catalogue catalogue, Quantities quantities) {
    static CardOfRoom of(View view) {
        return new CardOfRoom(view.desk().room(), view.desk().shared().catalogue(), view.quantities());
    }

    Printout printout() {
        String date = "As of " + LocalDate.now(java.time.ZoneId.systemDefault());
        return DrillCardPage.of(new Planner(catalogue).plan(room), catalogue, quantities, Optional.of(date));
    }
}
