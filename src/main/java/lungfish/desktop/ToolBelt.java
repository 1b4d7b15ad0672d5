package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import lungfish.room.Blower;

/** The tools of one drawing, and the one in the hand. */
final class ToolBelt {
    private final List<Tool> tools;
    private final Map<Tool, JComponent> options;
    private final List<Runnable> listeners = new ArrayList<>();
    private Tool inHand;

    /**
     * The first tool is in the hand, and comes back into it when another is put down.
     *
     * @param options what can be said about some of them
     */
    ToolBelt(List<Tool> tools, Map<Tool, JComponent> options) {
        this.tools = List.copyOf(tools);
        this.options = Map.copyOf(options);
        this.inHand = tools.get(0);
    }

    /** For the room from above. */
    static ToolBelt ofRoom(View view) {
        RackOptions racks = new RackOptions(view);
        PipeOptions pipes = new PipeOptions(view);
        FittingOptions fittings = new FittingOptions(view);
        MachineOptions machines = new MachineOptions();
        Tool choose = new ChooseTool(
                view,
                new FloorDragging(view),
                "Click chooses, Shift adds · drag moves or frames · double click opens a rack");
        Tool rack = new RackTool(view, racks);
        Tool pipe = new PipeTool(view, pipes);
        Tool fitting = new FittingTool(view, fittings);
        Tool machine = new MachineTool(view, machines);
        return new ToolBelt(
                List.of(choose, rack, pipe, fitting, machine, new WallTool(view), new MeasureTool(view)),
                Map.of(rack, racks, pipe, pipes, fitting, fittings, machine, machines));
    }

    /** For the front of a rack. */
    static ToolBelt ofRack(View view, Front front) {
        Tool choose = new ChooseTool(
                view,
                new FrontDragging(view, front),
                "Click chooses, Shift adds · drag moves, with " + Act.menuKeyWord() + " copies · Enter: exact figures");
        TankOptions tanks = new TankOptions(view);
        DeviceOptions devices = new DeviceOptions(view);
        Tool tank = new TankTool(view, front, tanks);
        Tool device = new DeviceTool(view, front, devices);
        return new ToolBelt(
                List.of(choose, new ShelfTool(view, front), tank, device), Map.of(tank, tanks, device, devices));
    }

    List<Tool> tools() {
        return tools;
    }

    Tool inHand() {
        return inHand;
    }

    /** What can be said about the tool in the hand. */
    Optional<JComponent> options() {
        return Optional.ofNullable(options.get(inHand));
    }

    void take(Tool tool) {
        inHand.cancelled();
        inHand = tool;
        listeners.forEach(Runnable::run);
    }

    /** Takes the tool that puts down machines, set to one of these. */
    void take(Blower.Role role) {
        for (Tool tool : tools) {
            if (tool instanceof MachineTool machine) {
                machine.means(role);
                take(tool);
            }
        }
    }

    /** Puts down what is going on; else the tool itself. Whether there was anything to put down. */
    boolean putDown() {
        boolean was = inHand.cancelled();
        if (!was && inHand != tools.get(0)) {
            take(tools.get(0));
            return true;
        }
        return was;
    }

    /** Puts down whatever is in the hand. */
    void putAllDown() {
        if (inHand != tools.get(0)) {
            take(tools.get(0));
        } else {
            inHand.cancelled();
        }
    }

    /** Heard at once, and when another is taken. */
    void onTake(Runnable listener) {
        listeners.add(listener);
        listener.run();
    }
}
