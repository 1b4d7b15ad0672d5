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

    /** What of the form is meant. */
    public sealed interface Where {
        /** Whether it is the curve, or a cell of it. */
        default boolean isOfCurve() {
            return this instanceof Cell || this instanceof WholeCurve;
        }
    }

    /** The name of the blower. */
    public record Name() implements Where {}

    /** A single figure. */
    public record Slot(BlowerSlot slot) implements Where {}

    /** A cell of the curve; rows and columns count from 0. */
    public record Cell(int row, int column) implements Where {}

    /** The points of the curve together. */
    public record WholeCurve() implements Where {}

    /**
     * Something to mend.
     *
     * @param where it stands
     *
     * @param isMissing whether it is only not typed yet
     * @param says what is wrong, and how to mend it
     */
    public record Complaint(Where where, boolean isMissing, String says) {
        static Complaint of(BlowerSlot slot, String says) {
            return new Complaint(new Slot(slot), false, says);
        }

        static Complaint missing(BlowerSlot slot, String says) {
            return new Complaint(new Slot(slot), true, says);
        }

        static Complaint at(int row, int column, String says) {
            return new Complaint(new Cell(row, column), false, says);
        }

        static Complaint noName(String says) {
            return new Complaint(new Name(), true, says);
        }

        static Complaint ofWhole(String says) {
            return new Complaint(new WholeCurve(), true, says);
        }

        boolean isOfPoint() {
            return where instanceof Cell;
        }
    }

    /** What is to mend in a slot; empty where nothing is. */
    public Optional<Complaint> of(BlowerSlot slot) {
        return at(new Slot(slot));
    }

    /** What is to mend in a cell of the curve. */
    public Optional<Complaint> at(int row, int column) {
        return at(new Cell(row, column));
    }

    private Optional<Complaint> at(Where where) {
        return complaints.stream().filter(each -> each.where().equals(where)).findFirst();
    }
}
