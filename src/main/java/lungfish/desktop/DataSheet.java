package lungfish.desktop;

import java.util.Optional;
import lungfish.catalogue.BlowerClass;

/** A blower typed from its data sheet. */
final class DataSheet extends SideSheet {
    DataSheet(View view, Side side, Optional<BlowerClass> before) {
        super(view, side, "A blower from its data sheet");
    }
}
