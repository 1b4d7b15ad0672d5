package lungfish.desktop;

import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.roomfile.DemoRooms;
import net.miginfocom.swing.MigLayout;

/** What a room without outlets is good for: it says what is missing, and leads to rooms in which there is something to see. */
final class Invitation extends JPanel {
    Invitation(View view, WindowFiles files) {
        super(new MigLayout("insets 8 0 8 0, fillx, gap 8 4"));
        setOpaque(false);
        Line missing = new Line(view, Type::label, Palette::ink);
        missing.setText("Nothing in this room asks for air yet.");
        Line how = Line.reason(view);
        how.setText(
                "A room file tells how big the room is, which tanks stand in it and what runs today. Or look at a demo room:");
        add(missing, "wrap");
        add(how, "wrap, wmin 0");
        for (String name : DemoRooms.NAMES) {
            JButton demo = new JButton(name.replace('-', ' '));
            demo.setName("demo " + name);
            demo.addActionListener(event -> files.openDemo(name));
            add(demo, name.equals(DemoRooms.NAMES.get(0)) ? "split, gapright 8" : "gapright 8");
        }
        view.onChange(() -> setVisible(view.desk().room().seats().isEmpty()));
    }
}
