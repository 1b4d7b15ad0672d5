package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import lungfish.desk.Desk;
import lungfish.desk.Listener;
import lungfish.desk.Trouble;
import lungfish.reason.PartId;
import net.miginfocom.layout.PlatformDefaults;
import net.miginfocom.layout.UnitValue;
import net.miginfocom.swing.MigLayout;

/** All that is in one window: it needs no display to be made, asked, and acted upon. */
final class WindowPane extends JPanel {
    static {
        // The window scales by its text already: numbers in layouts are pixels, not scaled a second time.
        PlatformDefaults.setDefaultHorizontalUnit(UnitValue.PIXEL);
        PlatformDefaults.setDefaultVerticalUnit(UnitValue.PIXEL);
    }

    private final transient Home home;
    private final transient View view;
    private final transient WindowFiles files;
    private final transient Runnable closing;
    private final Center center;
    private final Side side;
    private final Below below;
    private final transient TankImports imports;
    private final transient Acts acts;
    private final transient Regions regions;

    WindowPane(Home home, Desk desk, Asking asking, Runnable closing) {
        super(new MigLayout("insets 6 16 14 16, fill, wrap 2, gap 12 8", "[grow, fill][]", "[][grow, fill]"));
        this.home = home;
        this.view = new View(desk, home.themes());
        this.files = new WindowFiles(desk, asking);
        this.closing = closing;
        this.side = new Side(view);
        this.center = new Center(view, files, this::showChosen, outlet -> side.ask(outlet, OutletColumn.SPARE));
        side.drawsWith(center::draw);
        side.leadsWith(this::leadTo);
        this.below = new Below(view, this::leadTo, side::ask);
        this.imports = new TankImports(view, side, asking);
        this.acts = Acts.of(this);
        center.offer(acts);
        Header header = new Header(this);
        this.regions = new Regions(List.of(
                new Regions.Region(header, header::takeFocus),
                new Regions.Region(center, center::takeFocus),
                new Regions.Region(side, side::takeFocus),
                new Regions.Region(below, below::takeFocus)));
        add(head(header), "spanx 2, growx, wmin 0");
        add(split(), "grow, wmin 0, hmin 0");
        add(side, "growy, hmin 0");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                view.inWindowOf(getWidth());
            }
        });
        setTransferHandler(new FileDrop(files, imports));
        desk.addListener(new Troubles());
    }

    /** To a part of the room; what is not drawn there is on the sheet of the backup. */
    private void leadTo(PartId part) {
        switch (part.kind()) {
            case BATTERY, INVERTER, ALARM, CIRCUIT -> side.openBackup();
            case ROOM, RACK, SHELF, TANK, OUTLET, RUN, GANG, BLOWER, STIRRER, OWN_CLASS, NETWORK -> center.leadTo(part);
        }
    }

    /** Below the header, what a crash left, while that is to be decided. */
    private JPanel head(Header header) {
        JPanel head = new JPanel(new BorderLayout(0, 8));
        head.setOpaque(false);
        head.add(header, BorderLayout.NORTH);
        head.add(new RecoveryStrip(view, files), BorderLayout.SOUTH);
        return head;
    }

    private JSplitPane split() {
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, center, below);
        split.setResizeWeight(0.7);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setOpaque(false);
        split.setContinuousLayout(true);
        leaveRegionKeysTo(split);
        below.setPreferredSize(new java.awt.Dimension(400, view.px(230)));
        center.setPreferredSize(new java.awt.Dimension(400, view.px(520)));
        return split;
    }

    /** A split pane takes F6 for itself; here it walks the regions. */
    private static void leaveRegionKeysTo(JSplitPane split) {
        InputMap keys = split.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        keys.put(KeyStroke.getKeyStroke("F6"), "none");
        keys.put(KeyStroke.getKeyStroke("shift F6"), "none");
    }

    Home home() {
        return home;
    }

    View view() {
        return view;
    }

    /** Leads to the fields of what is chosen. */
    void showChosen() {
        below.showChosen();
    }

    WindowFiles files() {
        return files;
    }

    Center center() {
        return center;
    }

    Side side() {
        return side;
    }

    TankImports imports() {
        return imports;
    }

    Below below() {
        return below;
    }

    Acts acts() {
        return acts;
    }

    Regions regions() {
        return regions;
    }

    /** Closes the window when the room is saved, or need not be. */
    void close() {
        files.whenKept(closing);
    }

    /** What could not be done is told in a sheet, as a list that can be copied. */
    private final class Troubles implements Listener {
        @Override
        public void changed() {}

        @Override
        public void troubled(Trouble trouble) {
            side.open(new TroubleSheet(view, side, trouble));
        }
    }
}
