package lungfish.edit;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.BlowerClass;

/**
 * What can be made of a draft.
 *
 * @param complaints what is to mend, in the order of the form
 * @param curve the class as far as its curve can be drawn, whatever else is missing
 * @param done the class, when nothing is to mend
 */
public record DraftLook(List<Complaint> complaints, Optional<BlowerClass> curve, Optional<BlowerClass> done) {
    public DraftLook {
        complaints = List.copyOf(complaints);
    }

    /**
     * Something to mend.
     *
     * @param where the slot; absent: the name, or a point
     * @param row of the curve, 0 the first; below 0: no point
     * @param column of that row
     * @param isMissing whether it is only not typed yet
     * @param says what is wrong, and how to mend it
     */
    public record Complaint(Optional<BlowerSlot> where, int row, int column, boolean isMissing, String says) {
        static Complaint of(BlowerSlot slot, String says) {
            return new Complaint(Optional.of(slot), -1, -1, false, says);
        }

        static Complaint missing(BlowerSlot slot, String says) {
            return new Complaint(Optional.of(slot), -1, -1, true, says);
        }

        static Complaint at(int row, int column, String says) {
            return new Complaint(Optional.empty(), row, column, false, says);
        }

        static Complaint ofAll(String says) {
            return new Complaint(Optional.empty(), -1, -1, true, says);
        }

        boolean isOfPoint() {
            return row >= 0;
        }
    }

    /** What is to mend in a slot; empty where nothing is. */
    public Optional<Complaint> of(BlowerSlot slot) {
        return complaints.stream()
                .filter(each -> each.where().equals(Optional.of(slot)))
                .findFirst();
    }

    /** What is to mend in a cell of the curve. */
    public Optional<Complaint> at(int row, int column) {
        return complaints.stream()
                .filter(each -> each.row() == row && each.column() == column)
                .findFirst();
    }
}
