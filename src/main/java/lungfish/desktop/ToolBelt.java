package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;

/** The tools of the room, and the one in the hand. */
final class ToolBelt {
    private final List<Tool> tools;
    private final Map<Tool, JComponent> options;
    private final List<Runnable> listeners = new ArrayList<>();
    private Tool inHand;

    ToolBelt(View view) {
        RackOptions racks = new RackOptions(view);
        PipeOptions pipes = new PipeOptions(view);
        MachineOptions machines = new MachineOptions();
        Tool rack = new RackTool(view, racks);
        Tool pipe = new PipeTool(view, pipes);
        Tool machine = new MachineTool(view, machines);
        this.tools = List.of(new ChooseTool(view), rack, pipe, machine, new WallTool(view), new MeasureTool(view));
        this.options = Map.of(rack, racks, pipe, pipes, machine, machines);
        this.inHand = tools.get(0);
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

    /** Puts down what is going on; else the tool itself. Whether there was anything to put down. */
    boolean putDown() {
        boolean was = inHand.cancelled();
        if (!was && inHand != tools.get(0)) {
            take(tools.get(0));
            return true;
        }
        return was;
    }

    /** Heard at once, and when another is taken. */
    void onTake(Runnable listener) {
        listeners.add(listener);
        listener.run();
    }
}
