package lungfish.desk;

import java.util.ArrayList;
import java.util.List;

/** Remembers what a desk told. */
class Ear implements Listener {
    private final List<Trouble> troubles = new ArrayList<>();
    private int changes;

    static Ear on(Desk desk) {
        Ear ear = new Ear();
        desk.addListener(ear);
        return ear;
    }

    @Override
    public void changed() {
        changes++;
    }

    @Override
    public void troubled(Trouble trouble) {
        troubles.add(trouble);
    }

    int changes() {
        return changes;
    }

    List<Trouble> troubles() {
        return troubles;
    }
}
