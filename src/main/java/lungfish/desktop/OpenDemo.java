package lungfish.desktop;

/** Opens a demo room in place of the room in this window. */
final class OpenDemo extends Act {
    private final transient WindowPane window;
    private final transient String demo;

    OpenDemo(WindowPane window, String demo) {
        super(demo.replace('-', ' '), 'D', null);
        this.window = window;
        this.demo = demo;
    }

    @Override
    void act() {
        window.files().openDemo(demo);
    }
}
