package lungfish.desktop;

import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.drawing.RoomPicture;
import lungfish.plan.Planner;
import lungfish.print.Paper;
import lungfish.print.Printout;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.web.RoomForms;

/**
 * The build sheet of a room as it stands now, with the date of today. The room is planned for it anew, so that no sheet shows
 * figures of an older one; that takes a while, away from the front.
 */
record ReportOfRoom(Room room, Catalogue catalogue, Quantities quantities, LocalDate today) {
    static ReportOfRoom of(View view) {
        return new ReportOfRoom(view.desk().room(), view.desk().shared().catalogue(), view.quantities(), view.today());
    }

    Printout printout() {
        return forms().pages(Paper.of(quantities.units()));
    }

    /** The file with that ending. */
    byte[] bytes(String ending) {
        return forms().bytes(ending, Paper.of(quantities.units()));
    }

    BufferedImage image() {
        return RoomPicture.image(new Planner(catalogue).plan(room), quantities);
    }

    private RoomForms forms() {
        return RoomForms.of(new Planner(catalogue).plan(room), catalogue, quantities, Optional.of(today));
    }
}
