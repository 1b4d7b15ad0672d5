package lungfish.desktop;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import lungfish.desk.Preference;
import lungfish.roomfile.DemoRooms;

/** The actions of one window, by menu. Menus, buttons, keys and tests take the same instances. */
record Acts(
        List<Act> file,
        List<Act> demos,
        List<Act> edit,
        List<Act> chosen,
        List<Act> arrange,
        List<Act> inRack,
        List<Act> pipe,
        List<Act> plan,
        List<Act> look,
        List<Act> go) {
    static Acts of(WindowPane window) {
        return new Acts(
                List.of(
                        new NewRoom(window),
                        new OpenRoom(window),
                        new OpenWindow(window),
                        new SaveRoom(window),
                        new SaveRoomAs(window),
                        new ImportTanks(window),
                        new ExportOutlets(window),
                        new PrintDrillCard(window),
                        new SaveDrillCard(window),
                        new PrintReport(window),
                        new SaveReport(window),
                        new CopyPicture(window),
                        new SavePicture(window),
                        new CloseWindow(window),
                        new QuitProgram(window)),
                DemoRooms.NAMES.stream()
                        .<Act>map(name -> new OpenDemo(window, name))
                        .toList(),
                List.of(new UndoEdit(window), new RedoEdit(window)),
                Chosen.edits(window),
                Chosen.arrange(window),
                Chosen.inRack(window),
                PipeActs.of(window),
                plan(window),
                look(window),
                List.of(
                        new ShowOutlets(window),
                        new ShowFindings(window),
                        new ShowAssumed(window),
                        new ShowChosen(window),
                        new FindOutlet(window),
                        new OpenRack(window),
                        new NextRack(window),
                        new PreviousRack(window),
                        new GoToNextRegion(window),
                        new GoToPreviousRegion(window)));
    }

    private static List<Act> plan(WindowPane window) {
        return Stream.of(
                        Arrays.stream(Question.values()).map(question -> new AskAhead(window, question)),
                        Stream.of(
                                new SetConditions(window),
                                new SayBackup(window),
                                new SwitchTrial(window),
                                new HalfDrainChosen(window),
                                new ShutChosen(window)),
                        Arrays.stream(Subject.values()).map(subject -> new AskWhy(window, subject)),
                        Stream.of(new AskWhyOutlet(window)))
                .<Act>flatMap(acts -> acts)
                .toList();
    }

    private static List<Act> look(WindowPane window) {
        return List.of(
                new SwitchUnits(window),
                new ChooseTheme(window, "Light", Preference.Theme.LIGHT),
                new ChooseTheme(window, "Dark", Preference.Theme.DARK),
                new ChooseTheme(window, "As the system", Preference.Theme.AS_THE_SYSTEM),
                SizeText.larger(window),
                SizeText.smaller(window),
                new ZoomIn(window),
                new ZoomOut(window),
                new ZoomToFit(window));
    }

    /** All of them. */
    List<Act> all() {
        return Stream.of(file, demos, edit, chosen, arrange, inRack, pipe, plan, look, go)
                .flatMap(List::stream)
                .toList();
    }

    /** The one of a kind. */
    Act the(Class<? extends Act> kind) {
        return all().stream().filter(kind::isInstance).findFirst().orElseThrow();
    }

    /** The one that answers a question. */
    Act the(Question question) {
        return plan().stream()
                .filter(act -> act instanceof AskAhead ahead && ahead.question() == question)
                .findFirst()
                .orElseThrow();
    }
}
