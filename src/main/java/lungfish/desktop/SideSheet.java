package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javax.swing.JButton;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Progress;
import lungfish.report.BesideWords;
import net.miginfocom.swing.MigLayout;

/** A sheet that lies over the side panels until it is closed, by its button or by Escape. The room stays in sight. */
abstract class SideSheet extends Sheet {
    static final int PAD = 16;
    /** A scroll bar stands beside what is longer than the window. */
    private static final int BAR = 16;
    /** The title and its button come first. */
    private static final int AFTER_TITLE = 2;

    private final transient View view;
    private final transient List<Later<?, ?>> asked = new ArrayList<>();
    private final JButton back = new JButton("Back");

    SideSheet(View view, Side side, String title) {
        super(
                view,
                new MigLayout(
                        "insets " + view.px(12) + " " + view.px(PAD) + ", fill, wrap 1, gap 0 " + view.px(8),
                        "[grow, fill]"));
        this.view = view;
        setName("sheet");
        getAccessibleContext().setAccessibleName(title);
        Line name = new Line(view, Type::label, Palette::softInk);
        name.setText(title);
        add(name, "split 2, growx, pushx");
        add(back, "growx 0");
        back.setName("back");
        back.setToolTipText("Back to the panels (Esc)");
        back.addActionListener(event -> side.close());
        Keys.bindWithin(this, "ESCAPE", side::close);
    }

    /** Where the small pumps should stay, it says so over what it tells of blowers. */
    final SideSheet sayingNotYet() {
        Paragraph notYet = new Paragraph(view, Type::body, Palette::accent, this::innerPx);
        notYet.setName("not-yet");
        add(notYet, "growx, hidemode 3", AFTER_TITLE);
        view.follow(this, () -> {
            Optional<String> says = view.plan().flatMap(BesideWords::notYet);
            notYet.setText(says.orElse(""));
            notYet.setVisible(says.isPresent());
        });
        return this;
    }

    final View view() {
        return view;
    }

    /** How wide the column beside the room is while the sheet is open. */
    int widthPx() {
        return view.sidePx();
    }

    /** How wide text in the sheet may be. */
    final int innerPx() {
        return Side.panelPx(view, widthPx()) - 2 * view.px(PAD);
    }

    /** How wide what scrolls in the sheet may be. */
    final int contentPx() {
        return innerPx() - view.px(BAR);
    }

    /** A question that is asked for the sheet alone: nobody waits for its answer once the sheet is left. */
    final <Q, A> Later<Q, A> asking(BiFunction<Q, Progress, A> answering, Runnable changed) {
        Later<Q, A> later = new Later<>(view.desk().shared().hands(), answering, changed);
        asked.add(later);
        return later;
    }

    /** Something else is chosen, or lies under the pointer. */
    void marked() {}

    /** Another sheet, or none, is shown from now on. */
    void left() {
        asked.forEach(Later::stop);
    }

    /** Takes the focus to where one begins. */
    void takeFocus() {
        back.requestFocusInWindow();
    }
}
