package lungfish;

/** Starts the planner. */
public final class Lungfish {
    private Lungfish() {}

    /** Runs the command line in {@code args}. */
    public static void main(String[] args) {}
}
