package lungfish.edit;

import lungfish.catalogue.Catalogue;
import lungfish.quantity.Quantities;
import lungfish.room.OwnClasses;

/**
 * In whose units cells are read and shown, and which classes they may name.
 *
 * @param own the room's own classes, found before the catalogue's
 */
public record Reader(Quantities quantities, OwnClasses own, Catalogue catalogue) {}
