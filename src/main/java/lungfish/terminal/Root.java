package lungfish.terminal;

import picocli.CommandLine;
import picocli.CommandLine.IVersionProvider;

/** The program itself, of which every command is a part. */
@CommandLine.Command(
        name = "lungfish",
        description = "Plans the air of a fish room: demand, pipe loop, blower, noise and backup.",
        mixinStandardHelpOptions = true,
        versionProvider = Root.Version.class,
        footer = {
            "",
            "ROOM is a room file or the name of a demo room; 'demos' lists those.",
            "Exit codes: 0 fine; 1 the plan has a blocking finding, or the network cannot be solved;",
            "2 the input or the command line is wrong; 3 a fault of the program itself."
        })
final class Root {
    /** Says the version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"lungfish " + Input.text("version.txt").strip()};
        }
    }
}
