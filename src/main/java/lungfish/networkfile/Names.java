package lungfish.networkfile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.Nearest;

/** The names of one kind of part, each of which may stand only once. */
final class Names {
    private final String kind;
    private final Set<String> names = new LinkedHashSet<>();

    Names(String kind) {
        this.kind = kind;
    }

    /** Those of a list of texts. */
    static Names of(At list, String kind) {
        Names names = new Names(kind);
        list.list(names::add);
        return names;
    }

    /** Reads a name; where it stood before, that is a problem and the name is empty. */
    String add(At at) {
        String name = at.text();
        if (!name.isEmpty() && !names.add(name)) {
            at.problem("another " + kind + " is called \"" + name + "\" too", "a name of its own");
            return "";
        }
        return name;
    }

    /** Reads the name of a node under a key; where there is no such node, that is a problem and the name is empty. */
    String known(Fields fields, String key) {
        At at = fields.required(key);
        String name = at.text();
        if (!name.isEmpty() && !names.contains(name)) {
            at.problem("there is no " + kind + " \"" + name + '"', Nearest.offer(name, names));
            return "";
        }
        return name;
    }

    List<String> all() {
        return new ArrayList<>(names);
    }
}
