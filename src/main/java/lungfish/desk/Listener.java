package lungfish.desk;

/** Hears of a desk; always called through the desk's front executor, or by whoever called the desk. */
public interface Listener {
    /** Something that the desk shows is new: room, plan, waiting, file, history, units or outlook. Ask the desk. */
    void changed();

    /** Something could not be done, and the person should read why. Nothing else has changed. */
    void troubled(Trouble trouble);
}
