package lungfish.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lungfish.catalogue.PipeSize;
import lungfish.edit.MainEdits;
import lungfish.edit.PipeDrawing;
import lungfish.piping.PipedRoom;
import lungfish.plan.Planner;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** All the ways in which the main of a room could be built: each size of its family in each layout. */
public final class PipeVariants {
    private final Planner planner;
    private final Room room;
    private final PipeFamily family;

    private PipeVariants(Planner planner, Room room, PipeFamily family) {
        this.planner = planner;
        this.room = room;
        this.family = family;
    }

    /**
     * The room as drawn, then its variants, layout by layout, the smallest pipe first. A size that is the drawn one
     * everywhere is the room itself, and not told again.
     *
     * @return empty where the room has no main, or no outlets
     */
    public static List<PipeVariant> of(Room room, Planner planner) {
        Optional<PipeFamily> family = PipeFamily.of(room, planner.catalogue());
        Optional<PipedRoom> piped = planner.piped(room);
        return family.isEmpty() || piped.isEmpty()
                ? List.of()
                : new PipeVariants(planner, room, family.get()).all(piped.get());
    }

    private List<PipeVariant> all(PipedRoom piped) {
        Map<PipeLayout, Room> layouts = layouts(piped);
        List<PipeVariant> variants = new ArrayList<>();
        layouts.forEach((layout, laid) -> {
            boolean isDrawn = laid.equals(room);
            if (isDrawn) {
                variants.add(new PipeVariant(layout, drawnSize(), true, room, planner.pipePrice(room)));
            }
            for (PipeSize size : family.sizes()) {
                Room sized = family.in(size, laid);
                if (!sized.equals(room)) {
                    variants.add(new PipeVariant(layout, Optional.of(size), false, sized, planner.pipePrice(sized)));
                }
            }
        });
        return variants;
    }

    /** The size of the main as drawn, where taking that size changes nothing. */
    private Optional<PipeSize> drawnSize() {
        return family.sizes().stream()
                .filter(size -> family.in(size, room).equals(room))
                .findFirst();
    }

    private Map<PipeLayout, Room> layouts(PipedRoom piped) {
        Map<PipeLayout, Room> layouts = new LinkedHashMap<>();
        boolean isLoop = room.runs().stream().anyMatch(PipeVariants::isLoop);
        PipeLayout.Main drawn = isLoop ? PipeLayout.Main.CLOSED : PipeLayout.Main.OPEN;
        int feeds = isFedTwice() ? 2 : 1;
        layouts.put(new PipeLayout(drawn, feeds), room);
        PipeLayout.Main other = isLoop ? PipeLayout.Main.OPEN : PipeLayout.Main.CLOSED;
        KeptPlaces kept = new KeptPlaces(planner, room, piped);
        kept.through(isLoop ? this::opened : this::closed)
                .ifPresent(laid -> layouts.put(new PipeLayout(other, feeds), laid));
        return feeds == 1 ? withSecondFeeds(layouts) : layouts;
    }

    private Map<PipeLayout, Room> withSecondFeeds(Map<PipeLayout, Room> layouts) {
        Map<PipeLayout, Room> all = new LinkedHashMap<>(layouts);
        layouts.forEach(
                (layout, laid) -> fedTwice(laid).ifPresent(fed -> all.put(new PipeLayout(layout.main(), 2), fed)));
        return all;
    }

    private static boolean isLoop(Run run) {
        return run.role() == Run.Role.MAIN && run.closed();
    }

    private List<MainLine> mains(Room laid) {
        Optional<PipedRoom> piped = planner.piped(laid);
        return laid.runs().stream()
                .filter(run -> run.role() == Run.Role.MAIN && run.points().size() > 1)
                .flatMap(run -> piped.stream().map(all -> new MainLine(run, all)))
                .toList();
    }

    /** With every loop opened. */
    private Optional<Room> opened(Room laid) {
        List<Run> opened = mains(laid).stream()
                .filter(line -> line.run().closed())
                .flatMap(line -> LoopShape.opened(line).stream())
                .toList();
        return reshaped(laid, opened).map(each -> capped(each, opened));
    }

    private static Room capped(Room laid, List<Run> opened) {
        var ids = opened.stream().map(Run::id).collect(Collectors.toSet());
        return laid.withRuns(laid.runs().stream()
                .map(run -> ids.contains(run.id()) ? LoopShape.capped(run) : run)
                .toList());
    }

    /** With every main closed whose ends can be joined. */
    private Optional<Room> closed(Room laid) {
        Point middle = new Point(laid.shell().lengthM() / 2, laid.shell().widthM() / 2, 0);
        return reshaped(
                laid,
                mains(laid).stream()
                        .filter(LoopShape::canClose)
                        .map(line -> LoopShape.closed(line.run(), middle))
                        .toList());
    }

    private static Optional<Room> reshaped(Room laid, List<Run> those) {
        return those.isEmpty()
                ? Optional.empty()
                : MainEdits.reshape(laid, "Lay the main", those).edit().map(edit -> edit.of(laid));
    }

    /** With a second line to the longest main, from where the air comes onto it to its farthest place. */
    private Optional<Room> fedTwice(Room laid) {
        return leading(laid).filter(MainLine::isWorthASecondFeed).flatMap(line -> planner.piped(laid)
                .flatMap(piped -> new KeptPlaces(planner, laid, piped).through(before -> tied(before, line))));
    }

    private Optional<MainLine> leading(Room laid) {
        return planner.piped(laid).flatMap(piped -> PipeFamily.leading(laid).map(run -> new MainLine(run, piped)));
    }

    /** Whether a line leads already from where the air comes onto the longest main to its farthest place. */
    private boolean isFedTwice() {
        return leading(room)
                .filter(line -> room.runs().stream().anyMatch(line::isSecondFeed))
                .isPresent();
    }

    private Optional<Room> tied(Room laid, MainLine line) {
        Optional<PipeSize> size = planner.catalogue().pipe(line.run().size());
        return line.entryM().flatMap(entry -> line.farM()
                .flatMap(far ->
                        size.flatMap(pipe -> PipeDrawing.tie(laid, on(line.run(), entry), on(line.run(), far), pipe)
                                .edit()
                                .map(edit -> named(edit.of(laid))))));
    }

    private static Outlet.OnRun on(Run run, double atM) {
        return new Outlet.OnRun(run.id(), atM);
    }

    /** The line that was drawn last is the second feed: a main in its own right, so that it takes the main's size. */
    private static Room named(Room tied) {
        List<Run> runs = new ArrayList<>(tied.runs());
        Run last = runs.remove(runs.size() - 1);
        runs.add(last.named("Second feed").as(Run.Role.MAIN));
        return tied.withRuns(runs);
    }
}
