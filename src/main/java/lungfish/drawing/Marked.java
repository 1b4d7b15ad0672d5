package lungfish.drawing;

import java.util.Optional;
import java.util.Set;
import lungfish.reason.PartId;

/** What is marked on a drawing: the chosen parts, and the one under the pointer. */
public record Marked(Set<PartId> chosen, Optional<PartId> hovered) {
    public static final Marked NOTHING = new Marked(Set.of(), Optional.empty());

    public Marked {
        chosen = Set.copyOf(chosen);
    }

    boolean isNothing() {
        return chosen.isEmpty() && hovered.isEmpty();
    }

    boolean isChosen(PartId part) {
        return chosen.contains(part);
    }

    boolean isHovered(PartId part) {
        return hovered.filter(part::equals).isPresent();
    }
}
