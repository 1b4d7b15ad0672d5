package lungfish.desktop;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.quantity.Dimension;
import lungfish.report.FailingWords;
import net.miginfocom.swing.MigLayout;

/** What fails, when it comes back, and how far is looked. */
final class FailingFields extends JPanel {
    private static final double HOUR_S = 3600;
    private static final List<Integer> HOURS = List.of(6, 12, 24, 48);
    private static final double USUAL_S = 24 * HOUR_S;
    private static final double SHORTEST_S = 600;
    private static final double LONGEST_S = 14 * 24 * HOUR_S;

    /** Two fields are not squeezed into less, at 100 %. */
    private static final int NARROW = 400;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Runnable changed;
    private final Choice<Failing.Kind> kind = new Choice<>("What fails");
    private final Choice<Failing> which = new Choice<>("Which");
    private final QuantityField back;
    private final QuantityField until;
    private final JPanel overKind;
    private final JPanel overWhich;
    private final JPanel overBack;
    private final JPanel overUntil;
    private final JPanel hours = new JPanel(new MigLayout("insets 0, gap 4 0"));
    private final Paragraph trouble;
    private transient List<Failing> possible = List.of();
    private OptionalDouble backS = OptionalDouble.empty();
    private double untilS = USUAL_S;
    private boolean isOffering;
    private boolean isNarrow;

    /**
     * Fields.
     *
     * @param changed told when something else is asked
     */
    FailingFields(View view, IntSupplier widthPx, Runnable changed) {
        this.view = view;
        this.widthPx = widthPx;
        this.changed = changed;
        setOpaque(false);
        hours.setOpaque(false);
        trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        trouble.setVisible(false);
        back = QuantityField.refusing(view, Dimension.DURATION, () -> backS, this::back, this::troubled);
        back.setName("back");
        back.whenSilent(() -> new Silence(OptionalDouble.empty(), "when it is mended"));
        until = QuantityField.refusing(
                view, Dimension.DURATION, () -> OptionalDouble.of(untilS), this::until, this::troubled);
        until.setName("until");
        HOURS.forEach(this::button);
        kind.addActionListener(event -> chosen(this::offerWhich));
        which.addActionListener(event -> chosen(() -> {}));
        overKind = Line.over(view, "What fails", kind);
        overWhich = Line.over(view, "Which", which);
        overBack = Line.over(view, "All is well again after", back);
        overUntil = Line.over(view, "Look ahead", until);
        layOut();
        view.followMarks(this, this::marked);
    }

    private void button(int ahead) {
        JButton button = new JButton(ahead + " h");
        button.setName("ahead-" + ahead);
        button.putClientProperty("JButton.buttonType", "roundRect");
        button.setMargin(new java.awt.Insets(1, 4, 1, 4));
        button.getAccessibleContext().setAccessibleName("Look " + ahead + " hours ahead");
        button.addActionListener(event -> {
            until(OptionalDouble.of(ahead * HOUR_S));
            until.tell();
        });
        hours.add(button);
    }

    private void layOut() {
        isNarrow = widthPx.getAsInt() < view.px(NARROW);
        setLayout(new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + (isNarrow ? 1 : 2) + ", gap " + view.px(12) + " " + view.px(6),
                isNarrow ? "[grow, fill]" : "[grow, fill, sg half][grow, fill, sg half]"));
        removeAll();
        String half = "growx, wmin 0";
        add(overKind, half);
        add(overWhich, half);
        add(overBack, half);
        JPanel ahead =
                new JPanel(new MigLayout("insets 0, fillx, gap " + view.px(6) + " 0", "[grow, fill][]", "[bottom]"));
        ahead.setOpaque(false);
        ahead.add(overUntil, "growx, wmin 0");
        ahead.add(hours, "growx 0");
        add(ahead, half);
        add(trouble, "growx" + (isNarrow ? "" : ", spanx 2"));
    }

    private void chosen(Runnable then) {
        if (!isOffering) {
            offering(then);
            changed.run();
        }
    }

    private void offering(Runnable does) {
        isOffering = true;
        does.run();
        isOffering = false;
    }

    private String back(OptionalDouble si) {
        if (si.orElse(0) < 0) {
            return "It comes back after some time, or leave it empty.";
        }
        backS = si;
        changed.run();
        return "";
    }

    private String until(OptionalDouble si) {
        double asked = si.orElse(USUAL_S);
        if (asked < SHORTEST_S || asked > LONGEST_S) {
            return "Look ahead for " + show(SHORTEST_S) + " to " + show(LONGEST_S) + ".";
        }
        untilS = asked;
        changed.run();
        return "";
    }

    private String show(double s) {
        return view.quantities().show(s, Dimension.DURATION);
    }

    private void troubled(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    /** What is asked. */
    Scene scene() {
        return new Scene(which.chosen().orElseGet(Failing.Mains::new), backS, untilS);
    }

    /** All that can fail in the room as it was planned last. */
    void offer(List<Failing> all) {
        if (!all.equals(possible)) {
            possible = all;
            offering(() -> {
                List<Failing.Kind> kinds = Arrays.stream(Failing.Kind.values())
                        .filter(each -> all.stream().anyMatch(one -> one.kind() == each))
                        .toList();
                kind.offer(kinds, FailingWords::name, each -> each == Failing.Kind.MAINS);
                offerWhich();
            });
        }
    }

    private void offerWhich() {
        List<Failing> those = possible.stream()
                .filter(each -> kind.chosen().filter(each.kind()::equals).isPresent())
                .toList();
        which.offer(those, this::called, this::isMarked);
        if (which.chosen().isEmpty() && which.getItemCount() > 0) {
            which.setSelectedIndex(0);
        }
        which.setEnabled(those.size() > 1);
    }

    private String called(Failing failing) {
        return failing.kind() == Failing.Kind.MAINS
                ? "the public supply"
                : view.names().of(failing.part());
    }

    private boolean isMarked(Failing failing) {
        return view.marked().chosen().contains(failing.part());
    }

    /** What is chosen on the drawing is what fails, where it is of that kind. */
    private void marked() {
        boolean isOther = which.chosen().filter(this::isMarked).isEmpty()
                && possible.stream()
                        .anyMatch(each -> isMarked(each)
                                && kind.chosen().filter(each.kind()::equals).isPresent());
        if (isOther) {
            which.choose(this::isMarked);
        }
    }

    void tell() {
        if (isNarrow != widthPx.getAsInt() < view.px(NARROW)) {
            layOut();
        }
        back.tell();
        until.tell();
        for (java.awt.Component each : hours.getComponents()) {
            each.setFont(view.look().type().label());
        }
    }

    void takeFocus() {
        kind.requestFocusInWindow();
    }
}
