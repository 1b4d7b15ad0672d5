package lungfish.desk;

import java.util.Optional;
import lungfish.edit.Clip;
import org.jspecify.annotations.Nullable;

/** What was copied last in any window, to be pasted in any. Touched only on the event thread. */
public final class Copied {
    private @Nullable Clip clip;

    public Optional<Clip> clip() {
        return Optional.ofNullable(clip);
    }

    public void keep(Clip that) {
        clip = that;
    }
}
