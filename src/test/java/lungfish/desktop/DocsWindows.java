package lungfish.desktop;

import java.awt.AWTEvent;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.awt.event.ComponentEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.desk.Preference;
import lungfish.desk.Preferences;
import lungfish.edit.Edit;
import lungfish.edit.LogEdits;
import lungfish.logbook.Logs;
import lungfish.outage.Failing;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.print.DrillCardPage;
import lungfish.print.Paper;
import lungfish.print.PdfFile;
import lungfish.print.Printout;
import lungfish.quantity.Quantities;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.Room;
import lungfish.roomfile.RoomReader;
import lungfish.terminal.Terminal;
import lungfish.web.RoomForms;

/**
 * Paints the pictures of the window in docs/pictures anew, without a display: run its {@code main} in the project's folder.
 * For every demo room: light, dark, text at 200 %, a small window, the front of a rack, and what is asked before buying; that
 * as JSON too, in docs/answers.
 */
public final class DocsWindows {
    private static final Dimension USUAL = new Dimension(1600, 1000);
    /** High enough for a whole answer. */
    private static final Dimension HIGH = new Dimension(1600, 1360);

    private static final Dimension SMALL = new Dimension(1280, 720);
    private static final double CARD_DOTS_PER_INCH = 110;
    private static final double HOUR_S = 3600;
    private static final double FIRST_GAUGE_PA = 6730; // what its first start foresees
    private static final double[] FRY_JARS_S = {49, 52, 58, 61};
    private static final int PASSES = 4; // what wraps knows its height only when it knows its width

    private final Path preferences;
    private final Path into;

    private DocsWindows(Path preferences, Path into) {
        this.preferences = preferences;
        this.into = into;
    }

    /** Paints them all, or those whose names hold the second argument, into docs/pictures or the folder that is the first. */
    public static void main(String[] args) throws IOException, InterruptedException, InvocationTargetException {
        Path into = Path.of(args.length > 0 ? args[0] : "docs/pictures");
        String those = args.length > 1 ? args[1] : "";
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(new Deaf());
        DocsWindows windows = new DocsWindows(Files.createTempDirectory("lungfish"), into);
        for (String room :
                DemoPlans.names().filter(name -> name.contains(those)).toList()) {
            EventQueue.invokeAndWait(() -> windows.all(room));
            if (args.length == 0) {
                answers(room);
                card(room, into);
                sheet(room);
            }
        }
        EventQueue.invokeAndWait(windows::sheets);
    }

    /** Text fields ask where on the screen they are when they are moved; here they are on none. */
    static final class Deaf extends EventQueue {
        @Override
        protected void dispatchEvent(AWTEvent event) {
            if (!(event instanceof ComponentEvent)) {
                super.dispatchEvent(event);
            }
        }

        /** Hears again, after what it has been told so far. */
        void leave() throws InterruptedException, InvocationTargetException {
            EventQueue.invokeAndWait(() -> {});
            pop();
        }
    }

    private void all(String room) {
        save("window-" + room + "-light", window(room, Preference.Theme.LIGHT, 100), USUAL);
        save("window-" + room + "-dark", window(room, Preference.Theme.DARK, 100), USUAL);
        save("window-" + room + "-200", window(room, Preference.Theme.LIGHT, 200), USUAL);
        save("window-" + room + "-1280x720", window(room, Preference.Theme.LIGHT, 100), SMALL);
        WindowPane front = window(room, Preference.Theme.LIGHT, 100);
        front.center().openRack(front.view().desk().room().racks().get(0).id());
        save("rack-" + room, front, USUAL);
        for (Question question : Question.values()) {
            save(question.name().toLowerCase(Locale.ROOT) + "-" + room, asking(room, question), HIGH);
        }
    }

    private WindowPane asking(String room, Question question) {
        WindowPane asked = window(room, Preference.Theme.LIGHT, 100);
        asked.acts().the(question).act();
        return asked;
    }

    private static WindowPane after(WindowPane pane, Class<? extends Act> kind) {
        pane.acts().the(kind).act();
        return pane;
    }

    /** What the terminal answers programs, beside the pictures of the same. */
    private static void answers(String room) throws IOException {
        Path into = Files.createDirectories(Path.of("docs/answers"));
        for (String command : List.of("blowers", "pipes", "stages", "everyday", "sure", "outage")) {
            Path file = into.resolve(command + "-" + room + ".json");
            try (PrintStream out = new PrintStream(file.toFile(), StandardCharsets.UTF_8)) {
                Terminal.run(new String[] {command, room, "--json"}, out, System.err);
            }
        }
    }

    /** The drill card as it is printed, without a date, in docs/cards; and as a picture beside the others. */
    private static void card(String room, Path into) throws IOException {
        Plan plan = DemoPlans.plan(room);
        Quantities quantities = Quantities.in(plan.room().displayUnits());
        Printout card = DrillCardPage.of(plan, DemoPlans.CATALOGUE, quantities, Optional.empty());
        Path cards = Files.createDirectories(Path.of("docs/cards"));
        Files.write(cards.resolve("drill-card-" + room + ".pdf"), PdfFile.bytes(card));
        ImageIO.write(
                card.picture(0, CARD_DOTS_PER_INCH),
                "png",
                into.resolve("drill-card-" + room + ".png").toFile());
    }

    /** What the column beside the room shows when it is asked, and a room as its valves are set. */
    private void sheets() {
        WindowPane why = window("basement-rainbows", Preference.Theme.LIGHT, 100);
        why.side().ask(Subject.DUTY);
        save("window-why", why, USUAL);
        save("window-blowers", asking("basement-rainbows", Question.BLOWERS), USUAL);
        save("window-blowers-compared", comparing(), USUAL);
        save("window-data-sheet", typing(), USUAL);
        save("window-pipes", asking("garage-killifish", Question.PIPES), USUAL);
        save("window-today", asking("basement-rainbows", Question.TODAY), USUAL);
        outages();
        save("window-sure", asking("basement-rainbows", Question.SURE), USUAL);
        save("window-growth", asking("basement-rainbows", Question.GROWTH), USUAL);
        WindowPane notYet = window("starting-out", Preference.Theme.DARK, 100);
        notYet.acts().the(Question.TODAY).act();
        save("window-not-yet", notYet, USUAL);
        WindowPane shut = window("garage-killifish", Preference.Theme.LIGHT, 100);
        shut.view().choose(shut.view().desk().room().racks().get(2).id().part());
        save("window-shut", after(shut, ShutChosen.class), USUAL);
        WindowPane drained = window("basement-rainbows", Preference.Theme.LIGHT, 100);
        drained.view().choose(drained.view().desk().room().racks().get(1).id().part());
        save("window-everyday", after(drained, HalfDrainChosen.class), USUAL);
        WindowPane asSet = window("garage-killifish", Preference.Theme.LIGHT, 100);
        save("window-as-set", after(asSet, SwitchTrial.class), USUAL);
        WindowPane assumed = window("garage-killifish", Preference.Theme.LIGHT, 100);
        save("window-assumed", after(assumed, ShowAssumed.class), USUAL);
        save("window-build", asking("garage-killifish", Question.BUILD), USUAL);
        save("window-start", asking("garage-killifish", Question.START), USUAL);
        save("window-log", logged(), USUAL);
        save("window-measured", measured(Preference.Theme.LIGHT, 100), HIGH);
        save("window-measured-200", measured(Preference.Theme.DARK, 200), HIGH);
        save("window-import", importing(), USUAL);
        save("window-backup", after(window("basement-rainbows", Preference.Theme.LIGHT, 100), SayBackup.class), HIGH);
    }

    /** A log of a year: gauge and watts every two months, a fry tank's jar that slows down, what was cleaned and changed. */
    private WindowPane logged() {
        WindowPane pane = window("garage-killifish", Preference.Theme.LIGHT, 100);
        pane.view().desk().apply(new Edit("A year", room -> Logs.aYear(room, FIRST_GAUGE_PA)));
        for (int i = 0; i < FRY_JARS_S.length; i++) {
            LocalDate day = Logs.START.plusDays(90L * i);
            write(pane, day, new Reading.Jar(new OutletId("C-1-1-a"), FRY_JARS_S[i], OptionalDouble.empty()));
        }
        pane.acts().the(Question.LOG).act();
        return pane;
    }

    private static Room room(Path file) {
        try {
            return new RoomReader(DemoPlans.CATALOGUE)
                    .read(Files.readAllBytes(file))
                    .value()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The garage half a year on, in which the pipe leaks. */
    private WindowPane measured(Preference.Theme theme, int percent) {
        Path file = Path.of("docs/measured/garage-half-a-year-on.room.json");
        WindowPane pane = window("garage-killifish", theme, percent);
        pane.view().desk().apply(new Edit("Half a year", room -> room(file)));
        pane.acts().the(Question.LOG).act();
        return pane;
    }

    private static void write(WindowPane pane, LocalDate day, Reading.Measured measured) {
        pane.view().refused(LogEdits.read(pane.view().desk().room(), day, measured, Reading.Shut.NOTHING, ""));
    }

    /** The build sheet as it is printed, without a date, in docs/sheets; of the garage its lists too. */
    private static void sheet(String room) throws IOException {
        Plan plan = DemoPlans.plan(room);
        Quantities quantities = new Quantities(
                plan.room().displayUnits(), plan.room().supply().currency().orElse(""));
        RoomForms forms = RoomForms.of(plan, DemoPlans.CATALOGUE, quantities, Optional.empty());
        Path sheets = Files.createDirectories(Path.of("docs/sheets"));
        Paper paper = Paper.of(quantities.units());
        Files.write(sheets.resolve("build-sheet-" + room + ".pdf"), forms.bytes(".pdf", paper));
        if (room.equals("garage-killifish")) {
            Files.write(sheets.resolve("build-sheet-" + room + ".csv"), forms.bytes(".csv", paper));
        }
    }

    /** The mains away for some hours, from above and from a rack's front; a blower that stops. */
    private void outages() {
        save("window-outage", outage("basement-rainbows", Preference.Theme.LIGHT, 100, 12 * HOUR_S), USUAL);
        save("window-outage-200", outage("basement-rainbows", Preference.Theme.DARK, 200, 12 * HOUR_S), USUAL);
        WindowPane rack = outage("starting-out", Preference.Theme.LIGHT, 100, 3 * HOUR_S);
        rack.center().openRack(rack.view().desk().room().racks().get(0).id());
        save("window-outage-rack", rack, USUAL);
        Bench hall = bench("club-hall", Preference.Theme.LIGHT, 100);
        hall.ask(Question.OUTAGE);
        @SuppressWarnings("unchecked")
        Choice<Failing.Kind> kinds = hall.part(Choice.class, "What fails");
        kinds.choose(Failing.Kind.BLOWER_STOPS::equals);
        save("window-outage-blower", hall.pane(), USUAL);
    }

    private WindowPane outage(String room, Preference.Theme theme, int percent, double atS) {
        Bench bench = bench(room, theme, percent);
        bench.ask(Question.OUTAGE);
        Parts.all(bench.pane().side()).filter(OutagePlayer.class::isInstance).forEach(player -> ((OutagePlayer) player)
                .go(atS));
        return bench.pane();
    }

    /** The three best blowers side by side. */
    private WindowPane comparing() {
        Bench bench = bench("basement-rainbows", Preference.Theme.LIGHT, 100);
        bench.ask(Question.BLOWERS);
        BenchList list = bench.part(BenchList.class, "candidates");
        for (int i = 0; i < BenchList.MOST_MARKED; i++) {
            list.mark(list.getModel().getElementAt(i));
        }
        bench.part(JButton.class, "compare").doClick(0);
        return bench.pane();
    }

    /** A blower half typed: its curve is drawn, and one figure is beyond it. */
    private WindowPane typing() {
        Bench bench = bench("garage-killifish", Preference.Theme.DARK, 100);
        bench.ask(Question.BLOWERS);
        bench.part(JButton.class, "data-sheet").doClick(0);
        bench.part(JTextField.class, "blower-name").setText("Garage find");
        TextClip.put("0 kPa\t70 L/min\n8 kPa\t52 L/min\n16 kPa\t0 L/min\n");
        PointsTable points = bench.part(PointsTable.class, "points");
        points.changeSelection(0, 0, false, false);
        Parts.press(points, "ctrl V");
        bench.part(JTextField.class, "slot-WATTS").setText("48 W");
        bench.part(JTextField.class, "slot-PRICE").setText("75");
        bench.part(JTextField.class, "slot-CONTINUOUS").setText("3 psi");
        return bench.pane();
    }

    /** A list of tanks that has a cell to mend. */
    private WindowPane importing() {
        Bench bench = bench("starting-out", Preference.Theme.LIGHT, 100);
        try {
            bench.answers().list = Optional.of(
                    Files.writeString(
                            preferences.resolve("my-tanks.csv"),
                            """
                    Tank;Rack;Shelf;Length (cm);Width (cm);Height (cm);Filter
                    Fry 1;Fry rack;1;40;25;25;sponge-small
                    Fry 2;Fry rack;1;4O;25;25;sponge-small
                    Fry 3;Fry rack;2;40;25;25;sponge-small
                    """));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        bench.act(ImportTanks.class);
        bench.part(JButton.class, "choose-list").doClick(0);
        return bench.pane();
    }

    private WindowPane window(String room, Preference.Theme theme, int percent) {
        return bench(room, theme, percent).pane();
    }

    private Bench bench(String room, Preference.Theme theme, int percent) {
        Preferences wished = Desks.in(preferences, Hands.ofTheCaller()).preferences();
        wished.set(Preference.THEME, theme);
        wished.set(Preference.TEXT_PERCENT, percent);
        new Themes(wished).wear();
        return new Bench(Desks.in(preferences, Hands.ofTheCaller()).on(Logs.TODAY), room);
    }

    private void save(String name, WindowPane pane, Dimension size) {
        try {
            ImageIO.write(
                    FewColours.of(painted(pane, size)),
                    "png",
                    into.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage painted(WindowPane pane, Dimension size) {
        JPanel whole = new JPanel(new BorderLayout()); // as a frame has it, which would need a display
        whole.add(Menus.of(pane), BorderLayout.NORTH);
        whole.add(pane, BorderLayout.CENTER);
        whole.addNotify();
        whole.setSize(size);
        for (int i = 0; i < PASSES; i++) {
            layOut(whole);
            pane.view().inWindowOf(pane.getWidth());
        }
        BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(pane.view().look().palette().paper());
        g.fillRect(0, 0, size.width, size.height);
        whole.paint(g);
        g.dispose();
        return image;
    }

    /** What has no window is laid out by hand, from the outside in. */
    private static void layOut(Component part) {
        if (part instanceof Container holder) {
            holder.invalidate();
            holder.doLayout();
            for (Component child : holder.getComponents()) {
                layOut(child);
            }
        }
    }
}
