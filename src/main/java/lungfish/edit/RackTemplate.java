package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.TankSize;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * A rack of so many shelves with so many tanks of one size on each. Heights and gaps are common practice, no source; once
 * drawn they are the keeper's own to change.
 *
 * @param device the class of the one device in each tank; absent: none. Its depth, valve and airline stay unknown
 */
public record RackTemplate(int shelves, int tanksEach, TankSize size, Optional<String> device) {
    /** Of the lowest shelf above the floor: room for a pipe, a vat, a foot. */
    static final double LOWEST_M = 0.15;

    /** Above a tank, for a hand and a lid. */
    static final double CLEARANCE_M = 0.25;

    /** Between tanks, and at either end. */
    static final double GAP_M = 0.02;

    /** Of the rack, behind and before the tanks together. */
    static final double MARGIN_M = 0.05;

    public RackTemplate {
        if (shelves < 0 || tanksEach < 0) {
            throw new IllegalArgumentException(shelves + " shelves of " + tanksEach + " tanks");
        }
    }

    /** Along its front, m. */
    public double widthM() {
        return Metres.clean(tanksEach * (size.lengthM() + GAP_M) + GAP_M);
    }

    /** From front to back, m. */
    public double depthM() {
        return Metres.clean(size.widthM() + MARGIN_M);
    }

    /** From one shelf to the next, m. */
    double pitchM() {
        return size.heightM() + CLEARANCE_M;
    }

    /** How many shelves fit under a ceiling. */
    public int shelvesUnder(double ceilingM) {
        return Math.max(0, (int) Math.floor((ceilingM - LOWEST_M) / pitchM()));
    }

    /** How many tanks fit along a rack of this width. */
    public int tanksAlong(double rackWidthM) {
        return Math.max(0, (int) Math.floor((rackWidthM - GAP_M) / (size.lengthM() + GAP_M) + 1e-9));
    }

    /** The rack that it is, with fresh ids, its first corner there. */
    Rack rack(Room room, double xM, double yM, Rack.Turn turn, double rackWidthM, double rackDepthM) {
        String id = Fresh.racks(room).letter();
        Fresh shelfIds = Fresh.shelves(room);
        Fresh tankIds = Fresh.tanks(room);
        Fresh outletIds = Fresh.outlets(room);
        List<Shelf> made = new ArrayList<>();
        for (int i = 0; i < shelves; i++) {
            String shelf = shelfIds.numbered(id);
            made.add(new Shelf(
                    new ShelfId(shelf),
                    Metres.clean(LOWEST_M + i * pitchM()),
                    tanks(shelf, tankIds, outletIds, rackWidthM)));
        }
        String name = Names.unique("Rack " + id, Taken.rackNames(room));
        return new Rack(
                new RackId(id),
                name,
                Rack.Stage.IN_PLACE,
                Metres.clean(xM),
                Metres.clean(yM),
                turn,
                rackWidthM,
                rackDepthM,
                OptionalDouble.empty(),
                made);
    }

    private List<Tank> tanks(String shelf, Fresh tankIds, Fresh outletIds, double rackWidthM) {
        double gapM = tanksEach == 0 ? 0 : (rackWidthM - tanksEach * size.lengthM()) / (tanksEach + 1);
        List<Tank> made = new ArrayList<>();
        for (int i = 0; i < tanksEach; i++) {
            TankId id = new TankId(tankIds.numbered(shelf));
            double xM = Metres.clean(gapM + i * (size.lengthM() + gapM));
            made.add(TankMaker.tank(id, "Tank " + id, xM, size, outlets(id, outletIds)));
        }
        return made;
    }

    private List<Outlet> outlets(TankId tank, Fresh ids) {
        return device.map(kind -> TankMaker.outlet(new OutletId(ids.lettered(tank.text())), kind)).stream()
                .toList();
    }
}
