package lungfish.drawing;

import java.util.Optional;
import lungfish.build.BuildPlan;
import lungfish.document.Figure;
import lungfish.logbook.Logbook;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.RackId;

/** The figures of a planned room in black and white, to a scale that can be measured on the page, with their dimensions. */
public final class PaperFigures implements FigurePainter {
    /** Letters on drawings, 7.5 points: what is read at arm's length on a bench. */
    private static final Type TYPE = new Type(7.5 / 11);

    private final RoomScene scene;
    private final BuildPlan build;
    private final Optional<Logbook> logbook;
    private final Look look;

    /**
     * The figures of a plan.
     *
     * @param build what is built of it, for the numbers of its taps
     * @param logbook that of the plan; empty: what was read over time is not shown
     * @param quantities the reader's
     */
    public PaperFigures(Plan plan, BuildPlan build, Optional<Logbook> logbook, Quantities quantities) {
        this.logbook = logbook;
        this.scene = RoomScene.of(plan.room());
        this.build = build;
        this.look = new Look(Palette.PRINT, TYPE, quantities);
    }

    @Override
    public Optional<Fitted> fitted(Figure figure, double mostWidthPt, double mostHeightPt) {
        if (figure instanceof Figure.RoomFromAbove) {
            return Optional.of(new PaperRoom(scene, build.taps(), look).fitted(mostWidthPt, mostHeightPt));
        }
        if (figure instanceof Figure.RackFront front) {
            return rack(front.rack(), mostWidthPt, mostHeightPt);
        }
        return logbook.filter(ReadingsPicture::isWorthIt).map(read -> readings(read, mostWidthPt));
    }

    /** As wide as it may be: it has no scale. */
    private Fitted readings(Logbook read, double widthPt) {
        return new Fitted(
                widthPt,
                ReadingsPicture.height(read, look),
                Optional.empty(),
                (area, g) -> ReadingsPicture.paint(read, area, look, g));
    }

    private Optional<Fitted> rack(RackId rack, double mostWidthPt, double mostHeightPt) {
        return RackScene.of(scene, rack).map(front -> new PaperRack(front, look).fitted(mostWidthPt, mostHeightPt));
    }
}
