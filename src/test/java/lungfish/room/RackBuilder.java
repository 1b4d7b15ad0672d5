package lungfish.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Fills a rack for a test. */
public final class RackBuilder {
    private final String id;
    private final List<Shelf> shelves = new ArrayList<>();
    private Rack.Stage stage = Rack.Stage.IN_PLACE;
    private Step step = Step.UNSAID;
    private Rack.Turn turn = Rack.Turn.NONE;
    private double xM;
    private double yM;
    private double widthM = 2;
    private double depthM = 0.5;
    private OptionalDouble ownMassKg = OptionalDouble.empty();

    RackBuilder(String id) {
        this.id = id;
    }

    public RackBuilder at(double x, double y) {
        xM = x;
        yM = y;
        return this;
    }

    public RackBuilder turned(Rack.Turn that) {
        turn = that;
        return this;
    }

    public RackBuilder sized(double width, double depth) {
        widthM = width;
        depthM = depth;
        return this;
    }

    public RackBuilder weighing(double kg) {
        ownMassKg = OptionalDouble.of(kg);
        return this;
    }

    public RackBuilder planned() {
        stage = Rack.Stage.PLANNED;
        return this;
    }

    /** Planned, for that step. */
    public RackBuilder planned(int number, String name) {
        step = new Step(OptionalInt.of(number), Optional.of(name));
        return planned();
    }

    /** One more shelf, named after the rack and its number from 1. */
    public RackBuilder shelf(double heightM, TankBuilder... tanks) {
        ShelfId shelf = new ShelfId(id + "-s" + (shelves.size() + 1));
        shelves.add(new Shelf(
                shelf, heightM, Arrays.stream(tanks).map(TankBuilder::build).toList()));
        return this;
    }

    public Rack build() {
        return new Rack(new RackId(id), "Rack " + id, stage, step, xM, yM, turn, widthM, depthM, ownMassKg, shelves);
    }
}
