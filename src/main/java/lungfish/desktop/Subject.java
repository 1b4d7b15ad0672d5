package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.List;
import lungfish.plan.Plan;
import lungfish.reason.Why;

/** What the side panels are about, and the figures that explain each. */
enum Subject {
    DUTY("duty", KeyEvent.VK_1),
    HEADROOM("headroom", KeyEvent.VK_2),
    NOISE("noise", KeyEvent.VK_3),
    BACKUP("backup", KeyEvent.VK_4);

    private final String word;
    private final int key;

    Subject(String word, int key) {
        this.word = word;
        this.key = key;
    }

    String word() {
        return word;
    }

    /** With the menu key it asks why. */
    int key() {
        return key;
    }

    /** That of the headline first. */
    private List<String> figures() {
        return switch (this) {
            case DUTY ->
                List.of(
                        "pressure the room needs",
                        "air the room needs",
                        "pressure where the blower runs",
                        "air the blower gives there",
                        "power drawn where the blower runs",
                        "power for the air that is bled, a year",
                        "pressure in hand below what it bears all day",
                        "air leaving the blower, hot end");
            case HEADROOM -> List.of("more outlets", "air left at the pressure the room needs");
            case NOISE ->
                List.of("level of the planned blower at the listener", "level of today's pumps at the listener");
            case BACKUP -> List.of("runtime of the battery", "lift before water siphons");
        };
    }

    /** Why its figures are what they are. */
    List<Why> whys(Plan plan) {
        return figures().stream()
                .flatMap(figure ->
                        plan.whys().stream().filter(why -> why.figure().equals(figure)))
                .toList();
    }
}
