package lungfish.edit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lungfish.catalogue.TankSize;
import lungfish.quantity.Dimension;
import lungfish.quantity.Parsed;
import lungfish.room.Tank;

/** Reads one row of a tank list. */
final class TankRow {
    /** "Length (cm)", "height [in]", "Temp. in °C" */
    private static final Pattern UNIT = Pattern.compile(".*?(?:[(\\[](.+)[)\\]]| in (\\S+))\\s*");

    private static final int MOST_SHELVES = 20;

    private final TankList list;
    private final TankList.Row row;
    private final Map<Integer, TankProperty> mapping;
    private final DecimalMark decimals;
    private final Reader reader;
    private final List<BadCell> bad;

    TankRow(
            TankList list,
            TankList.Row row,
            Map<Integer, TankProperty> mapping,
            DecimalMark decimals,
            Reader reader,
            List<BadCell> bad) {
        this.list = list;
        this.row = row;
        this.mapping = mapping;
        this.decimals = decimals;
        this.reader = reader;
        this.bad = bad;
    }

    /** The tank; empty where a cell is bad, which was told then. */
    Optional<TankList.Item> item() {
        Optional<Filled> common = size();
        OptionalDouble lengthM =
                span(TankProperty.LENGTH, common.map(size -> size.outside().lengthM()));
        OptionalDouble widthM =
                span(TankProperty.WIDTH, common.map(size -> size.outside().widthM()));
        OptionalDouble heightM =
                span(TankProperty.HEIGHT, common.map(size -> size.outside().heightM()));
        OptionalDouble waterM = waterM(common, heightM);
        OptionalDouble temperatureK = figure(TankProperty.TEMPERATURE, Dimension.TEMPERATURE);
        Optional<String> device = device();
        int shelf = shelf();
        boolean whole = lengthM.isPresent() && widthM.isPresent() && heightM.isPresent() && waterM.isPresent();
        return whole
                ? Optional.of(new TankList.Item(
                        row.number(),
                        name(),
                        said(TankProperty.RACK),
                        shelf,
                        new Tank.Size(lengthM.getAsDouble(), widthM.getAsDouble(), heightM.getAsDouble()),
                        waterM.getAsDouble(),
                        temperatureK,
                        device))
                : Optional.empty();
    }

    private String name() {
        String name = said(TankProperty.NAME).orElse("Tank " + (row.number() - 1));
        if (Names.trouble(name).isPresent()) {
            tell(TankProperty.NAME, "a name with line ends", "one line of text");
        }
        return name;
    }

    private Optional<String> said(TankProperty property) {
        return column(property).map(row::cell).filter(cell -> !cell.isEmpty());
    }

    private Optional<Integer> column(TankProperty property) {
        return mapping.entrySet().stream()
                .filter(entry -> entry.getValue() == property)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private void tell(TankProperty property, String found, String expected) {
        String heading = column(property)
                .filter(column -> column < list.headings().size())
                .map(list.headings()::get)
                .orElse(property.label());
        bad.add(new BadCell(row.number(), heading, found, expected));
    }

    /** A size in one cell, and how deep the water usually is in it. */
    private record Filled(Tank.Size outside, OptionalDouble waterM) {
        static Filled of(TankSize size) {
            return new Filled(TankEdits.outside(size), OptionalDouble.of(size.waterDepthM()));
        }
    }

    private Optional<Filled> size() {
        Optional<String> said = said(TankProperty.SIZE);
        Optional<Filled> size = said.flatMap(text -> reader.catalogue().tankSizes().stream()
                .filter(each -> isCalled(each, text))
                .findFirst()
                .map(Filled::of)
                .or(() -> SaidSize.of(decimals.plain(text), reader.quantities())
                        .map(outside -> new Filled(outside, OptionalDouble.empty()))));
        if (said.isPresent() && size.isEmpty()) {
            tell(
                    TankProperty.SIZE,
                    "'" + said.get() + "'",
                    "a size such as 60 x 30 x 36 cm, or a common one such as "
                            + reader.catalogue().tankSizes().get(0).name());
        }
        return size;
    }

    private static boolean isCalled(TankSize size, String text) {
        String name = size.name().toLowerCase(Locale.ROOT);
        String said = text.toLowerCase(Locale.ROOT);
        return size.id().equalsIgnoreCase(text) || name.equals(said) || name.startsWith(said + ",");
    }

    private OptionalDouble span(TankProperty property, Optional<Double> common) {
        boolean isSaid = said(property).isPresent();
        OptionalDouble typed = figure(property, Dimension.DEPTH);
        if (isSaid && typed.isPresent() && !(typed.getAsDouble() > 0)) {
            tell(property, "'" + said(property).orElse("") + "'", "more than nothing");
            return OptionalDouble.empty();
        }
        if (!isSaid && common.isEmpty() && said(TankProperty.SIZE).isEmpty()) {
            tell(property, "nothing", "a size, or a common size in another column");
        }
        return isSaid || common.isEmpty() ? typed : OptionalDouble.of(common.get());
    }

    private OptionalDouble waterM(Optional<Filled> common, OptionalDouble heightM) {
        if (said(TankProperty.WATER).isEmpty()) {
            OptionalDouble usual = common.map(Filled::waterM)
                    .filter(OptionalDouble::isPresent)
                    .orElseGet(() -> heightM.isPresent()
                            ? OptionalDouble.of(TankEdits.usualWaterM(heightM.getAsDouble()))
                            : heightM);
            return heightM.isPresent() && usual.orElse(0) > heightM.getAsDouble() ? heightM : usual;
        }
        OptionalDouble typed = figure(TankProperty.WATER, Dimension.DEPTH);
        if (typed.isPresent()
                && !(typed.getAsDouble() > 0 && typed.getAsDouble() <= heightM.orElse(Double.MAX_VALUE))) {
            tell(TankProperty.WATER, "'" + said(TankProperty.WATER).orElse("") + "'", "no more than the tank is high");
            return OptionalDouble.empty();
        }
        return typed;
    }

    private OptionalDouble figure(TankProperty property, Dimension dimension) {
        Optional<String> said = said(property);
        if (said.isEmpty()) {
            return OptionalDouble.empty();
        }
        String text = said.get();
        Parsed parsed = reader.quantities().parse(withUnit(property, decimals.plain(text)), dimension);
        return parsed.match(si -> OptionalDouble.of(dimension == Dimension.DEPTH ? Metres.clean(si) : si), problem -> {
            tell(property, problem.found(), problem.expected());
            return OptionalDouble.empty();
        });
    }

    /** A bare number is in the unit that the heading names. */
    private String withUnit(TankProperty property, String text) {
        boolean isBare = text.chars().noneMatch(c -> Character.isLetter(c) || c == '"' || c == '\'' || c == '°');
        String heading = column(property)
                .filter(column -> column < list.headings().size())
                .map(list.headings()::get)
                .orElse("");
        Matcher unit = UNIT.matcher(heading);
        if (!isBare || !unit.matches()) {
            return text;
        }
        return text + " " + (unit.group(1) == null ? unit.group(2) : unit.group(1));
    }

    private Optional<String> device() {
        Optional<String> said = said(TankProperty.DEVICE);
        Optional<String> id = said.flatMap(text -> Cells.of(Column.DEVICE) instanceof Cell.Choice choice
                ? choice.options().apply(reader).stream()
                        .filter(option -> option.id().equalsIgnoreCase(text)
                                || option.name().equalsIgnoreCase(text))
                        .map(Cell.Choice.Option::id)
                        .findFirst()
                : Optional.empty());
        if (said.isPresent() && id.isEmpty()) {
            tell(
                    TankProperty.DEVICE,
                    "'" + said.get() + "'",
                    "a device, such as " + reader.catalogue().devices().get(0).name());
        }
        return id;
    }

    private int shelf() {
        Optional<String> said = said(TankProperty.SHELF);
        if (said.isEmpty()) {
            return 1;
        }
        boolean isNumber = said.get().matches("\\d{1,2}");
        int number = isNumber ? Integer.parseInt(said.get()) : 0;
        if (number < 1 || number > MOST_SHELVES) {
            tell(TankProperty.SHELF, "'" + said.get() + "'", "a number from 1, the lowest, to " + MOST_SHELVES);
        }
        return number;
    }
}
