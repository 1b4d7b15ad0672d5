package lungfish.quantity;

/**
 * Lengths as a US tape reads and times as a person says them.
 *
 * <p>Feet and inches: to a half inch below ten feet, a whole inch below a hundred, whole feet beyond. Inches: to a
 * quarter. Times are rounded the more the longer they are, for nobody plans a night to the minute.
 */
final class Measures {
    private static final double HALF_INCHES_BELOW_IN = 120;
    private static final double INCHES_BELOW_IN = 1200;

    private static final int SIXTEENTHS = 16;

    private Measures() {}

    /** "6 ft 3 1/2 in". */
    static String feetAndInches(double si) {
        double inches = Math.abs(Units.IN.fromSi(si));
        int parts = inches < HALF_INCHES_BELOW_IN ? 2 : 1;
        long whole = Math.round(inches * parts);
        if (inches >= INCHES_BELOW_IN) {
            return sign(si, whole) + Figures.typed(0).show(inches / 12) + " ft";
        }
        long feet = whole / (12L * parts);
        String rest = fraction(whole - feet * 12L * parts, parts) + " in";
        String text = feet == 0 ? rest : feet + " ft" + (rest.equals("0 in") ? "" : " " + rest);
        return sign(si, whole) + text;
    }

    /** "15 1/4 in". */
    static String inches(double si) {
        double inches = Math.abs(Units.IN.fromSi(si));
        if (inches >= HALF_INCHES_BELOW_IN) {
            return feetAndInches(si);
        }
        long quarters = Math.round(inches * 4);
        return sign(si, quarters) + fraction(quarters, 4) + " in";
    }

    /** "4 ft 7 3/16 in": to a sixteenth of an inch, however long; what is cut and measured along a pipe. */
    static String sixteenths(double si) {
        long whole = Math.round(Math.abs(Units.IN.fromSi(si)) * SIXTEENTHS);
        long feet = whole / (12L * SIXTEENTHS);
        String rest = fraction(whole - feet * 12L * SIXTEENTHS, SIXTEENTHS) + " in";
        String text = feet == 0 ? rest : feet + " ft" + (rest.equals("0 in") ? "" : " " + rest);
        return sign(si, whole) + text;
    }

    private static String sign(double si, long shown) {
        return si < 0 && shown != 0 ? "-" : "";
    }

    /** A whole number and a fraction in lowest terms. */
    private static String fraction(long parts, int each) {
        long whole = parts / each;
        long rest = parts % each;
        if (rest == 0) {
            return Long.toString(whole);
        }
        long lowest = Math.min(Long.lowestOneBit(rest), each);
        String part = rest / lowest + "/" + each / lowest;
        return whole == 0 ? part : whole + " " + part;
    }

    /** "8.4 s", "95 s", "3 min 20 s", "45 min", "7 h 20 min", "31 h", "5.0 days", "2.5 years". */
    static String time(double si) {
        double seconds = Math.abs(si);
        String sign = si < 0 ? "-" : "";
        if (seconds < 119.5) {
            return Figures.live(seconds < 9.95 ? 1 : 0).show(si) + " s";
        }
        if (seconds < 9 * 60 + 55) {
            return sign + pair(Math.round(seconds / 10) * 10, 60, " min", " s");
        }
        if (seconds < 59.5 * 60) {
            return sign + Math.round(seconds / 60) + " min";
        }
        return sign + hoursAndMore(seconds / 3600);
    }

    private static String hoursAndMore(double hours) {
        if (hours < 10) {
            return pair(Math.round(hours * 12) * 5, 60, " h", " min");
        }
        if (hours < 71.5) {
            return Math.round(hours) + " h";
        }
        double days = hours / 24;
        return days < 729.5
                ? Figures.live(1).show(days) + " days"
                : Figures.live(1).show(days / 365) + " years";
    }

    private static String pair(long smalls, int each, String large, String small) {
        String rest = smalls % each == 0 ? "" : " " + smalls % each + small;
        return smalls / each + large + rest;
    }
}
