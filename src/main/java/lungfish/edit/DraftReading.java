package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.catalogue.Catalogue;
import lungfish.edit.DraftLook.Complaint;
import lungfish.quantity.Quantities;
import lungfish.room.Room;

/**
 * Reads a draft of a blower and checks it. What a data sheet does not tell (wear, starting surge, bore of the port) is taken
 * from the nearest class of its kind in the catalogue.
 */
final class DraftReading {
    private final BlowerDraft draft;
    private final Room room;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final List<Complaint> complaints = new ArrayList<>();
    private final Map<BlowerSlot, Double> numbers = new EnumMap<>(BlowerSlot.class);

    DraftReading(BlowerDraft draft, Room room, Catalogue catalogue, Quantities quantities) {
        this.draft = draft;
        this.room = room;
        this.catalogue = catalogue;
        this.quantities = quantities;
    }

    DraftLook look() {
        if (draft.name().isBlank()) {
            complaints.add(Complaint.noName("Give it a name, as you will look for it: its type and size."));
        }
        for (BlowerSlot slot : BlowerSlot.values()) {
            read(slot);
        }
        DraftCurve curve = new DraftCurve(draft, quantities, number(BlowerSlot.WATTS));
        complaints.addAll(curve.complaints());
        Optional<BlowerClass> drawn =
                curve.points().filter(points -> !points.isEmpty()).map(this::made);
        drawn.ifPresent(kind -> checkBeside(kind, curve.hasAllWatts()));
        boolean isDone = complaints.isEmpty();
        return new DraftLook(complaints, drawn, drawn.filter(kind -> isDone));
    }

    private OptionalDouble number(BlowerSlot slot) {
        Double si = numbers.get(slot);
        return si == null ? OptionalDouble.empty() : OptionalDouble.of(si);
    }

    private void read(BlowerSlot slot) {
        String text = draft.text(slot);
        if (!text.isEmpty()) {
            asBefore(slot, text).ifPresentOrElse(si -> numbers.put(slot, si), () -> quantities
                    .parse(text, slot.dimension())
                    .match(si -> take(slot, si), problem -> {
                        complaints.add(Complaint.of(slot, problem.found() + ". Expected " + problem.expected() + "."));
                        return false;
                    }));
        }
    }

    /** What was not touched is that very number, not what is shown of it. */
    private Optional<Double> asBefore(BlowerSlot slot, String text) {
        return draft.before()
                .map(kind -> BlowerDraft.said(kind, slot))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .filter(si -> quantities.show(si, slot.dimension()).equals(text));
    }

    private boolean take(BlowerSlot slot, double si) {
        boolean isPossible = slot.allows(si);
        if (isPossible) {
            numbers.put(slot, si);
        } else {
            complaints.add(Complaint.of(
                    slot,
                    "It cannot be " + quantities.show(si, slot.dimension()) + ": more than "
                            + quantities.show(slot.least(), slot.dimension()) + " and no more than "
                            + quantities.show(slot.most(), slot.dimension()) + ". Check the unit."));
        }
        return isPossible;
    }

    /** What can only be told beside the curve, or is missing. */
    private void checkBeside(BlowerClass kind, boolean hasAllWatts) {
        double reaches = kind.points().get(kind.points().size() - 1).gaugePa();
        number(BlowerSlot.CONTINUOUS)
                .ifPresentOrElse(
                        pa -> checkContinuous(pa, reaches),
                        () -> missing(
                                BlowerSlot.CONTINUOUS,
                                "The most pressure that it bears all day; if the sheet has none, take its rated pressure."));
        if (number(BlowerSlot.PRICE).isEmpty()) {
            missing(BlowerSlot.PRICE, "The bench compares money. Type 0 if you have it already.");
        }
        if (!hasAllWatts && number(BlowerSlot.WATTS).isEmpty()) {
            missing(BlowerSlot.WATTS, "What it draws: one figure here, or one at each point.");
        }
        if (number(BlowerSlot.LEVEL).isPresent() && number(BlowerSlot.DISTANCE).isEmpty()) {
            missing(BlowerSlot.DISTANCE, "Say how far away that was measured; mostly 1 m.");
        }
        checkLife();
    }

    private void checkContinuous(double pa, double reachesPa) {
        if (pa > reachesPa) {
            complaints.add(Complaint.of(
                    BlowerSlot.CONTINUOUS,
                    "It cannot bear " + show(BlowerSlot.CONTINUOUS, pa) + " all day: its curve ends at "
                            + show(BlowerSlot.CONTINUOUS, reachesPa) + ". Lower it, or add the points up to there."));
        }
    }

    private void checkLife() {
        OptionalDouble life = number(BlowerSlot.LIFE);
        OptionalDouble rebuild = number(BlowerSlot.REBUILD);
        if (life.isPresent() && rebuild.isPresent() && rebuild.getAsDouble() > life.getAsDouble()) {
            complaints.add(Complaint.of(
                    BlowerSlot.REBUILD,
                    "It is replaced before it is rebuilt: it lives " + show(BlowerSlot.LIFE, life.getAsDouble())
                            + ". Shorten this, or lengthen its life."));
        }
    }

    private String show(BlowerSlot slot, double si) {
        return quantities.show(si, slot.dimension());
    }

    private void missing(BlowerSlot slot, String says) {
        if (draft.text(slot).isEmpty()) {
            complaints.add(Complaint.missing(slot, says));
        }
    }

    private BlowerClass made(List<CurvePoint> points) {
        Rated rated = Rated.of(points);
        BlowerClass like = like(rated.freeM3PerS());
        double reaches = points.get(points.size() - 1).gaugePa();
        double price = number(BlowerSlot.PRICE).orElse(0);
        double life = number(BlowerSlot.LIFE).orElse(like.lifeS());
        String name = draft.name().isBlank() ? "this blower" : draft.name().strip();
        return new BlowerClass(
                draft.before().map(BlowerClass::id).orElseGet(() -> freeId(name)),
                name,
                draft.kind(),
                rated.freeM3PerS(),
                rated.gaugePa(),
                points,
                number(BlowerSlot.CONTINUOUS).orElse(reaches),
                level(),
                draft.before().map(BlowerClass::portM).orElse(like.portM()),
                isPriceKept(price) ? draft.before().orElseThrow().priceLow() : price,
                isPriceKept(price) ? draft.before().orElseThrow().priceHigh() : price,
                number(BlowerSlot.REBUILD_PRICE).orElse(like.rebuildPrice()),
                number(BlowerSlot.REBUILD).orElse(Math.min(life, like.rebuildS())),
                life,
                isKindKept() ? draft.before().orElseThrow().tiredShare() : like.tiredShare(),
                isKindKept() ? draft.before().orElseThrow().leastShare() : like.leastShare(),
                Math.min(1, rated.efficiency()),
                isKindKept() ? draft.before().orElseThrow().surgeFactor() : like.surgeFactor(),
                number(BlowerSlot.VOLTAGE),
                number(BlowerSlot.FREQUENCY),
                draft.before().map(BlowerClass::source).orElse("typed from its data sheet"));
    }

    private boolean isKindKept() {
        return draft.before().filter(kind -> kind.kind() == draft.kind()).isPresent();
    }

    private boolean isPriceKept(double price) {
        return draft.before().filter(kind -> kind.price() == price).isPresent();
    }

    private Optional<BlowerClass.Level> level() {
        OptionalDouble dba = number(BlowerSlot.LEVEL);
        OptionalDouble distance = number(BlowerSlot.DISTANCE);
        return dba.isPresent() && distance.isPresent()
                ? Optional.of(new BlowerClass.Level(dba.getAsDouble(), distance.getAsDouble()))
                : Optional.empty();
    }

    /** The class of the catalogue that is of its kind, or else any, and nearest in size. */
    private BlowerClass like(double freeM3PerS) {
        List<BlowerClass> ofKind = catalogue.blowers().stream()
                .filter(each -> each.kind() == draft.kind())
                .toList();
        return (ofKind.isEmpty() ? catalogue.blowers() : ofKind)
                .stream()
                        .min(Comparator.comparingDouble(each -> Math.abs(Math.log(each.ratedM3PerS() / freeM3PerS))))
                        .orElseThrow();
    }

    private String freeId(String name) {
        return OwnBlowerEdits.freeId(
                name, room, catalogue.blowers().stream().map(BlowerClass::id).collect(Collectors.toSet()));
    }
}
