package lungfish.desktop;

import java.awt.event.KeyEvent;

/** What a keeper asks of the plan; each is answered on a sheet of its own beside the room. */
enum Question {
    EVERYDAY("Everyday", "Everyday disturbances…", 'E', KeyEvent.VK_Y),
    OUTAGE("Outage", "When the air stops: the outage drill…", 'W', KeyEvent.VK_J),
    TODAY("Today", "Today's pumps beside the plan…", 'T', KeyEvent.VK_9),
    BLOWERS("Blowers", "Choose the blower…", 'B', KeyEvent.VK_B),
    PIPES("Pipes", "Pipe sizes and the cheapest build…", 'P', KeyEvent.VK_6),
    GROWTH("Growth", "Room to grow, place by place and stage by stage…", 'G', KeyEvent.VK_7),
    SURE("How sure", "How sure the plan is…", 'S', KeyEvent.VK_8);

    private final String word;
    private final String says;
    private final char letter;
    private final int key;

    Question(String word, String says, char letter, int key) {
        this.word = word;
        this.says = says;
        this.letter = letter;
        this.key = key;
    }

    /** On its tab. */
    String word() {
        return word;
    }

    /** In the menu. */
    String says() {
        return says;
    }

    char letter() {
        return letter;
    }

    /** With the menu key it asks. */
    int key() {
        return key;
    }

    /** Whether it is asked while living with the air, not before choosing what gives it. */
    boolean isOfLiving() {
        return switch (this) {
            case EVERYDAY, OUTAGE, TODAY -> true;
            case BLOWERS, PIPES, GROWTH, SURE -> false;
        };
    }

    SideSheet sheet(View view, Side side) {
        return switch (this) {
            case EVERYDAY -> new EverydaySheet(view, side).sayingNotYet();
            case BLOWERS -> new BlowerSheet(view, side).sayingNotYet();
            case PIPES -> new PipesSheet(view, side).sayingNotYet();
            case GROWTH -> new GrowthSheet(view, side).sayingNotYet();
            case SURE -> new SureSheet(view, side).sayingNotYet();
            case TODAY -> new TodaySheet(view, side);
            case OUTAGE -> new OutageSheet(view, side);
        };
    }
}
