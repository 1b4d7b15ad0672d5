package lungfish.growth;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.headroom.Newcomer;
import lungfish.sizing.Candidate;

/**
 * How many more outlets of one kind fit at each place of the pipe: not at all of them together, but at any one.
 *
 * @param candidate the blower, as the room names it or the plan chooses it now
 * @param recommended whether the plan chose it
 * @param places at every tap and joint, and between them so that no two are far apart
 * @param spans the pieces of pipe between them
 * @param racks the planned racks, each alone, in the order drawn
 */
public record HeadroomMap(
        Newcomer newcomer,
        Candidate candidate,
        boolean recommended,
        List<Place> places,
        List<Span> spans,
        List<RackFit> racks) {
    /** Counts that differ by less than this share of the most are all the same to a keeper: common sense, no source. */
    private static final double SAME_SHARE = 0.05;

    public HeadroomMap {
        places = List.copyOf(places);
        spans = List.copyOf(spans);
        racks = List.copyOf(racks);
    }

    /** The fewest that fit anywhere. */
    public int least() {
        return places.stream().mapToInt(Place::outlets).min().orElse(0);
    }

    /** The most that fit anywhere. */
    public int most() {
        return places.stream().mapToInt(Place::outlets).max().orElse(0);
    }

    /** Where most fit; of equals, where the room then needs least pressure. */
    public Optional<Place> best() {
        return places.stream()
                .max(Comparator.comparingInt(Place::outlets)
                        .thenComparing(place -> place.fits().pressurePa(), Comparator.reverseOrder()));
    }

    /** Whether it is worth a word where they are hung: not for one outlet more or less. */
    public boolean placeMatters() {
        return isWorthAWord(least(), most());
    }

    /** Whether two counts differ enough to be told apart. */
    static boolean isWorthAWord(int fewer, int more) {
        return more - fewer > Math.max(1, SAME_SHARE * more);
    }
}
