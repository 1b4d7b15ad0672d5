package lungfish.desktop;

import java.awt.Container;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import lungfish.desk.Desk;
import lungfish.desk.Keeping;
import lungfish.desk.Leftover;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.json.Problem;
import net.miginfocom.swing.MigLayout;

/**
 * Over the room, until it is answered: what a crash left, to be taken, left or thrown away. Or that changes cannot be kept
 * where they should. It takes no focus and stops nobody.
 */
final class RecoveryStrip extends Sheet {
    private static final DateTimeFormatter TODAY = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter EARLIER = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
    private static final String STOPPED = "Not saved when Lungfish stopped";
    private static final String BROKEN = "Not saved, and cannot be read";
    private static final int PAD = 14;
    private static final int LEAST = 240;
    private static final int UNKNOWN = 900;

    private final transient View view;
    private final Line headline;
    private final Paragraph words;
    private final JButton take = new JButton("Take");
    private final JButton leave = new JButton("Leave");
    private final JButton discard = new JButton("Throw away");
    private final JButton heard = new JButton("All right");
    private String told = "";

    RecoveryStrip(View view, WindowFiles files) {
        super(view, new MigLayout("insets 8 14 10 14, fillx, hidemode 3, gap 8 2", "[grow, fill][][][]", "[][]"));
        this.view = view;
        this.headline = new Line(view, Type::label, Palette::ink);
        this.words = new Paragraph(view, Type::body, Palette::softInk, this::wordsPx);
        setName("recovery");
        getAccessibleContext().setAccessibleName("Changes that were not saved");
        words.setName("recovery-words");
        words.getAccessibleContext().setAccessibleName("About changes that were not saved");
        button(take, "take-recovered", "Take the changes up again; Undo leads back", files::recover);
        button(leave, "leave-recovered", "Leave them where they are, to be offered again", () -> desk().recovery()
                .leave());
        button(discard, "discard-recovered", "Remove them for good", () -> desk().recovery()
                .discard());
        button(heard, "heard", "Close this; it is not told again", this::hear);
        add(headline, "cell 0 0, wmin 0");
        add(words, "cell 0 1, wmin 0");
        add(take, "cell 1 0 1 2, aligny center");
        add(leave, "cell 2 0 1 2, aligny center");
        add(discard, "cell 3 0 1 2, aligny center");
        add(heard, "cell 3 0 1 2, aligny center");
        view.onChange(this::tell);
    }

    private static void button(JButton button, String name, String help, Runnable does) {
        button.setName(name);
        button.setToolTipText(help);
        button.addActionListener(event -> does.run());
    }

    private Desk desk() {
        return view.desk();
    }

    /** What the buttons leave of the window. Asks the window and not this strip, whose own size follows from the answer. */
    private int wordsPx() {
        Container above = getParent();
        int all = above == null || above.getWidth() == 0 ? view.px(UNKNOWN) : above.getWidth();
        int buttons = List.of(take, leave, discard, heard).stream()
                .filter(JButton::isVisible)
                .mapToInt(button -> button.getPreferredSize().width + PAD)
                .sum();
        return Math.max(LEAST, all - buttons - 2 * PAD);
    }

    private void tell() {
        Optional<Leftover> offered = desk().recovery().offered();
        Optional<String> trouble = offered.isPresent() ? Optional.empty() : trouble();
        boolean isWhole =
                offered.filter(each -> each.holds().problems().isEmpty()).isPresent();
        take.setVisible(isWhole);
        leave.setVisible(offered.isPresent());
        discard.setVisible(offered.isPresent());
        heard.setVisible(trouble.isPresent());
        setVisible(offered.isPresent() || trouble.isPresent());
        offered.ifPresent(each -> say(isWhole ? STOPPED : BROKEN, about(each)));
        trouble.ifPresent(each -> say("Changes are not kept beside the file", each));
        revalidate();
        repaint();
    }

    private void say(String first, String then) {
        headline.setText(first);
        words.setText(then);
    }

    private String about(Leftover left) {
        List<String> all = new ArrayList<>();
        if (left.holds().problems().isEmpty()) {
            all.add(which(left) + ", " + left.time().map(RecoveryStrip::time).orElse("") + ": "
                    + left.done().orElse("") + ".");
            left.elsewhere().ifPresent(machine -> all.add("It may still be open on " + machine + "."));
        } else {
            all.add(left.at() + ":");
            left.holds().problems().stream().limit(1).map(Problem::sentence).forEach(all::add);
        }
        int more = desk().recovery().count() - 1;
        if (more > 0) {
            all.add(more == 1 ? "One more waits." : more + " more wait.");
        }
        return String.join(" ", all);
    }

    private static String which(Leftover left) {
        return left.file()
                .map(file -> String.valueOf(file.getFileName()))
                .or(left::roomName)
                .orElse("");
    }

    private static String time(Instant at) {
        ZonedDateTime local = at.atZone(ZoneId.systemDefault());
        boolean isToday = local.toLocalDate().equals(LocalDate.now(ZoneId.systemDefault()));
        return local.format(isToday ? TODAY : EARLIER);
    }

    /** Told once. */
    private Optional<String> trouble() {
        Keeping keeping = desk().keeping();
        return keeping.trouble()
                .filter(each -> !each.equals(told))
                .map(why -> why + ". "
                        + keeping.at()
                                .map(path -> "Until it can be, they are kept in " + path.getParent() + ".")
                                .orElse("They are kept nowhere until they are saved."));
    }

    private void hear() {
        told = desk().keeping().trouble().orElse("");
        tell();
    }
}
