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
record CardOfRoom(Room room, Catalogue catalogue, Quantities quantities, LocalDate today) {
    static CardOfRoom of(View view) {
        return new CardOfRoom(view.desk().room(), view.desk().shared().catalogue(), view.quantities(), view.today());
    }

    Printout printout() {
        String date = "As of " + today;
        return DrillCardPage.of(new Planner(catalogue).plan(room), catalogue, quantities, Optional.of(date));
    }
}
