package lungfish.edit;

import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.TankId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shelf of 2 m with a tank from 0.7 to 1.3 m; another of 0.6 m is slid along it, and drawn from within 3 cm. */
final class ShelfSnapTest {
    private static final Rack RACK = aRoom().with(
                    aRack("A").shelf(0.2, aTank("1"), aTank("2").at(0.7)))
            .build()
            .racks()
            .get(0);

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        # where its left side would be, where it rests, at what
        0.02, 0, rack's end
        -0.02, 0, rack's end
        1.42, 1.4, rack's end
        1.28, 1.3, tank 2
        0.12, 0.1, tank 2
        0.5, 0.5, ''""")
    void aTankRestsAtEndsAndNeighbours(double xM, double restM, String at) {
        ShelfSnap rest = ShelfSnap.at(
                RACK, RACK.shelves().get(0), List.of(new TankId("1")), 0.6, xM, 0.03, OptionalDouble.empty());
        assertThat(rest.xM()).isEqualTo(restM);
        assertThat(rest.why().map(Stop::words)).isEqualTo(at.isEmpty() ? Optional.empty() : Optional.of(at));
    }
}
