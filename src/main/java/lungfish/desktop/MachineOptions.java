package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import lungfish.room.Blower;
import net.miginfocom.swing.MigLayout;

/** Which kind of machine is put down next. */
final class MachineOptions extends JPanel {
    /** Of a machine on a stand on the floor. */
    private static final double ON_THE_FLOOR_M = 0.3;

    /** Small pumps hang above the water. */
    private static final double ON_THE_WALL_M = 1.8;

    /** Of the ears of one who sits. */
    private static final double EAR_M = 1.2;

    private final Choice<Optional<Blower.Role>> role = new Choice<>("Kind of machine");

    MachineOptions() {
        super(new MigLayout("insets 0, gap 6 0"));
        setOpaque(false);
        role.offer(kinds(), MachineOptions::words, Optional.of(Blower.Role.PLANNED)::equals);
        add(role);
    }

    private static List<Optional<Blower.Role>> kinds() {
        return Stream.concat(
                        Stream.of(Blower.Role.values()).map(Optional::of), Stream.of(Optional.<Blower.Role>empty()))
                .toList();
    }

    private static String words(Optional<Blower.Role> role) {
        return role.map(BlowerProperties::words).orElse("where you sit and listen");
    }

    /** What is put down; empty: the one who hears them all. */
    Optional<Blower.Role> role() {
        return role.chosen().orElse(Optional.of(Blower.Role.PLANNED));
    }

    void choose(Blower.Role that) {
        role.choose(Optional.of(that)::equals);
    }

    double heightM() {
        if (role().isEmpty()) {
            return EAR_M;
        }
        return role().get() == Blower.Role.TODAY ? ON_THE_WALL_M : ON_THE_FLOOR_M;
    }
}
