package lungfish.report;

import static lungfish.document.Part.Column.figures;
import static lungfish.document.Part.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.build.BuildPlan;
import lungfish.build.Tap;
import lungfish.catalogue.ThreadClass;
import lungfish.document.Part;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** Where the pipe is tapped, measured from its corners, and with which drill. */
final class TapWords {
    private final BuildPlan build;
    private final Room room;
    private final Quantities quantities;
    private final Names names;

    TapWords(BuildPlan build, Room room, Quantities quantities, Names names) {
        this.build = build;
        this.room = room;
        this.quantities = quantities;
        this.names = names;
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Paragraph(
                "Measured along the middle line of the pipe from the corner before. Corners are numbered"
                        + " along each run as drawn. Where there is more than one hole, the place is the middle of the row, and the"
                        + " holes stand " + quantities.tape(Tap.APART_M)
                        + " apart. Tap on top of the pipe, so that water in it stays"
                        + " out of the airlines."));
        parts.add(taps());
        parts.add(new Part.Facts(corners()));
        parts.add(threads());
        return parts;
    }

    private Part.Grid taps() {
        Grids grid = new Grids(
                "taps",
                "Taps",
                words("Run"),
                words("Corner"),
                figures("From it"),
                words("Piece"),
                figures("From its end"),
                figures("Holes"),
                words("Outlets"),
                words("Thread"),
                words("Drill"));
        for (Tap tap : build.taps()) {
            grid.row(
                    names.of(tap.run().part()),
                    Integer.toString(tap.corner()),
                    quantities.tape(tap.fromCornerM()),
                    Integer.toString(tap.piece()),
                    quantities.tape(tap.fromPieceM()),
                    Integer.toString(tap.holes()),
                    outlets(tap),
                    tap.thread().name(),
                    tap.hold() == Tap.Hold.SADDLE ? "as the saddle says" : drill(tap.thread()));
        }
        return grid.grid();
    }

    private static String outlets(Tap tap) {
        String outlets = tap.outlets().stream().map(OutletId::text).collect(Collectors.joining(", "));
        return tap.gang().map(gang -> "gang " + gang + ": ").orElse("") + outlets;
    }

    /** "letter R (8.61 mm)"; a drill that is called by its diameter only once. */
    private String drill(ThreadClass thread) {
        String diameter = quantities.show(thread.drillM(), Dimension.BORE);
        return thread.drillName().equals(diameter) ? diameter : thread.drillName() + " (" + diameter + ")";
    }

    /** Where the first corner of each tapped run is: from there one counts. */
    private List<Part.Fact> corners() {
        Set<RunId> tapped = new LinkedHashSet<>();
        build.taps().forEach(tap -> tapped.add(tap.run()));
        return room.runs().stream()
                .filter(run -> tapped.contains(run.id()))
                .map(run -> new Part.Fact(
                        "Corner 1 of " + inSentence(run), place(run.points().get(0))))
                .toList();
    }

    private static String inSentence(Run run) {
        return run.name().substring(0, 1).toLowerCase(Locale.ROOT) + run.name().substring(1);
    }

    private String place(Point point) {
        return show(point.xM()) + " along the room's length, " + show(point.yM()) + " along its width, "
                + show(point.zM()) + " above the floor";
    }

    private String show(double lengthM) {
        return quantities.show(lengthM, Dimension.LENGTH);
    }

    private Part.Grid threads() {
        Grids grid = new Grids(
                "threads",
                "Threads and drills",
                words("Thread"),
                words("Tap drill"),
                figures("Wall that holds it"),
                words("Source"));
        Set<ThreadClass> used = new LinkedHashSet<>();
        build.taps().forEach(tap -> used.add(tap.thread()));
        used.forEach(thread -> grid.row(
                thread.name(), drill(thread), quantities.show(thread.engagementM(), Dimension.BORE), thread.source()));
        return grid.grid();
    }
}
