package lungfish.desktop;

import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** What a keeper asks of the plan; each is answered on a sheet of its own beside the room. */
enum Question {
    EVERYDAY("Everyday", "Everyday disturbances…", 'E', KeyEvent.VK_Y, Row.LIVING),
    OUTAGE("Outage", "When the air stops: the outage drill…", 'W', KeyEvent.VK_J, Row.LIVING),
    TODAY("Today", "Today's pumps beside the plan…", 'T', KeyEvent.VK_9, Row.LIVING),
    BLOWERS("Blowers", "Choose the blower…", 'B', KeyEvent.VK_B, Row.CHOOSING),
    PIPES("Pipes", "Pipe sizes and the cheapest build…", 'P', KeyEvent.VK_6, Row.CHOOSING),
    GROWTH("Growth", "Room to grow, place by place and stage by stage…", 'G', KeyEvent.VK_7, Row.CHOOSING),
    SURE("How sure", "How sure the plan is…", 'S', KeyEvent.VK_8, Row.CHOOSING),
    BUILD("Build", "Build it: what to buy, cut, drill and set…", 'U', KeyEvent.VK_U, Row.DOING),
    START("First start", "First start, step by step…", 'F', KeyEvent.VK_W, Row.DOING),
    LOG("Log", "Log: what was read, and what was done…", 'L', KeyEvent.VK_J, Row.DOING);

    /** Questions that are asked at the same time of a room's life stand in one row of tabs. */
    enum Row {
        LIVING,
        CHOOSING,
        DOING
    }

    private final String word;
    private final String says;
    private final char letter;
    private final int key;
    private final Row row;

    Question(String word, String says, char letter, int key, Row row) {
        this.word = word;
        this.says = says;
        this.letter = letter;
        this.key = key;
        this.row = row;
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

    /** What it is asked with: the menu key and another, with Shift for what is done with hands. */
    KeyStroke key() {
        return row == Row.DOING ? Act.shiftMenuKey(key) : Act.menuKey(key);
    }

    Row row() {
        return row;
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
            case START -> new FirstStartPane(view, side).sayingNotYet();
            case LOG -> new LogSheet(view, side);
            case BUILD -> new BuildSheetPane(view, side).sayingNotYet();
        };
    }
}
