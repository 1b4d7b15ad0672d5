package lungfish.desktop;

/** Opens the sheet that answers a question. */
final class AskAhead extends Act {
    private final transient WindowPane window;
    private final Question question;

    AskAhead(WindowPane window, Question question) {
        super(question.says(), question.letter(), question.key());
        this.window = window;
        this.question = question;
    }

    Question question() {
        return question;
    }

    @Override
    void act() {
        window.side().ask(question);
    }
}
