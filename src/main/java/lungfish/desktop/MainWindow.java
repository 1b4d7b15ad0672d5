package lungfish.desktop;

import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import lungfish.desk.Desk;

/** One window with one room. */
final class MainWindow extends JFrame {
    private static final int WIDTH = 1480;
    private static final int HEIGHT = 940;
    private static final Dimension LEAST = new Dimension(960, 600);

    private final transient WindowPane pane;

    MainWindow(Home home, Desk desk, Consumer<MainWindow> closed) {
        pane = new WindowPane(home, desk, new Dialogs(this), this::dispose);
        setContentPane(pane);
        setJMenuBar(Menus.of(pane));
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                pane.close();
            }

            @Override
            public void windowClosed(WindowEvent event) {
                closed.accept(MainWindow.this);
            }

            @Override
            public void windowOpened(WindowEvent event) {
                pane.center().takeFocus();
            }
        });
        setIconImages(WindowIcon.sizes());
        setMinimumSize(LEAST);
        takeSize();
        pane.view().onChange(this::tell);
    }

    /** As large as it likes to be, and never larger than the screen. */
    private void takeSize() {
        GraphicsConfiguration screen = getGraphicsConfiguration();
        Rectangle all = screen.getBounds();
        Insets bars = Toolkit.getDefaultToolkit().getScreenInsets(screen);
        double scale = pane.view().look().type().scale();
        setSize((int) Math.min(WIDTH * scale, all.width - bars.left - bars.right), (int)
                Math.min(HEIGHT * scale, all.height - bars.top - bars.bottom));
        setLocationRelativeTo(null);
    }

    /** Room, file and whether it is saved; desktops that show the last two in their own way are told. */
    private void tell() {
        Desk desk = pane.view().desk();
        Optional<Path> file = desk.file();
        setTitle(desk.room().name()
                + file.map(kept -> " · " + kept.getFileName()).orElse("")
                + (desk.isChanged() ? " (not saved)" : "")
                + " · Lungfish");
        getRootPane().putClientProperty("Window.documentModified", desk.isChanged());
        getRootPane()
                .putClientProperty("Window.documentFile", file.map(Path::toFile).orElse(null));
    }

    WindowPane pane() {
        return pane;
    }
}
