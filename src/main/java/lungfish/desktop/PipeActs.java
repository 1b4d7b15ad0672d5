package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Collection;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.edit.Attempt;
import lungfish.edit.MainEdits;
import lungfish.edit.Part;
import lungfish.edit.PipeDrawing;
import lungfish.edit.Selection;
import lungfish.edit.TapEdits;
import lungfish.edit.ValveEdits;
import lungfish.room.Gang;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** The actions on chosen pipe, on what is fitted into it, and on taps, as the menu lists them. */
final class PipeActs {
    private PipeActs() {}

    static List<Act> of(WindowPane window) {
        Catalogue catalogue = window.view().desk().shared().catalogue();
        return List.of(
                new EditChosen(window, "Close or open the loop", 'C', null, one(PipeActs::turn)),
                new EditChosen(
                        window,
                        "Insert a corner",
                        'I',
                        Act.shiftMenuKey(KeyEvent.VK_I),
                        one((room, run) -> MainEdits.insertCorner(room, run.id()))),
                new EditChosen(
                        window,
                        "Next larger size",
                        'L',
                        null,
                        runs((room, ids) -> MainEdits.resize(room, ids, catalogue, 1))),
                new EditChosen(
                        window,
                        "Next smaller size",
                        'S',
                        null,
                        runs((room, ids) -> MainEdits.resize(room, ids, catalogue, -1))),
                new EditChosen(window, "Tie two pipes", 'T', null, (room, chosen) -> tie(room, chosen, catalogue)),
                new EditChosen(
                        window,
                        "Shut or open the valve",
                        'V',
                        Act.shiftMenuKey(KeyEvent.VK_V),
                        new ValveEdits(catalogue)::turn),
                new EditChosen(window, "Tap back to the nearest place", 'N', null, outlets(TapEdits::nearest)),
                new EditChosen(window, "Keep the tap where it is", 'K', null, outlets(TapEdits::pin)),
                new EditChosen(
                        window,
                        "Hang on one gang valve",
                        'G',
                        null,
                        outlets((room, ids) -> TapEdits.gang(room, ids, Gang.Kind.GANG_VALVE))),
                new EditChosen(
                        window,
                        "Hang on one string of tees",
                        'E',
                        null,
                        outlets((room, ids) -> TapEdits.gang(room, ids, Gang.Kind.TEES))));
    }

    private static Attempt turn(Room room, Run run) {
        return run.closed() ? MainEdits.open(room, run.id()) : MainEdits.close(room, run.id());
    }

    /** A tie is of the size of the pipe chosen first. */
    private static Attempt tie(Room room, Selection chosen, Catalogue catalogue) {
        List<RunId> ids = chosen.ids(Part.Kind.RUN, RunId::new);
        return room.runs().stream()
                .filter(run -> ids.size() == 2 && run.id().equals(ids.get(0)))
                .flatMap(run -> catalogue.pipe(run.size()).stream())
                .findFirst()
                .map(size -> PipeDrawing.tie(room, ids.get(0), ids.get(1), size))
                .orElse(PipeDrawing.NEEDS_TWO);
    }

    private static BiFunction<Room, Selection, Attempt> one(BiFunction<Room, Run, Attempt> doing) {
        return (room, chosen) -> {
            List<RunId> ids = chosen.ids(Part.Kind.RUN, RunId::new);
            return room.runs().stream()
                    .filter(run -> ids.size() == 1 && run.id().equals(ids.get(0)))
                    .findFirst()
                    .map(run -> doing.apply(room, run))
                    .orElse(MainEdits.NEEDS_ONE);
        };
    }

    private static BiFunction<Room, Selection, Attempt> runs(BiFunction<Room, Collection<RunId>, Attempt> doing) {
        return (room, chosen) -> doing.apply(room, chosen.ids(Part.Kind.RUN, RunId::new));
    }

    /** Taps mean the outlets that they feed. */
    private static BiFunction<Room, Selection, Attempt> outlets(BiFunction<Room, Collection<OutletId>, Attempt> doing) {
        return (room, chosen) -> doing.apply(
                room,
                Stream.of(Part.Kind.OUTLET, Part.Kind.TAP)
                        .flatMap(kind -> chosen.ids(kind, OutletId::new).stream())
                        .distinct()
                        .toList());
    }
}
