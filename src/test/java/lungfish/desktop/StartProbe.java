package lungfish.desktop;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javax.swing.JFrame;
import javax.swing.JLabel;
import lungfish.desk.Desks;
import lungfish.desk.Hands;

/**
 * What {@link StartTimes} starts: says "there" on its output once its window can be used, and ends when a line comes in. The
 * program itself, an empty window with the same look and feel, or nothing but the classes of a list.
 */
final class StartProbe {
    private StartProbe() {}

    /** Which of the three, then: the configuration folder and the room, the configuration folder, or the list. */
    public static void main(String[] args) throws Exception {
        switch (args[0]) {
            case "program" -> program(Path.of(args[1]), args[2]);
            case "empty" -> empty(Path.of(args[1]));
            default -> classes(Path.of(args[1]));
        }
    }

    private static void program(Path config, String room) throws Exception {
        Windows windows = Windows.open(config, room);
        untilPainted(() -> !windows.all().isEmpty()
                && windows.all().get(0).isShowing()
                && windows.all().get(0).pane().view().desk().isCurrent());
    }

    private static void empty(Path config) throws Exception {
        Desks desks = Desks.in(config, Hands.behind(EventQueue::invokeLater));
        JFrame[] frame = new JFrame[1];
        EventQueue.invokeLater(() -> {
            new Themes(desks.preferences()).wear();
            frame[0] = new JFrame("empty");
            frame[0].add(new JLabel("empty"));
            frame[0].setSize(1480, 940);
            frame[0].setVisible(true);
        });
        untilPainted(() -> frame[0] != null && frame[0].isShowing());
    }

    /** Asks on the event thread, behind whatever is to be painted. */
    private static void untilPainted(BooleanSupplier there) throws Exception {
        boolean[] isThere = new boolean[1];
        while (!isThere[0]) {
            EventQueue.invokeAndWait(() -> isThere[0] = there.getAsBoolean());
        }
        EventQueue.invokeAndWait(() -> {});
        say();
    }

    private static void classes(Path list) throws IOException {
        for (String name : Files.readAllLines(list)) {
            load(name);
        }
        System.out.println("there");
    }

    /** Those that the Java machine made while it ran cannot be found, and need not. */
    private static boolean load(String name) {
        try {
            return Class.forName(name, false, StartProbe.class.getClassLoader()) != null;
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }

    private static void say() throws IOException {
        System.out.println("there");
        System.out.flush();
        if (System.in.read() >= -1) {
            System.exit(0);
        }
    }
}
