package lungfish.catalogue;

import static lungfish.catalogue.Practical.L;
import static lungfish.catalogue.Practical.M;
import static lungfish.catalogue.Practical.MM;

/** Reads the rows of what is needed to build pipe. */
final class BuildingRows {
    private BuildingRows() {}

    static ThreadClass thread(Row row) {
        return new ThreadClass(
                row.text("id"),
                row.text("name"),
                row.flag("taper"),
                row.aboveZero("major", MM),
                row.aboveZero("pitch", MM),
                row.aboveZero("drill", MM),
                row.text("drill_name"),
                row.aboveZero("engagement", MM),
                row.text("source"));
    }

    static PipeJoints joints(Row row) {
        return new PipeJoints(
                row.text("id"),
                row.aboveZero("socket", MM),
                row.aboveZero("elbow_90", MM),
                row.aboveZero("elbow_45", MM),
                row.aboveZero("tee", MM),
                row.aboveZero("coupling", MM),
                row.aboveZero("union", MM),
                row.aboveZero("valve", MM),
                row.aboveZero("support", M),
                row.aboveZero("stock", M),
                row.atLeastZero("cement", L),
                row.text("source"));
    }

    static SupplyClass supply(Row row) {
        return new SupplyClass(
                row.text("id"),
                row.text("name"),
                row.one("per", SupplyClass.Per.class),
                row.number("price"),
                row.flag("spares"),
                row.text("source"));
    }
}
