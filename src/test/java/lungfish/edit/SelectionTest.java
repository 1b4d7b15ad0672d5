package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import lungfish.room.OutletId;
import lungfish.room.RackId;
import org.junit.jupiter.api.Test;

final class SelectionTest {
    private static final Part A = Part.rack(new RackId("A"));
    private static final Part B = Part.rack(new RackId("B"));
    private static final Part OUTLET = Part.outlet(new OutletId("A"));

    @Test
    void theLastChosenLeads() {
        assertThat(Selection.of(A, B).lead()).hasValue(B);
        assertThat(Selection.of(A, B).with(A).lead()).hasValue(A);
        assertThat(Selection.NONE.lead()).isEmpty();
    }

    @Test
    void aThingIsChosenOnce() {
        assertThat(Selection.of(A, B, A).parts()).containsExactly(A, B);
        assertThat(Selection.of(A, B).with(A).parts()).containsExactly(B, A);
    }

    @Test
    void togglingTwiceChangesNothingButTheLead() {
        assertThat(Selection.of(A, B).toggled(A).parts()).containsExactly(B);
        assertThat(Selection.of(A, B).toggled(A).toggled(A).parts()).containsExactly(B, A);
    }

    @Test
    void aRackAndAnOutletOfTheSameIdAreTwoThings() {
        Selection both = Selection.of(A, OUTLET);
        assertThat(both.parts()).hasSize(2);
        assertThat(both.ids(Part.Kind.RACK, RackId::new)).containsExactly(new RackId("A"));
        assertThat(both.isOnly(Part.Kind.RACK)).isFalse();
    }
}
