package lungfish.desktop;

/** Explains the figures of one panel. */
final class AskWhy extends Act {
    private final transient WindowPane window;
    private final transient Subject subject;

    AskWhy(WindowPane window, Subject subject) {
        super("Why: " + subject.word(), subject.word().charAt(0), menuKey(subject.key()));
        this.window = window;
        this.subject = subject;
    }

    @Override
    void act() {
        window.side().ask(subject);
    }
}
