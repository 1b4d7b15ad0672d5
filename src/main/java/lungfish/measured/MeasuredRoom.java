package lungfish.measured;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.plan.Plan;
import lungfish.room.Reading;

/**
 * The room as its keeper measured it.
 *
 * @param setOn when the valves were set, or first read
 * @param on when the newest round was read
 * @param readings how many of that round count
 * @param suspects all culprits, the likeliest first
 * @param fitted the uncertain numbers, for the likeliest of them; empty where no numbers settle
 * @param places where a leak may be, the likeliest first; empty where a leak is not what happened
 * @param next the reading that would tell most; empty where none would
 * @param doubtful readings of which each alone, left out, lets the rest go together; the most doubtful first
 * @param unused readings of the newest round that cannot be held against the room
 */
public record MeasuredRoom(
        LocalDate setOn,
        LocalDate on,
        int readings,
        Verdict verdict,
        List<Suspect> suspects,
        Optional<Fitted> fitted,
        List<LeakPlace> places,
        Optional<NextReading> next,
        List<Reading> doubtful,
        List<Reading> unused) {
    public MeasuredRoom {
        suspects = List.copyOf(suspects);
        places = List.copyOf(places);
        doubtful = List.copyOf(doubtful);
        unused = List.copyOf(unused);
    }

    /**
     * The room as measured.
     *
     * @param catalogue that the plan was made with
     * @param today what is written for later days is passed over
     * @return empty where nothing was read that tells anything, or the room has no pipe, no outlets or no blower
     */
    public static Optional<MeasuredRoom> of(Plan plan, Catalogue catalogue, LocalDate today) {
        return Ground.of(plan, catalogue)
                .flatMap(ground -> Rounds.of(plan.room().log(), today)
                        .flatMap(rounds -> new Measuring(ground, rounds).measured()));
    }

    /** The likeliest. */
    public Suspect likeliest() {
        return suspects.get(0);
    }
}
