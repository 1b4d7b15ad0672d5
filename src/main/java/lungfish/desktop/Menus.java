package lungfish.desktop;

import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPopupMenu;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import lungfish.desk.Recent;

/** The menu bar: every action of the window stands in it, with its key. */
final class Menus {
    private final WindowPane window;
    private final Acts acts;

    private Menus(WindowPane window) {
        this.window = window;
        this.acts = window.acts();
    }

    static JMenuBar of(WindowPane window) {
        return new Menus(window).bar();
    }

    private JMenuBar bar() {
        JMenuBar bar = new JMenuBar();
        bar.add(file());
        bar.add(edit());
        bar.add(menu("Plan", 'P', acts.plan()));
        bar.add(menu("View", 'V', acts.look()));
        bar.add(menu("Go", 'G', acts.go()));
        return bar;
    }

    /** What opens on a part of the room: the actions of the Edit menu on what is chosen, and how to come closer to it. */
    static JPopupMenu onRoom(Acts acts) {
        JPopupMenu menu = onParts(acts);
        menu.add(acts.the(OpenRack.class));
        menu.addSeparator();
        menu.add(menu("In the rack", 'I', acts.inRack()));
        menu.add(menu("Arrange racks", 'R', acts.arrange()));
        menu.add(menu("Pipe, valves and taps", 'P', acts.pipe()));
        return menu;
    }

    /** What opens on a part of the front of a rack. */
    static JPopupMenu onRack(Acts acts) {
        JPopupMenu menu = onParts(acts);
        menu.addSeparator();
        acts.inRack().forEach(menu::add);
        return menu;
    }

    private static JPopupMenu onParts(Acts acts) {
        JPopupMenu menu = new JPopupMenu("What is chosen");
        acts.chosen().forEach(menu::add);
        menu.addSeparator();
        menu.add(acts.the(ShowChosen.class));
        menu.add(acts.the(HalfDrainChosen.class));
        menu.add(acts.the(ShutChosen.class));
        return menu;
    }

    private static JMenu menu(String name, char letter, List<Act> acts) {
        JMenu menu = new JMenu(name);
        menu.setMnemonic(letter);
        acts.forEach(menu::add);
        return menu;
    }

    private JMenu edit() {
        JMenu edit = menu("Edit", 'E', acts.edit());
        edit.addSeparator();
        acts.chosen().forEach(edit::add);
        edit.addSeparator();
        edit.add(menu("In the rack", 'I', acts.inRack()));
        edit.add(menu("Arrange racks", 'R', acts.arrange()));
        edit.add(menu("Pipe, valves and taps", 'P', acts.pipe()));
        return edit;
    }

    private JMenu file() {
        JMenu file = menu("File", 'F', acts.file());
        file.insert(menu("Demo rooms", 'D', acts.demos()), 2);
        file.insert(recent(), 3);
        file.insertSeparator(4);
        return file;
    }

    /** Filled each time when the menu opens: other windows open files too. */
    private JMenu recent() {
        JMenu recent = new JMenu("Recent rooms");
        recent.setMnemonic('R');
        recent.getPopupMenu(); // there before it is asked for
        JMenu menu = recent;
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                fill(menu);
            }

            @Override
            public void menuDeselected(MenuEvent event) {}

            @Override
            public void menuCanceled(MenuEvent event) {}
        });
        return recent;
    }

    private void fill(JMenu menu) {
        menu.removeAll();
        Recent.files(window.view().desk().shared().preferences())
                .forEach(file -> menu.add(new OpenRecent(window, file)));
        if (menu.getItemCount() == 0) {
            menu.add("none yet").setEnabled(false);
        }
    }
}
