package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The things that the keeper has chosen, in the order chosen; the last one leads (others are aligned to it).
 *
 * @param parts each once
 */
public record Selection(List<Part> parts) {
    public static final Selection NONE = new Selection(List.of());

    public Selection {
        parts = parts.stream().distinct().toList();
    }

    public static Selection of(Part... parts) {
        return new Selection(List.of(parts));
    }

    public static Selection of(Collection<Part> parts) {
        return new Selection(List.copyOf(parts));
    }

    public boolean isEmpty() {
        return parts.isEmpty();
    }

    public boolean has(Part part) {
        return parts.contains(part);
    }

    /** The one chosen last. */
    public Optional<Part> lead() {
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(parts.size() - 1));
    }

    /** With this one too, now leading. */
    public Selection with(Part part) {
        List<Part> more = new ArrayList<>(without(part).parts);
        more.add(part);
        return new Selection(more);
    }

    public Selection without(Part part) {
        return new Selection(parts.stream().filter(each -> !each.equals(part)).toList());
    }

    /** Chosen if it was not, let go if it was. */
    public Selection toggled(Part part) {
        return has(part) ? without(part) : with(part);
    }

    /** Those of one kind. */
    public Stream<Part> all(Part.Kind kind) {
        return parts.stream().filter(part -> part.kind() == kind);
    }

    /** The ids of those of one kind, each made what it is: {@code ids(Kind.RACK, RackId::new)}. */
    public <T> List<T> ids(Part.Kind kind, Function<String, T> id) {
        return all(kind).map(Part::id).map(id).distinct().toList();
    }

    /** Whether all are of one kind. Nothing is of one kind. */
    public boolean isOnly(Part.Kind kind) {
        return !parts.isEmpty() && parts.stream().allMatch(part -> part.kind() == kind);
    }
}
