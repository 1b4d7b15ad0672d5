package lungfish.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.catalogue.Catalogue;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.Room;

/**
 * A blower as it is being typed from its data sheet: all as text, so that nothing typed is ever lost.
 *
 * @param before the class that is being changed; absent: a new one
 * @param points rows of the curve: pressure, flow, watts
 */
public record BlowerDraft(
        Optional<BlowerClass> before,
        String name,
        BlowerClass.Kind kind,
        Map<BlowerSlot, String> texts,
        List<List<String>> points) {
    /** What the columns of the curve are. */
    public static final List<Dimension> COLUMNS = List.of(Dimension.PRESSURE, Dimension.AIR_FLOW, Dimension.POWER);

    private static final int ROWS = 8;
    private static final Pattern UNIT = Pattern.compile("[(\\[]([^)\\]]+)[)\\]]");

    public BlowerDraft {
        texts = Collections.unmodifiableMap(texts.isEmpty() ? new EnumMap<>(BlowerSlot.class) : new EnumMap<>(texts));
        points = points.stream().map(List::copyOf).toList();
    }

    /** Nothing typed yet. */
    public static BlowerDraft empty() {
        return new BlowerDraft(
                Optional.empty(), "", BlowerClass.Kind.LINEAR_PISTON, Map.of(), Collections.nCopies(ROWS, blank()));
    }

    private static List<String> blank() {
        return List.of("", "", "");
    }

    /** A class to be changed, as a reader sees it. */
    public static BlowerDraft of(BlowerClass kind, Quantities quantities) {
        Map<BlowerSlot, String> texts = new EnumMap<>(BlowerSlot.class);
        for (BlowerSlot slot : BlowerSlot.values()) {
            said(kind, slot).ifPresent(si -> texts.put(slot, quantities.show(si, slot.dimension())));
        }
        List<List<String>> points = new ArrayList<>();
        kind.points().forEach(point -> points.add(shown(point, quantities)));
        while (points.size() < ROWS) {
            points.add(blank());
        }
        return new BlowerDraft(Optional.of(kind), kind.name(), kind.kind(), texts, points);
    }

    static List<String> shown(CurvePoint point, Quantities quantities) {
        return List.of(
                quantities.show(point.gaugePa(), COLUMNS.get(0)),
                quantities.show(point.freeM3PerS(), COLUMNS.get(1)),
                quantities.show(point.watts(), COLUMNS.get(2)));
    }

    /** What a class says of a slot; the watts stand at its points. */
    static OptionalDouble said(BlowerClass kind, BlowerSlot slot) {
        return switch (slot) {
            case WATTS -> OptionalDouble.empty();
            case LEVEL ->
                kind.level().stream().mapToDouble(BlowerClass.Level::dba).findFirst();
            case DISTANCE ->
                kind.level().stream().mapToDouble(BlowerClass.Level::distanceM).findFirst();
            case CONTINUOUS -> OptionalDouble.of(kind.continuousPa());
            case PRICE -> OptionalDouble.of(kind.price());
            case VOLTAGE -> kind.voltageV();
            case FREQUENCY -> kind.frequencyHz();
            case REBUILD_PRICE -> OptionalDouble.of(kind.rebuildPrice());
            case REBUILD -> OptionalDouble.of(kind.rebuildS());
            case LIFE -> OptionalDouble.of(kind.lifeS());
        };
    }

    String text(BlowerSlot slot) {
        return texts.getOrDefault(slot, "").strip();
    }

    public BlowerDraft named(String that) {
        return new BlowerDraft(before, that, kind, texts, points);
    }

    public BlowerDraft of(BlowerClass.Kind that) {
        return new BlowerDraft(before, name, that, texts, points);
    }

    public BlowerDraft with(BlowerSlot slot, String text) {
        Map<BlowerSlot, String> all = new EnumMap<>(BlowerSlot.class);
        all.putAll(texts);
        all.put(slot, text);
        return new BlowerDraft(before, name, kind, all, points);
    }

    /** With another text in one cell of the curve; below the last row there is always a blank one. */
    public BlowerDraft with(int row, int column, String text) {
        List<List<String>> all = new ArrayList<>(points);
        while (all.size() <= row) {
            all.add(blank());
        }
        List<String> cells = new ArrayList<>(all.get(row));
        cells.set(column, text.strip());
        all.set(row, cells);
        if (all.get(all.size() - 1).stream().anyMatch(cell -> !cell.isEmpty())) {
            all.add(blank());
        }
        return new BlowerDraft(before, name, kind, texts, all);
    }

    /**
     * With a block of a spreadsheet from a cell on: columns by tabs, or as its text shows. A row of headings is left out; a
     * unit in brackets in it counts for the cells below that have none.
     */
    public BlowerDraft pasted(int row, int column, String block) {
        List<List<String>> rows = (block.contains("\t") ? Sheet.ofTabs(block) : Sheet.ofList(block)).rows();
        boolean isHeaded = !rows.isEmpty() && rows.get(0).stream().noneMatch(BlowerDraft::beginsWithDigit);
        List<String> units =
                isHeaded ? rows.get(0).stream().map(BlowerDraft::unit).toList() : List.of();
        BlowerDraft draft = this;
        for (int i = isHeaded ? 1 : 0; i < rows.size(); i++) {
            for (int j = 0; j < rows.get(i).size() && column + j < COLUMNS.size(); j++) {
                String cell = rows.get(i).get(j).strip();
                String unit = j < units.size() && endsWithDigit(cell) ? units.get(j) : "";
                draft = draft.with(row + i - (isHeaded ? 1 : 0), column + j, (cell + " " + unit).strip());
            }
        }
        return draft;
    }

    private static boolean beginsWithDigit(String cell) {
        return !cell.isBlank() && "0123456789.,-".indexOf(cell.strip().charAt(0)) >= 0;
    }

    private static boolean endsWithDigit(String cell) {
        return !cell.isEmpty() && Character.isDigit(cell.charAt(cell.length() - 1));
    }

    private static String unit(String heading) {
        Matcher unit = UNIT.matcher(heading);
        return unit.find() ? unit.group(1) : "";
    }

    /** What can be made of it, and what is still to mend. */
    public DraftLook look(Room room, Catalogue catalogue, Quantities quantities) {
        return new DraftReading(this, room, catalogue, quantities).look();
    }
}
