package lungfish.terminal;

/** What the program's exit codes mean. */
public final class Exit {
    /** All is well. */
    public static final int FINE = 0;

    /** The plan has a blocking finding, or a network cannot be solved. */
    public static final int BLOCKED = 1;

    /** The input, or the command line, is wrong or cannot be read. */
    public static final int WRONG_INPUT = 2;

    /** The program itself is at fault. */
    public static final int FAULT = 3;

    private Exit() {}
}
