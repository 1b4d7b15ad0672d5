package lungfish.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.build.PartsList.Group;
import lungfish.build.PartsList.Line;
import lungfish.build.PartsList.Unit;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.SupplyClass;

/** Adds lines to a parts list, each with its spares and the price that counts here. */
final class Tally {
    /** Metres are bought whole. */
    private static final double NEARLY = 1e-9;

    private final Ways ways;
    private final List<Line> lines = new ArrayList<>();

    Tally(Ways ways) {
        this.ways = ways;
    }

    PartsList list() {
        List<Line> sorted = new ArrayList<>(lines);
        sorted.sort(Comparator.comparing(Line::group));
        return new PartsList(sorted);
    }

    /** What breaks or gets lost: some more are bought. */
    void spared(Group group, String key, String name, String detail, double counted, OptionalDouble price) {
        add(group, key, name, detail, Unit.PIECES, counted, 0, spare(counted), price);
    }

    /** As many as are counted. */
    void exact(Group group, String key, String name, String detail, double counted, OptionalDouble price) {
        add(group, key, name, detail, Unit.PIECES, counted, 0, 0, price);
    }

    /** As many as are counted, less those that the room has. */
    void having(
            Group group, String key, String name, String detail, double counted, double there, OptionalDouble price) {
        add(group, key, name, detail, Unit.PIECES, counted, there, 0, price);
    }

    /** Tubing or hose: with the spare share, in whole metres. */
    void metres(Group group, String key, String name, String detail, double countedM, OptionalDouble price) {
        if (countedM > 0) {
            double buyM = Math.ceil(countedM * (1 + ways.spareShare()) - NEARLY);
            put(group, key, name, detail, Unit.METRES, countedM, 0, buyM - countedM, buyM, price);
        }
    }

    /** Pipe in stock lengths: what is cut from them, and what is left over. */
    void pipe(PipeSize size, double cutM, double boughtM, String detail) {
        put(
                Group.PIPE,
                size.id(),
                size.name(),
                detail,
                Unit.METRES,
                cutM,
                0,
                0,
                boughtM,
                OptionalDouble.of(size.pricePerM()));
    }

    /** A small thing of the catalogue, for a size of pipe or for nothing in particular. */
    void supply(Group group, String id, String sizeKey, String detail, double counted) {
        SupplyClass supply = ways.catalogue().building().supply(id);
        String key = sizeKey.isEmpty() ? id : id + "/" + sizeKey;
        OptionalDouble price = OptionalDouble.of(supply.price());
        if (supply.per() == SupplyClass.Per.METRE) {
            metres(group, key, supply.name(), detail, counted, price);
        } else if (supply.spares()) {
            spared(group, key, supply.name(), detail, counted, price);
        } else {
            exact(group, key, supply.name(), detail, counted, price);
        }
    }

    private double spare(double counted) {
        return Math.ceil(counted * ways.spareShare() - NEARLY);
    }

    private void add(
            Group group,
            String key,
            String name,
            String detail,
            Unit unit,
            double counted,
            double there,
            double spare,
            OptionalDouble price) {
        if (counted > 0) {
            put(group, key, name, detail, unit, counted, there, spare, Math.max(0, counted - there) + spare, price);
        }
    }

    private void put(
            Group group,
            String key,
            String name,
            String detail,
            Unit unit,
            double counted,
            double there,
            double spare,
            double buy,
            OptionalDouble price) {
        OptionalDouble own = own(key);
        OptionalDouble counts = own.isPresent() ? own : price;
        keep(new Line(group, key, name, detail, unit, counted, there, spare, buy, counts, own.isPresent()));
    }

    /** The same part in a second place adds to its line. */
    private void keep(Line line) {
        for (int i = 0; i < lines.size(); i++) {
            Line same = lines.get(i);
            if (same.group() == line.group() && same.key().equals(line.key())) {
                lines.set(i, same.with(line));
                return;
            }
        }
        lines.add(line);
    }

    /** The keeper's price of just this part, else of its class in any size. */
    private OptionalDouble own(String key) {
        OptionalDouble exact = ways.room().building().price(key);
        int slash = key.indexOf('/');
        return exact.isPresent() || slash < 0 ? exact : ways.room().building().price(key.substring(0, slash));
    }
}
