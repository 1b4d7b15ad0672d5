package lungfish.measured;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lungfish.air.Tube;
import lungfish.network.Pipe;
import lungfish.piping.PipedRoom;
import lungfish.piping.Stretch;
import lungfish.plan.Plan;
import lungfish.room.Outlet;
import lungfish.room.Run;

/** What hangs together with the blower while valves stand shut, found by walking from node to node. */
record Watched(Set<String> nodes, double volumeM3) {
    static Watched of(Plan plan, List<Outlet.OnRun> shut) {
        PipedRoom piped = plan.piped().orElseThrow();
        List<Pipe> pipes = piped.network().pipes();
        Set<String> nodes = new HashSet<>(piped.blowerNodes().values());
        boolean grows = true;
        while (grows) {
            grows = false;
            for (int i = 0; i < pipes.size(); i++) {
                Pipe pipe = pipes.get(i);
                boolean touches = nodes.contains(pipe.from()) || nodes.contains(pipe.to());
                if (touches && !isShut(plan, piped, i, shut)) {
                    grows |= nodes.add(pipe.from());
                    grows |= nodes.add(pipe.to());
                }
            }
        }
        double volume = 0;
        for (Pipe pipe : pipes) {
            double ends = (nodes.contains(pipe.from()) ? 0.5 : 0) + (nodes.contains(pipe.to()) ? 0.5 : 0);
            volume += ends * pipe.lengthM() * Tube.areaM2(pipe.boreM());
        }
        return new Watched(nodes, volume);
    }

    /** A pipe with a shut valve in it. */
    static boolean isShut(Plan plan, PipedRoom piped, int pipe, List<Outlet.OnRun> shut) {
        return piped.stretch(pipe)
                .filter(stretch -> shut.stream()
                        .filter(valve -> valve.run().equals(stretch.run()))
                        .anyMatch(valve -> lies(valve.atM(), stretch)
                                || lies(valve.atM() + run(plan, stretch).lengthM(), stretch)))
                .isPresent();
    }

    private static Run run(Plan plan, Stretch stretch) {
        return plan.room().runs().stream()
                .filter(run -> run.id().equals(stretch.run()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean lies(double atM, Stretch stretch) {
        return atM >= stretch.fromM() && atM < stretch.toM();
    }
}
