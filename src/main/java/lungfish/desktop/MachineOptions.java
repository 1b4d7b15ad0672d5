package lungfish.desktop;

import java.util.List;
import javax.swing.JPanel;
import lungfish.room.Blower;
import net.miginfocom.swing.MigLayout;

/** Which kind of machine is put down next. */
final class MachineOptions extends JPanel {
    /** Of a machine on a stand on the floor. */
    private static final double ON_THE_FLOOR_M = 0.3;

    /** Small pumps hang above the water. */
    private static final double ON_THE_WALL_M = 1.8;

    private final Choice<Blower.Role> role = new Choice<>("Kind of machine");

    MachineOptions() {
        super(new MigLayout("insets 0, gap 6 0"));
        setOpaque(false);
        role.offer(List.of(Blower.Role.values()), BlowerProperties::words, Blower.Role.PLANNED::equals);
        add(role);
    }

    Blower.Role role() {
        return role.chosen().orElse(Blower.Role.PLANNED);
    }

    double heightM() {
        return role() == Blower.Role.TODAY ? ON_THE_WALL_M : ON_THE_FLOOR_M;
    }
}
