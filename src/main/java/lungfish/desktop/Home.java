package lungfish.desktop;

import lungfish.desk.Preference;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;

/** What all windows of the program share and can ask for. */
interface Home {
    Themes themes();

    /** Opens another window, with an empty room in these units. */
    void openWindow(DisplayUnits units);

    /**
     * Opens another window on a room that has no file.
     *
     * @param done how the room came there
     */
    void openRoom(String done, Room room);

    /** Closes every window, once each room is saved or need not be; where the person thinks better of it, none. */
    void quit();

    /** Prefers a theme, and dresses every window in it. */
    void wear(Preference.Theme theme);

    /** From light to dark, or back. */
    void switchTheme();

    /** Makes all text larger or smaller, within 100 to 200 %. */
    void sizeText(int stepPercent);
}
