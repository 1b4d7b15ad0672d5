package lungfish.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.quantity.Dimension;
import lungfish.room.Outlet;
import lungfish.room.Seat;

/** What a column of the outlets table does with one outlet: show a property, read it, copy it. */
sealed interface Cell {
    /** The property as the reader reads it; empty where it is unknown. */
    String show(Seat seat, Reader reader);

    /** The outlet with the property as typed, or what is wrong. An empty text makes it unknown. */
    Typed read(String text, Outlet outlet, Seat seat, Reader reader);

    /** The outlet with the property of another. */
    Outlet copied(Outlet from, Outlet to);

    /** What came of reading a cell: the outlet after, or what was found and expected. */
    record Typed(Optional<Outlet> outlet, String found, String expected) {
        static Typed of(Outlet outlet) {
            return new Typed(Optional.of(outlet), "", "");
        }

        static Typed wrong(String found, String expected) {
            return new Typed(Optional.empty(), found, expected);
        }
    }

    /** A name that cannot be changed here. */
    record Fixed(Function<Seat, String> name) implements Cell {
        @Override
        public String show(Seat seat, Reader reader) {
            return name.apply(seat);
        }

        @Override
        public Typed read(String text, Outlet outlet, Seat seat, Reader reader) {
            return text.equals(name.apply(seat))
                    ? Typed.of(outlet)
                    : Typed.wrong("'" + text + "', which cannot be changed here", "'" + name.apply(seat) + "'");
        }

        @Override
        public Outlet copied(Outlet from, Outlet to) {
            return to;
        }
    }

    /** A number with a unit. */
    record Figure(
            Dimension dimension,
            Function<Outlet, OptionalDouble> get,
            BiFunction<Outlet, OptionalDouble, Optional<Outlet>> set,
            String expected)
            implements Cell {
        @Override
        public String show(Seat seat, Reader reader) {
            OptionalDouble there = get.apply(seat.outlet());
            return there.isPresent() ? reader.quantities().show(there.getAsDouble(), dimension) : "";
        }

        /** What was shown and comes back unchanged is no rounding of the value. */
        @Override
        public Typed read(String text, Outlet outlet, Seat seat, Reader reader) {
            if (text.equals(show(seat, reader))) {
                return put(outlet, get.apply(seat.outlet()), text);
            }
            return text.isEmpty()
                    ? put(outlet, OptionalDouble.empty(), text)
                    : reader.quantities()
                            .parse(text, dimension)
                            .match(
                                    si -> put(outlet, OptionalDouble.of(si), text),
                                    problem -> Typed.wrong(problem.found(), problem.expected()));
        }

        private Typed put(Outlet outlet, OptionalDouble value, String text) {
            return set.apply(outlet, value).map(Typed::of).orElse(Typed.wrong("'" + text + "'", expected));
        }

        @Override
        public Outlet copied(Outlet from, Outlet to) {
            return set.apply(to, get.apply(from)).orElse(to);
        }
    }

    /** One of several, by its id or its name. */
    record Choice(
            String kind,
            Function<Reader, List<Option>> options,
            Function<Outlet, Optional<String>> get,
            BiFunction<Outlet, Optional<String>, Optional<Outlet>> set)
            implements Cell {
        private static final int OFFERED = 3;

        /** What can be chosen. */
        record Option(String id, String name) {}

        @Override
        public String show(Seat seat, Reader reader) {
            return get.apply(seat.outlet())
                    .map(id -> options.apply(reader).stream()
                            .filter(option -> option.id().equals(id))
                            .map(Option::name)
                            .findFirst()
                            .orElse(id))
                    .orElse("");
        }

        @Override
        public Typed read(String text, Outlet outlet, Seat seat, Reader reader) {
            List<Option> all = options.apply(reader);
            Optional<String> id = all.stream()
                    .filter(option ->
                            option.id().equalsIgnoreCase(text) || option.name().equalsIgnoreCase(text))
                    .map(Option::id)
                    .findFirst();
            Optional<Outlet> after = id.isEmpty() && !text.isEmpty() ? Optional.empty() : set.apply(outlet, id);
            String found = text.isEmpty() ? "nothing" : "'" + text + "'";
            return after.map(Typed::of).orElseGet(() -> Typed.wrong(found, kind + ": " + offer(text, all)));
        }

        private static String offer(String text, List<Option> all) {
            String typed = text.toLowerCase(Locale.ROOT);
            List<Option> near = all.stream()
                    .filter(option -> !typed.isEmpty()
                            && option.name().toLowerCase(Locale.ROOT).contains(typed))
                    .toList();
            return (near.isEmpty() ? all : near)
                    .stream().limit(OFFERED).map(Option::name).collect(Collectors.joining("; "));
        }

        @Override
        public Outlet copied(Outlet from, Outlet to) {
            return set.apply(to, get.apply(from)).orElse(to);
        }
    }
}
