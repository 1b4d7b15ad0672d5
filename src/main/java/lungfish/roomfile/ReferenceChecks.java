package lungfish.roomfile;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.json.Nearest;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Blower;
import lungfish.room.CircuitId;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Stirrer;

/** Every name that one part gives of another leads to a part that is there. */
final class ReferenceChecks {
    private final Spots spots;
    private final Problems problems;
    private final Set<String> runs;
    private final Set<String> gangs;
    private final Set<String> circuits;
    private final Set<String> tanks;
    private final Set<String> outlets;

    ReferenceChecks(Spots spots, Problems problems) {
        this.spots = spots;
        this.problems = problems;
        runs = ids(spots.runs(), run -> run.id().text());
        gangs = ids(spots.gangs(), gang -> gang.id().text());
        circuits = ids(spots.circuits(), circuit -> circuit.id().text());
        tanks = ids(spots.tanks(), tank -> tank.id().text());
        outlets = ids(spots.outlets(), outlet -> outlet.id().text());
    }

    void tell() {
        spots.outlets().forEach(this::outlet);
        spots.gangs().forEach(this::gang);
        spots.blowers().forEach(this::blower);
        spots.stirrers().forEach(this::stirrer);
        spots.batteries()
                .forEach(battery -> circuit(
                        battery.place().key("charged_from"), battery.value().chargedFrom()));
        spots.room()
                .backup()
                .alarm()
                .ifPresent(
                        alarm -> circuit(Place.ROOT.key("backup").key("alarm").key("circuit"), alarm.circuit()));
    }

    private void outlet(Spot<Outlet> outlet) {
        Place place = outlet.place().key("tap");
        Outlet.Tap tap = outlet.value().tap().orElse(null);
        if (tap instanceof Outlet.OnRun onRun) {
            run(place, onRun);
        } else if (tap instanceof Outlet.OnGang onGang) {
            there(place.key("gang"), "gang", onGang.gang().text(), gangs);
        }
    }

    private void gang(Spot<Gang> gang) {
        gang.value().tap().ifPresent(tap -> run(gang.place().key("tap"), tap));
    }

    private void blower(Spot<Blower> blower) {
        Blower value = blower.value();
        value.feeds().ifPresent(feeds -> run(blower.place().key("feeds"), feeds));
        circuit(blower.place().key("circuit"), value.circuit());
        Set<OutletId> served = new HashSet<>();
        for (Spot<OutletId> serves : blower.inside("serves", Blower::serves)) {
            there(serves.place(), "outlet", serves.value().text(), outlets);
            if (!served.add(serves.value())) {
                problems.add(serves.place(), "the outlet \"" + serves.value() + "\" stands here already", "it once");
            }
        }
    }

    private void stirrer(Spot<Stirrer> stirrer) {
        there(stirrer.place().key("tank"), "tank", stirrer.value().tank().text(), tanks);
        circuit(stirrer.place().key("circuit"), stirrer.value().circuit());
    }

    private void run(Place place, Outlet.OnRun onRun) {
        there(place.key("run"), "run", onRun.run().text(), runs);
    }

    private void circuit(Place place, Optional<CircuitId> circuit) {
        circuit.ifPresent(id -> there(place, "circuit", id.text(), circuits));
    }

    private void there(Place place, String what, String id, Collection<String> known) {
        if (!id.isEmpty() && !known.contains(id)) {
            problems.add(place, "there is no " + what + " \"" + id + '"', Nearest.offer(id, known));
        }
    }

    private static <T> Set<String> ids(List<Spot<T>> spots, Function<T, String> id) {
        return spots.stream()
                .map(spot -> id.apply(spot.value()))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
