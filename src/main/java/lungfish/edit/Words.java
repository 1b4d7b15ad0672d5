package lungfish.edit;

import java.util.List;
import java.util.Locale;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Tank;

/** What a thing is called in the middle of a sentence: "rack B", "the loop", "3 tanks". */
final class Words {
    private Words() {}

    static String rack(Rack rack) {
        return named("rack", rack.name());
    }

    static String tank(Tank tank) {
        return named("tank", tank.name());
    }

    static String run(Run run) {
        return named("pipe", run.name());
    }

    /** The kind before the name, unless the name begins with it anyway: "Rack B" is "rack B", "West wall" is "rack West wall". */
    static String named(String kind, String name) {
        boolean says = name.toLowerCase(Locale.ROOT).startsWith(kind + " ");
        return kind + " " + (says ? name.substring(kind.length() + 1) : name);
    }

    /** Fit to begin a sentence. */
    static String opening(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** One by its name, several by their number: "rack B", "3 racks". */
    static String racks(List<Rack> racks) {
        return racks.size() == 1 ? rack(racks.get(0)) : racks.size() + " racks";
    }

    static String tanks(List<Tank> tanks) {
        return tanks.size() == 1 ? tank(tanks.get(0)) : tanks.size() + " tanks";
    }

    /** A number of things of one kind: "1 outlet", "3 outlets". */
    static String count(int many, String one) {
        return many + " " + (many == 1 ? one : plural(one));
    }

    private static String plural(String one) {
        return one.endsWith("f") ? one.substring(0, one.length() - 1) + "ves" : one + "s";
    }

    /** What is chosen. */
    static String of(Room room, Selection selection) {
        List<Part> parts = selection.parts();
        if (parts.size() == 1) {
            return PartWords.of(room, parts.get(0));
        }
        boolean alike = parts.stream().map(Part::kind).distinct().count() == 1;
        return alike ? count(parts.size(), PartWords.kind(parts.get(0).kind())) : parts.size() + " parts";
    }

    /** "Linear piston" becomes "linear piston"; a name that is all capitals stays. */
    static String midSentence(String name) {
        boolean isWord = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return isWord ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }
}
