package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Edits of what stirs tanks without the air: filters and pumps with plugs of their own. */
public final class StirrerEdits {
    private static final double MOST_W = 1e6;

    private StirrerEdits() {}

    /** Each of the tanks is stirred by this; what stirs it already stays, as this kind. Empty: by nothing. */
    public static Attempt stir(Room room, Collection<TankId> tanks, Optional<Stirrer.Kind> kind) {
        List<Tank> meant = Find.tanks(room, tanks);
        return meant.isEmpty()
                ? Refused.nothing("tank")
                : Edit.tried(room, "Set what stirs " + Words.tanks(meant), before -> kind.map(
                                that -> stirred(before, tanks, that))
                        .orElseGet(() -> before.withStirrers(
                                Each.kept(before.stirrers(), stirrer -> !tanks.contains(stirrer.tank())))));
    }

    private static Room stirred(Room room, Collection<TankId> tanks, Stirrer.Kind kind) {
        List<Stirrer> all = new ArrayList<>(
                Each.changed(room.stirrers(), Each.where(each -> tanks.contains(each.tank()), each -> each.as(kind))));
        Fresh ids = Fresh.stirrers(room);
        for (Tank tank : Find.tanks(room, tanks)) {
            if (all.stream().noneMatch(each -> each.tank().equals(tank.id()))) {
                StirrerId id = new StirrerId(ids.like(tank.id() + "-stirrer"));
                all.add(new Stirrer(id, tank.id(), kind, OptionalDouble.empty(), Optional.empty()));
            }
        }
        return room.withStirrers(all);
    }

    /** What each of them draws, W; empty: unknown. */
    public static Attempt powerW(Room room, Collection<TankId> tanks, OptionalDouble watts) {
        Limits limits = Limits.from(0, MOST_W);
        boolean isPossible = watts.isEmpty() || limits.hold(watts.getAsDouble());
        return isPossible
                ? change(room, tanks, "Set what the stirring draws", each -> each.drawing(watts))
                : limits.refused("Its power", watts.getAsDouble(), lungfish.quantity.Dimension.POWER);
    }

    /** The circuit on which they hang; empty: unknown. */
    public static Attempt circuit(Room room, Collection<TankId> tanks, Optional<CircuitId> circuit) {
        return CircuitEdits.isThere(room, circuit)
                ? change(room, tanks, "Set the circuit of the stirring", each -> each.on(circuit))
                : Refused.nothing("circuit");
    }

    private static Attempt change(Room room, Collection<TankId> tanks, String done, UnaryOperator<Stirrer> change) {
        return room.stirrers().stream().noneMatch(each -> tanks.contains(each.tank()))
                ? Refused.because("Nothing with a plug of its own stirs there.", "Say first what does.")
                : Edit.tried(
                        room,
                        done,
                        before -> before.withStirrers(Each.changed(
                                before.stirrers(), Each.where(each -> tanks.contains(each.tank()), change))));
    }
}
