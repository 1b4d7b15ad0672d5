package lungfish.edit;

import static lungfish.edit.Tried.after;
import static lungfish.edit.Tried.done;
import static lungfish.edit.Tried.rack;
import static lungfish.edit.Tried.sentence;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.room.RackId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three racks: A 2 by 0.5 m at (0, 0), B 1 by 0.4 m at (3, 1), C 0.5 by 0.5 m at (5, 3). */
final class ArrangingTest {
    private static final RackId A = new RackId("A");
    private static final RackId B = new RackId("B");
    private static final RackId C = new RackId("C");
    private static final Room ROOM = aRoom().with(aRack("A"))
            .with(aRack("B").at(3, 1).sized(1, 0.4))
            .with(aRack("C").at(5, 3).sized(0.5, 0.5))
            .build();

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # edge, where A's first corner comes, aligned to B that covers 3 to 4 by 1 to 1.4 m
        LEFT, 3, 0
        RIGHT, 2, 0
        TOP, 0, 1
        BOTTOM, 0, 0.9
        MIDDLE_ACROSS, 2.5, 0
        MIDDLE_DOWN, 0, 0.95""")
    void racksComeInLineWithTheLast(Arranging.Edge edge, double xM, double yM) {
        Room aligned = after(ROOM, Arranging.align(ROOM, List.of(A, B), edge));
        assertThat(rack(aligned, "A").xM()).isEqualTo(xM);
        assertThat(rack(aligned, "A").yM()).isEqualTo(yM);
        assertThat(rack(aligned, "B")).isEqualTo(rack(ROOM, "B"));
        assertThat(rack(aligned, "C")).isEqualTo(rack(ROOM, "C"));
    }

    @Test
    void gapsBecomeEqualAndTheOuterRacksStay() {
        // across: 0 to 5.5 m, racks fill 3.5 m, two gaps of 1 m: A 0..2, B 3..4, C 5..5.5: as it is. Move B first.
        Room uneven = after(ROOM, RackEdits.place(ROOM, B, 2.2, 1));
        Room even = after(uneven, Arranging.distribute(uneven, List.of(A, C, B), Arranging.Axis.ACROSS));
        assertThat(rack(even, "B").xM()).isEqualTo(3);
        assertThat(rack(even, "A")).isEqualTo(rack(ROOM, "A"));
        assertThat(rack(even, "C")).isEqualTo(rack(ROOM, "C"));
    }

    @Test
    void downTheRoomToo() {
        // 0 to 3.5 m, racks fill 0.5 + 0.4 + 0.5 m, two gaps of 1.05 m: B begins at 1.55 m
        Room even = after(ROOM, Arranging.distribute(ROOM, List.of(A, B, C), Arranging.Axis.DOWN));
        assertThat(rack(even, "B").yM()).isEqualTo(1.55);
    }

    @Test
    void tooFewRacksAreRefused() {
        assertThat(sentence(Arranging.align(ROOM, List.of(A), Arranging.Edge.LEFT)))
                .startsWith("Fewer than two racks");
        assertThat(sentence(Arranging.distribute(ROOM, List.of(A, B), Arranging.Axis.DOWN)))
                .startsWith("Fewer than three racks");
    }

    @Test
    void theWordsFollowUndo() {
        assertThat(done(Arranging.align(ROOM, List.of(A, B), Arranging.Edge.TOP))
                        .done())
                .isEqualTo("Align 2 racks");
    }
}
