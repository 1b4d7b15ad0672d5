package lungfish.catalogue;

import static lungfish.catalogue.Practical.C;
import static lungfish.catalogue.Practical.D;
import static lungfish.catalogue.Practical.DB;
import static lungfish.catalogue.Practical.H;
import static lungfish.catalogue.Practical.KPA;
import static lungfish.catalogue.Practical.KPA_PER_L_MIN;
import static lungfish.catalogue.Practical.L_MIN;
import static lungfish.catalogue.Practical.MA_PER_AH;
import static lungfish.catalogue.Practical.MM;
import static lungfish.catalogue.Practical.PA_PER_L_MIN2;
import static lungfish.catalogue.Practical.PERCENT;
import static lungfish.catalogue.Practical.PER_KWH;
import static lungfish.catalogue.Practical.PER_M;
import static lungfish.catalogue.Practical.V;
import static lungfish.catalogue.Practical.W;
import static lungfish.catalogue.Practical.YEARS;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * The catalogue as it stands in data files, beside this class: one CSV file a kind of thing, practical units named in
 * the headers, a source in every row. Read once; bad data is a mistake of the program and ends it, with file, row and
 * column.
 */
public final class CatalogueFiles {
    private static final class Once {
        private static final Catalogue CATALOGUE = read(CatalogueFiles::open);
    }

    private final Function<String, Reader> files;

    private CatalogueFiles(Function<String, Reader> files) {
        this.files = files;
    }

    /**
     * The catalogue that came with the program; the same object each time.
     *
     * @throws ExceptionInInitializerError if a file is missing or bad; its cause names file, row and column
     */
    public static Catalogue load() {
        return Once.CATALOGUE;
    }

    /**
     * Reads a catalogue.
     *
     * @param files opens a file by its name
     * @throws IllegalStateException naming file, row and column of what is bad
     */
    static Catalogue read(Function<String, Reader> files) {
        return new CatalogueFiles(files).read();
    }

    private Catalogue read() {
        return new Catalogue(
                rows("devices.csv", DeviceRows::device),
                rows("airlines.csv", CatalogueFiles::airline),
                rows("valves.csv", CatalogueFiles::valve),
                rows("check-valves.csv", CatalogueFiles::checkValve),
                rows("pipes.csv", CatalogueFiles::pipe),
                rows("fittings.csv", CatalogueFiles::fitting),
                BlowerRows.blowers(unique("blowers.csv"), rows("blower-curves.csv")),
                rows("batteries.csv", CatalogueFiles::battery),
                rows("accessories.csv", CatalogueFiles::accessory),
                rows("tank-sizes.csv", CatalogueFiles::tankSize),
                rows("backup-gear.csv", CatalogueFiles::backupGear),
                new BuildingClasses(
                        rows("threads.csv", BuildingRows::thread),
                        rows("pipe-joints.csv", BuildingRows::joints),
                        rows("supplies.csv", BuildingRows::supply)),
                rows("services.csv", CatalogueFiles::service),
                assumed(rows("assumed.csv")));
    }

    private <T> List<T> rows(String file, Function<Row, T> made) {
        return unique(file).stream().map(made).toList();
    }

    private List<Row> unique(String file) {
        List<Row> rows = rows(file);
        Set<String> seen = new HashSet<>();
        for (Row row : rows) {
            if (!seen.add(row.text("id"))) {
                throw row.bad("id", "holds '" + row.text("id") + "' a second time");
            }
        }
        return rows;
    }

    private List<Row> rows(String file) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = files.apply(file);
                CSVParser parser = format.parse(reader)) {
            List<Row> rows = parser.stream().map(cells -> new Row(file, cells)).toList();
            rows.forEach(row -> row.text("source"));
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException("catalogue file " + file + " cannot be read", e);
        }
    }

    private static AirlineSize airline(Row row) {
        return new AirlineSize(
                row.text("id"),
                row.text("name"),
                row.aboveZero("bore", MM),
                row.aboveZero("outside", MM),
                row.atLeastZero("roughness", MM),
                row.atLeastZero("price", PER_M),
                row.text("source"));
    }

    private static ValveClass valve(Row row) {
        return new ValveClass(
                row.text("id"),
                row.text("name"),
                row.aboveZero("bore", MM),
                row.number("open_loss_factor"),
                row.one("characteristic", ValveClass.Characteristic.class),
                row.number("rangeability"),
                row.number("price"),
                row.text("source"));
    }

    private static CheckValveClass checkValve(Row row) {
        return new CheckValveClass(
                row.text("id"),
                row.text("name"),
                row.atLeastZero("open", KPA),
                row.atLeastZero("slope", KPA_PER_L_MIN),
                row.number("price"),
                row.text("source"));
    }

    private static PipeSize pipe(Row row) {
        return new PipeSize(
                row.text("id"),
                row.text("name"),
                row.text("standard"),
                row.one("material", PipeSize.Material.class),
                row.aboveZero("outside", MM),
                row.aboveZero("bore", MM),
                row.aboveZero("wall", MM),
                row.atLeastZero("roughness", MM),
                row.si("derated_above", C),
                row.si("warmest", C),
                row.atLeastZero("price", PER_M),
                row.text("source"));
    }

    private static FittingClass fitting(Row row) {
        return new FittingClass(
                row.text("id"),
                row.text("name"),
                row.number("loss_factor"),
                row.flag("valve"),
                row.number("price"),
                row.text("source"));
    }

    private static BatteryClass battery(Row row) {
        return new BatteryClass(
                row.text("id"),
                row.text("name"),
                row.one("chemistry", BatteryClass.Chemistry.class),
                row.aboveZero("block", V),
                row.aboveZero("usable", PERCENT),
                row.number("peukert"),
                row.aboveZero("rated", H),
                row.aboveZero("end_of_life", PERCENT),
                row.ifGiven("coldest_charge", C).orElse(0),
                row.atLeastZero("gas", MA_PER_AH),
                row.atLeastZero("price", PER_KWH),
                row.aboveZero("life", YEARS),
                row.text("source"));
    }

    private static ServiceClass service(Row row) {
        return new ServiceClass(
                row.text("id"),
                row.text("name"),
                row.one("task", ServiceClass.Task.class),
                row.aboveZero("every", D),
                row.text("source"));
    }

    private static AccessoryClass accessory(Row row) {
        return new AccessoryClass(
                row.text("id"),
                row.text("name"),
                row.one("kind", AccessoryClass.Kind.class),
                row.atLeastZero("loss", PA_PER_L_MIN2),
                row.atLeastZero("insertion_loss", DB),
                row.number("price"),
                row.text("source"));
    }

    private static TankSize tankSize(Row row) {
        return new TankSize(
                row.text("id"),
                row.text("name"),
                row.one("trade", TankSize.Trade.class),
                row.aboveZero("length", MM),
                row.aboveZero("width", MM),
                row.aboveZero("height", MM),
                row.aboveZero("water_depth", MM),
                row.text("source"));
    }

    private static BackupClass backupGear(Row row) {
        return new BackupClass(
                row.text("id"),
                row.text("name"),
                row.one("kind", BackupClass.Kind.class),
                row.atLeastZero("rated", L_MIN),
                row.atLeastZero("rated", KPA),
                row.atLeastZero("runtime", H),
                row.atLeastZero("rated", W),
                row.atLeastZero("surge", W),
                row.number("price"),
                row.aboveZero("life", YEARS),
                row.text("source"));
    }

    private static Map<Assumable, AssumedValue> assumed(List<Row> rows) {
        Map<Assumable, AssumedValue> values = new EnumMap<>(Assumable.class);
        for (Row row : rows) {
            Assumable key = row.one("key", Assumable.class);
            double si = row.unit("unit").toSi(row.number("value"));
            Dimension dimension = row.one("dimension", Dimension.class);
            if (values.put(key, new AssumedValue(key, row.text("what"), si, dimension, row.text("source"))) != null) {
                throw row.bad("key", "holds " + key + " a second time");
            }
        }
        return values;
    }

    private static Reader open(String file) {
        InputStream stream = CatalogueFiles.class.getResourceAsStream(file);
        if (stream == null) {
            throw new IllegalStateException("catalogue file " + file + " is missing");
        }
        return new InputStreamReader(stream, StandardCharsets.UTF_8);
    }
}
