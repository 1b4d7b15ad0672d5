package lungfish.desktop;

/** Opens the sheet by which a list of tanks comes into the room. */
final class ImportTanks extends Act {
    private final transient WindowPane window;

    ImportTanks(WindowPane window) {
        super("Import tank list…", 'I', shiftMenuKey(java.awt.event.KeyEvent.VK_O));
        this.window = window;
    }

    @Override
    void act() {
        window.imports().open();
    }
}
