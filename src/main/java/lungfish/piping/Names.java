package lungfish.piping;

import java.util.HashMap;
import java.util.Map;
import lungfish.room.Run;

/**
 * Names of nodes: a run's id and the millimetres along it. Where runs are joined, the two names mean one node; the first
 * one given stays.
 */
final class Names {
    private final Map<String, String> sameAs = new HashMap<>();

    static long millimetres(Run run, double alongM) {
        long at = Math.round(alongM * 1000);
        long length = Math.round(run.lengthM() * 1000);
        return run.closed() && at >= length ? at - length : Math.min(at, length);
    }

    static String of(Run run, long millimetres) {
        return run.id().text() + "@" + millimetres;
    }

    /** Says that two names mean one node. */
    void join(String kept, String other) {
        String a = find(kept);
        String b = find(other);
        if (!a.equals(b)) {
            sameAs.put(b, a);
        }
    }

    /** The name that stands for this node. */
    String find(String name) {
        String at = name;
        String next = sameAs.get(at);
        while (next != null) {
            at = next;
            next = sameAs.get(at);
        }
        return at;
    }
}
