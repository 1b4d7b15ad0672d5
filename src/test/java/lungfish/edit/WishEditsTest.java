package lungfish.edit;

import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import lungfish.room.Room;
import lungfish.room.Wishes.Wish;
import org.junit.jupiter.api.Test;

final class WishEditsTest {
    private final Room silent = aRoom().build();

    @Test
    void movingOneWishSaysTheWholeOrder() {
        Edit edit = WishEdits.move(silent, Wish.QUIETEST, 0);

        assertThat(edit.of(silent).wishes().order())
                .containsExactly(
                        Wish.QUIETEST,
                        Wish.RESERVE,
                        Wish.SMALLEST,
                        Wish.CHEAPEST,
                        Wish.CHEAPEST_TO_RUN,
                        Wish.LONGEST_LIVED);
        assertThat(edit.done()).isEqualTo("Wish for quiet first");
    }

    @Test
    void aWishIsSaidToStandAfterTheOneBeforeIt() {
        assertThat(WishEdits.move(silent, Wish.SMALLEST, 2).done()).isEqualTo("Wish for small after cheap to buy");
    }

    @Test
    void beyondTheEndsIsAtTheEnd() {
        assertThat(WishEdits.move(silent, Wish.RESERVE, 99).of(silent).wishes().order())
                .endsWith(Wish.RESERVE);
    }

    @Test
    void aWishThatStaysWhereItIsChangesNothing() {
        assertThat(WishEdits.move(silent, Wish.RESERVE, -1).of(silent)).isSameAs(silent);
    }
}
