package lungfish.edit;

import static lungfish.edit.Tried.METRIC;
import static lungfish.edit.Tried.US;
import static lungfish.edit.Tried.outlet;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Tank 1 with outlets a (1.2345 L/min asked, needle valve) and b (no valve), 0.3 m of water; tank 2 with outlet c in 0.2 m. */
final class BlockTest {
    private static final double L_MIN = 1e-3 / 60;
    private static final double ROUNDING_M3_PER_S = 1e-15;
    private static final OutletId A = new OutletId("a");
    private static final OutletId B = new OutletId("b");
    private static final OutletId C = new OutletId("c");
    private static final Room ROOM = withoutValve(aRoom().with(aRack("A")
                    .shelf(
                            0.2,
                            aTank("1")
                                    .with(anOutlet("a").targetM3PerS(1.2345 * L_MIN))
                                    .with(anOutlet("b")),
                            aTank("2")
                                    .at(0.7)
                                    .waterDepthM(0.2)
                                    .with(anOutlet("c").depthM(0.1))))
            .build());
    private static final List<Column> COLUMNS =
            List.of(Column.OUTLET, Column.DEVICE, Column.DEPTH, Column.TARGET, Column.USE);

    /** Outlet b has no valve. */
    private static Room withoutValve(Room room) {
        return Tried.after(room, DropEdits.valve(room, List.of(B), Optional.empty()));
    }

    private static Pasted paste(String text, Column... columns) {
        return Block.in(ROOM, text, List.of(A, B, C), List.of(columns), METRIC);
    }

    private static Room pasted(Pasted pasted) {
        assertThat(pasted.bad()).isEmpty();
        return pasted.whole().orElseThrow().of(ROOM);
    }

    @Test
    void cellsGoOutInTheReadersUnits() {
        assertThat(Block.out(ROOM, List.of(C, A), COLUMNS, METRIC))
                .isEqualTo(
                        """
                        c\tMedium sponge filter\t10 cm\t\talways
                        a\tMedium sponge filter\t25 cm\t1.23 L/min\talways
                        """);
        // 0.1 m is 3.94 in: shown to a quarter inch
        assertThat(Block.out(ROOM, List.of(C), List.of(Column.DEPTH), US)).isEqualTo("4 in\n");
    }

    @Test
    void whatWentOutComesInAndChangesNothing() {
        String out = Block.out(ROOM, List.of(A, B, C), COLUMNS, METRIC);
        Pasted back = Block.in(ROOM, out, List.of(A, B, C), COLUMNS, METRIC);
        assertThat(back.bad()).isEmpty();
        assertThat(back.good())
                .as("1.2345 L/min is shown as 1.23 and not rounded by it")
                .isEmpty();
    }

    @Test
    void anyUnitIsUnderstood() {
        // 8 in × 25.4 mm = 0.2032 m; a bare number is in the units shown, cm
        Room room = pasted(paste("8 in\n12\n0.15 m\n", Column.DEPTH));
        assertThat(outlet(room, "a").depthM()).hasValue(0.2032);
        assertThat(outlet(room, "b").depthM()).hasValue(0.12);
        assertThat(outlet(room, "c").depthM()).hasValue(0.15);
    }

    @Test
    void anInchMarkInACellIsNoQuote() {
        assertThat(outlet(pasted(paste("8\"\n", Column.DEPTH)), "a").depthM()).hasValue(0.2032);
    }

    @Test
    void anEmptyCellMakesItUnknown() {
        assertThat(outlet(pasted(paste("\t\n", Column.DEPTH, Column.TARGET)), "a"))
                .isEqualTo(outlet(ROOM, "a").withDepthM(OptionalDouble.empty()).withFlow(Outlet.Flow.UNKNOWN));
    }

    @Test
    void namesAndIdsAreUnderstood() {
        Room room = pasted(paste("small SPONGE filter\tsometimes\nstone-wood\talways\n", Column.DEVICE, Column.USE));
        assertThat(outlet(room, "a").device()).isEqualTo("sponge-small");
        assertThat(outlet(room, "a").use()).isEqualTo(Outlet.Use.SOMETIMES);
        assertThat(outlet(room, "b").device()).isEqualTo("stone-wood");
    }

    @Test
    void everyBadCellIsToldAndNothingIsDone() {
        Pasted pasted = paste(
                "10 cm\tsponge\n40 cm\tbox-filter\nwet\tbox-filter\n5 cm\tbox-filter\n", Column.DEPTH, Column.DEVICE);
        assertThat(pasted.whole()).isEmpty();
        assertThat(pasted.bad())
                .extracting(BadCell::row, BadCell::column)
                .containsExactly(tuple(1, "Device"), tuple(2, "Depth"), tuple(3, "Depth"), tuple(4, "Depth"));
        assertThat(pasted.bad().get(0).expected()).startsWith("a device: Small sponge filter; Medium sponge filter");
        assertThat(pasted.bad().get(1).expected()).contains("the water of tank 1 is 30 cm deep");
        assertThat(pasted.bad().get(3).found()).isEqualTo("a row below the last outlet");
    }

    @Test
    void theKeeperMayTakeWhatIsGood() {
        Pasted pasted = paste("10 cm\tsponge\n40 cm\tbox-filter\n", Column.DEPTH, Column.DEVICE);
        Room good = pasted.good().orElseThrow().of(ROOM);
        assertThat(outlet(good, "a")).isEqualTo(outlet(ROOM, "a").withDepthM(OptionalDouble.of(0.1)));
        assertThat(outlet(good, "b")).isEqualTo(outlet(ROOM, "b").withDevice("box-filter"));
        assertThat(outlet(good, "c")).isSameAs(outlet(ROOM, "c"));
    }

    @Test
    void aRowIsJudgedAsAWhole() {
        // at least 3 is above today's target of 1.23 L/min, but the row brings a target of 4
        Room room = pasted(paste("3 L/min\t4 L/min\n", Column.LEAST, Column.TARGET));
        assertThat(outlet(room, "a").flow().leastM3PerS().orElseThrow())
                .isCloseTo(3 * L_MIN, within(ROUNDING_M3_PER_S));
        assertThat(paste("3 L/min\n", Column.LEAST).bad()).hasSize(1);
    }

    @Test
    void namesOfRowsCannotBeChanged() {
        assertThat(paste("z\n", Column.OUTLET).bad()).hasSize(1);
        assertThat(paste("a\n", Column.OUTLET).bad()).isEmpty();
    }

    @Test
    void anOutletWithoutAValveHasNoSetting() {
        Pasted pasted = paste("50 %\n50 %\n", Column.VALVE);
        assertThat(pasted.bad()).extracting(BadCell::row).containsExactly(2);
        Room both = pasted(paste("\t\nneedle-brass\t50 %\n", Column.VALVE_KIND, Column.VALVE));
        assertThat(outlet(both, "b").valve()).hasValue(new Outlet.Valve("needle-brass", OptionalDouble.of(0.5)));
    }

    @Test
    void aBlockTooWideIsTold() {
        assertThat(paste("10 cm\t3\n", Column.DEPTH).bad())
                .extracting(BadCell::column)
                .containsExactly("column 2");
    }

    @Test
    void manyRowsAreSetAtOnce() {
        Pasted set = Block.set(ROOM, List.of(A, C), Column.TARGET, "2 L/min", METRIC);
        Edit edit = set.whole().orElseThrow();
        assertThat(edit.done()).isEqualTo("Set target of 2 outlets");
        assertThat(outlet(edit.of(ROOM), "c").flow().targetM3PerS().orElseThrow())
                .isCloseTo(2 * L_MIN, within(ROUNDING_M3_PER_S));
    }

    @Test
    void fillingDownCopiesTheFirst() {
        Room filled = Tried.after(ROOM, Block.fillDown(ROOM, List.of(A, B, C), List.of(Column.TARGET)));
        assertThat(outlet(filled, "c").flow().targetM3PerS()).hasValue(1.2345 * L_MIN);
        assertThat(Tried.sentence(Block.fillDown(ROOM, List.of(A, C), List.of(Column.DEPTH))))
                .as("25 cm do not go into 20 cm of water")
                .startsWith("Outlet c would let its air out 25 cm below the water line");
        assertThat(Block.fillDown(ROOM, List.of(A), List.of(Column.DEPTH)).refused())
                .isPresent();
    }

    @Test
    void everyColumnHasAHeadingOfItsOwn() {
        assertThat(Block.headings(List.of(Column.values())).strip().split("\t"))
                .doesNotHaveDuplicates()
                .hasSize(Column.values().length);
    }

    /** Whatever depth is shown, in whatever units: the block comes back without a bad cell and without a change. */
    @Property
    void outAndInIsNoChange(@ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.3) double depthM) {
        Room room = Tried.after(ROOM, OutletEdits.depthM(ROOM, List.of(A, B), OptionalDouble.of(depthM)));
        for (Reader reader : List.of(METRIC, US)) {
            List<Column> all = List.of(Column.values());
            Pasted back = Block.in(room, Block.out(room, List.of(A, B, C), all, reader), List.of(A, B, C), all, reader);
            assertThat(back).isEqualTo(new Pasted(List.of(), Optional.empty()));
        }
    }
}
