package lungfish.choice;

import java.util.Optional;
import lungfish.catalogue.PipeSize;
import lungfish.plan.PipePrice;
import lungfish.room.Room;

/**
 * A room with its main built in another way.
 *
 * @param size of the main; absent where every run keeps the size that it is drawn in
 * @param asDrawn whether it is the room itself
 */
public record PipeVariant(PipeLayout layout, Optional<PipeSize> size, boolean asDrawn, Room room, PipePrice price) {}
