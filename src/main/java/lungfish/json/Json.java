package lungfish.json;

import java.util.List;

/** A value in a JSON text, with its place. Objects keep the order of their keys, and keys that stand there twice. */
public sealed interface Json {
    /** Where it stands. */
    Place place();

    /** What stands there, in plain words and short: {@code "deep"}, {@code 1.8}, {@code a list of 3}. */
    String words();

    /** One key of an object with its value. */
    record Entry(String key, Json value) {}

    /** An object. */
    record Obj(Place place, List<Entry> entries) implements Json {
        public Obj {
            entries = List.copyOf(entries);
        }

        @Override
        public String words() {
            return "an object";
        }
    }

    /** A list. */
    record Arr(Place place, List<Json> items) implements Json {
        public Arr {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list of " + items.size();
        }
    }

    /** A text. */
    record Text(Place place, String value) implements Json {
        private static final int SHOWN = 60;

        @Override
        public String words() {
            return '"' + (value.length() > SHOWN ? value.substring(0, SHOWN) + "…" : value) + '"';
        }
    }

    /** A number as it was written; the tokens NaN and Infinity, which JSON forbids, are kept so that they can be told. */
    record Num(Place place, String written) implements Json {
        /** The nearest double; infinite where the number is too large for one. */
        public double value() {
            return switch (written) {
                case "NaN" -> Double.NaN;
                case "Infinity", "+Infinity", "INF", "+INF" -> Double.POSITIVE_INFINITY;
                case "-Infinity", "-INF" -> Double.NEGATIVE_INFINITY;
                default -> Double.parseDouble(written);
            };
        }

        @Override
        public String words() {
            return written;
        }
    }

    /** True or false. */
    record Truth(Place place, boolean value) implements Json {
        @Override
        public String words() {
            return Boolean.toString(value);
        }
    }

    /** The word null. */
    record Null(Place place) implements Json {
        @Override
        public String words() {
            return "null";
        }
    }

    /**
     * Nothing: the value of a key that is missing.
     *
     * @param told its absence needs no word, since the object that should hold it is told to be missing
     */
    record Gap(Place place, boolean told) implements Json {
        @Override
        public String words() {
            return "nothing";
        }
    }
}
