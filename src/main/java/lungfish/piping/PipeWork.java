package lungfish.piping;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.PipeSize;
import lungfish.network.Pipe;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Run;
import lungfish.room.RunId;

/**
 * Cuts the runs at every stop (tap, joint, blower, end) into pipes between nodes, and gives each pipe the loss factors of
 * the elbows, tees and fittings that lie on it.
 */
final class PipeWork {
    private final Layout layout;
    private final RunLosses losses;
    private final Catalogue catalogue;
    private final Names names = new Names();
    private final Map<RunId, NavigableSet<Long>> stops = new LinkedHashMap<>();
    private final Set<String> branchEnds = new HashSet<>();
    private final Set<String> tees = new HashSet<>();
    private final Set<String> nodes = new LinkedHashSet<>();
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final List<Pipe> pipes = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    PipeWork(Layout layout, Catalogue catalogue) {
        this.layout = layout;
        this.catalogue = catalogue;
        this.losses = new RunLosses(catalogue);
        for (RunLine line : layout.lines()) {
            NavigableSet<Long> own = new TreeSet<>();
            own.add(0L);
            own.add(Names.millimetres(line.run(), line.run().closed() ? line.lengthM() / 2 : line.lengthM()));
            stops.put(line.run().id(), own);
        }
    }

    /** Cuts the run here, and says what the node is called. */
    String stopAt(Stop stop) {
        Run run = layout.line(stop.run()).run();
        long at = Names.millimetres(run, stop.alongM());
        stopsOf(stop.run()).add(at);
        tees.add(Names.of(run, at));
        return Names.of(run, at);
    }

    /** Cuts every run into pieces of one length, none longer than this; nothing leaves or joins there, and nothing is lost. */
    void cutEvery(double mostM) {
        for (RunLine line : layout.lines()) {
            int pieces = (int) Math.ceil(line.lengthM() / mostM);
            for (int i = 1; i < pieces; i++) {
                stopsOf(line.run().id()).add(Names.millimetres(line.run(), i * line.lengthM() / pieces));
            }
        }
    }

    /** Ties the end of one run to the place on another that it touches. */
    void join(Joints.Joint joint) {
        String end = stopAt(joint.end());
        branchEnds.add(end);
        names.join(stopAt(joint.onto()), end);
    }

    /** The node that a name means, once all joints are made. */
    String node(String name) {
        return names.find(name);
    }

    /** Makes the pipes; after this no stop may be added. */
    void cut() {
        for (RunLine line : layout.lines()) {
            cut(line);
        }
    }

    private void cut(RunLine line) {
        Run run = line.run();
        PipeSize size = size(run);
        List<Long> at = new ArrayList<>(stopsOf(run.id()));
        at.forEach(millimetres -> mark(run, millimetres));
        int pieces = run.closed() ? at.size() : at.size() - 1;
        for (int i = 0; i < pieces; i++) {
            long from = at.get(i);
            boolean wraps = i + 1 == at.size();
            long to = wraps ? at.get(0) + Math.round(line.lengthM() * 1000) : at.get(i + 1);
            piece(line, size, from, to, wraps ? at.get(0) : to);
        }
    }

    private void piece(RunLine line, PipeSize size, long from, long to, long endsAt) {
        Run run = line.run();
        RunLosses.Piece piece = losses.of(line, from / 1000.0, to / 1000.0);
        if (piece.shut()) {
            findings.add(Finding.of(Code.MAIN_CLOSED_BY_VALVE, run.id().part()));
            return;
        }
        String first = Names.of(run, from);
        String last = Names.of(run, endsAt);
        double k = piece.lossFactor() + intoPiece(first) + (branchEnds.contains(last) ? losses.intoBranch() : 0);
        stretches.add(new Stretch(pipes.size(), run.id(), from / 1000.0, to / 1000.0));
        pipes.add(new Pipe(
                run.id().text() + ":" + from,
                node(first),
                node(last),
                (to - from) / 1000.0,
                size.boreM(),
                size.roughnessM(),
                k));
    }

    /** Each tee is passed once: on the way into the piece behind it. The ends and the half of a loop are no tees. */
    private double intoPiece(String first) {
        if (branchEnds.contains(first)) {
            return losses.intoBranch();
        }
        return tees.contains(first) ? losses.passingTap() : 0;
    }

    private void mark(Run run, long millimetres) {
        String name = node(Names.of(run, millimetres));
        nodes.add(name);
        spots.putIfAbsent(name, new Spot(run.at(millimetres / 1000.0), Optional.of(run.id()), millimetres / 1000.0));
    }

    PipeSize size(Run run) {
        return catalogue
                .pipe(run.size())
                .orElseThrow(() -> new IllegalArgumentException("no pipe size '" + run.size() + "'"));
    }

    /** A node off the pipe: a gang, or a blower's outlet. */
    void addNode(String name, Spot spot) {
        nodes.add(name);
        spots.put(name, spot);
    }

    /** A pipe off the runs: a gang's feeder, or a blower's hose. */
    void addPipe(Pipe pipe) {
        pipes.add(pipe);
    }

    private NavigableSet<Long> stopsOf(RunId run) {
        NavigableSet<Long> own = stops.get(run);
        if (own == null) {
            throw new IllegalArgumentException("no run '" + run + "'");
        }
        return own;
    }

    List<String> nodes() {
        return List.copyOf(nodes);
    }

    Map<String, Spot> spots() {
        return spots;
    }

    List<Pipe> pipes() {
        return pipes;
    }

    List<Stretch> stretches() {
        return stretches;
    }

    List<Finding> findings() {
        return findings;
    }
}
