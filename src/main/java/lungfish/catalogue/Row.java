package lungfish.catalogue;

import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;

/** One row of a data file: reads its columns, and complains with file, row and column. */
record Row(String file, CSVRecord cells) {
    String text(String column) {
        if (!cells.isMapped(column) || !cells.isSet(column)) {
            throw bad(column, "is missing");
        }
        String text = cells.get(column).strip();
        if (text.isEmpty()) {
            throw bad(column, "is empty");
        }
        return text;
    }

    /** A number in a column without a unit. */
    double number(String column) {
        String text = text(column);
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            throw bad(column, "holds '" + text + "', which is no number", notANumber);
        }
        throw bad(column, "holds '" + text + "', which is not finite");
    }

    /** The number of column {@code name_unit}, in SI. */
    double si(String name, Practical unit) {
        return unit.toSi(number(column(name, unit)));
    }

    /** The same, 0 or above. */
    double atLeastZero(String name, Practical unit) {
        double si = si(name, unit);
        if (si < 0) {
            throw bad(column(name, unit), "is below 0");
        }
        return si;
    }

    /** The same, above 0. */
    double aboveZero(String name, Practical unit) {
        double si = si(name, unit);
        if (si <= 0) {
            throw bad(column(name, unit), "is not above 0");
        }
        return si;
    }

    /** The same; an empty cell is an absent value. */
    OptionalDouble ifGiven(String name, Practical unit) {
        return isEmpty(column(name, unit)) ? OptionalDouble.empty() : OptionalDouble.of(si(name, unit));
    }

    boolean isEmpty(String column) {
        return cells.isMapped(column) && cells.get(column).isBlank();
    }

    <E extends Enum<E>> E one(String column, Class<E> kinds) {
        return named(column, text(column), kinds);
    }

    /** The unit named in a cell, lower case as at the end of a column's name. */
    Practical unit(String column) {
        return named(column, text(column).toUpperCase(Locale.ROOT), Practical.class);
    }

    boolean flag(String column) {
        return switch (text(column)) {
            case "true" -> true;
            case "false" -> false;
            default -> throw bad(column, "is neither true nor false");
        };
    }

    private <E extends Enum<E>> E named(String column, String name, Class<E> kinds) {
        try {
            return Enum.valueOf(kinds, name);
        } catch (IllegalArgumentException unknown) {
            throw bad(column, "holds '" + name + "', which is none of the kinds", unknown);
        }
    }

    private static String column(String name, Practical unit) {
        return name + "_" + unit.name().toLowerCase(Locale.ROOT);
    }

    IllegalStateException bad(String column, String what) {
        return new IllegalStateException(place(column) + " " + what);
    }

    private IllegalStateException bad(String column, String what, Exception cause) {
        return new IllegalStateException(place(column) + " " + what, cause);
    }

    private String place(String column) {
        return "catalogue file " + file + ", row " + cells.getRecordNumber() + ", column " + column;
    }
}
