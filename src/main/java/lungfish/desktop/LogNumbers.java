package lungfish.desktop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.report.LogKinds;
import lungfish.report.Sentences;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;

/** The numbers of a reading while they are typed: those of each kind stay until they are written down. */
final class LogNumbers {
    private final Map<LogKinds, List<Typed>> all = new EnumMap<>(LogKinds.class);

    /** A number under way. */
    static final class Typed {
        private final String label;
        private final QuantityField field;
        private OptionalDouble si = OptionalDouble.empty();

        private Typed(View view, String label, Dimension dimension) {
            this.label = label;
            this.field = new QuantityField(view, dimension, () -> si, typed -> si = typed, told -> {});
            field.setName("log: " + label);
            field.getAccessibleContext().setAccessibleName(label);
        }

        String label() {
            return label;
        }

        QuantityField field() {
            return field;
        }

        private void clear() {
            si = OptionalDouble.empty();
            field.setText("");
        }
    }

    LogNumbers(View view) {
        for (LogKinds kind : LogKinds.values()) {
            List<Typed> numbers = new ArrayList<>();
            List<Dimension> dimensions = dimensions(kind);
            for (int i = 0; i < dimensions.size(); i++) {
                numbers.add(new Typed(view, Sentences.capital(kind.numbers().get(i)), dimensions.get(i)));
            }
            all.put(kind, List.copyOf(numbers));
        }
    }

    /** Seconds stand in their name: a plain number is typed. */
    private static List<Dimension> dimensions(LogKinds kind) {
        return switch (kind) {
            case JAR -> List.of(Dimension.RATIO);
            case GAUGE -> List.of(Dimension.PRESSURE);
            case WATTS -> List.of(Dimension.POWER);
            case LEVEL -> List.of(Dimension.SOUND_LEVEL);
            case FALL -> List.of(Dimension.PRESSURE, Dimension.PRESSURE, Dimension.RATIO);
        };
    }

    List<Typed> fields(LogKinds kind) {
        return Objects.requireNonNull(all.get(kind));
    }

    /**
     * Takes what is still being typed: a quick hand presses the button before its field has lost the focus. Whether all of it
     * could be understood.
     */
    boolean take(LogKinds kind) {
        return fields(kind).stream().allMatch(each -> each.field().take());
    }

    /**
     * What was typed; empty where a number is missing, or nobody says of which outlet.
     *
     * @param at where the gauge is; empty: at the blower
     */
    Optional<Reading.Measured> measured(LogKinds kind, Optional<OutletId> outlet, Optional<Outlet.OnRun> at) {
        List<Double> si =
                fields(kind).stream().flatMap(each -> each.si.stream().boxed()).toList();
        boolean isWhole = si.size() == fields(kind).size() && (kind != LogKinds.JAR || outlet.isPresent());
        return isWhole ? Optional.of(measured(kind, si, outlet, at)) : Optional.empty();
    }

    private static Reading.Measured measured(
            LogKinds kind, List<Double> si, Optional<OutletId> outlet, Optional<Outlet.OnRun> at) {
        return switch (kind) {
            case JAR -> new Reading.Jar(outlet.orElseThrow(), si.get(0), OptionalDouble.empty());
            case GAUGE -> new Reading.Gauge(at, si.get(0));
            case WATTS -> new Reading.Watts(Optional.empty(), si.get(0));
            case LEVEL -> new Reading.Level(si.get(0));
            case FALL -> new Reading.Fall(si.get(0), si.get(1), si.get(2));
        };
    }

    /** Nothing is typed any more. */
    void clear() {
        all.values().stream().flatMap(List::stream).forEach(Typed::clear);
    }
}
