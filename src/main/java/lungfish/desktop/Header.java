package lungfish.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.desk.Desk;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.room.Room;
import net.miginfocom.swing.MigLayout;

/** The head of the window: which room, in one line what is in it, what one does most, and how it is shown. */
final class Header extends JPanel {
    private final transient WindowPane window;
    private final transient View view;
    private final Line name;
    private final Line about;
    private final Line saved;
    private final JButton units = new JButton();
    private final JButton theme = new JButton();
    private final List<AbstractButton> buttons = new ArrayList<>();
    private boolean isTight;

    Header(WindowPane window) {
        this.window = window;
        this.view = window.view();
        this.name = new Line(view, Type::headline, Palette::ink);
        this.about = Line.reason(view);
        about.dropParts();
        this.saved = Line.reason(view);
        setOpaque(false);
        getAccessibleContext().setAccessibleName("Header");
        button("Open", OpenRoom.class);
        button("Save", SaveRoom.class);
        button("Conditions", SetConditions.class);
        quiet(units, () -> window.acts().the(SwitchUnits.class).act());
        quiet(theme, () -> window.home().switchTheme());
        layOut();
        view.onChange(this::tell);
    }

    /** Where it is tight the buttons leave the second line to what is in the room. */
    private void layOut() {
        isTight = view.isTight();
        removeAll();
        setLayout(new MigLayout("insets 2 4 0 4, fillx, gap 8 0", "[grow, fill]16[][][]16[right]", "[]0[]"));
        add(name, "wmin 0, growx");
        buttons.forEach(button -> add(button, isTight ? "aligny center" : "spany 2, aligny center, sgx head"));
        add(saved, "alignx right, wrap");
        add(about, "wmin 0, growx" + (isTight ? ", spanx 4" : ""));
        add(units, "split 2, alignx right, gapright 0");
        add(theme);
    }

    private void button(String text, Class<? extends Act> kind) {
        Act act = window.acts().the(kind);
        JButton button = new JButton(text);
        button.setName(text.toLowerCase(java.util.Locale.ROOT));
        button.setToolTipText(act.name() + Keys.inBrackets(act.key()));
        button.addActionListener(event -> act.act());
        buttons.add(button);
    }

    private static void quiet(JButton button, Runnable does) {
        button.putClientProperty("JButton.buttonType", "borderless");
        button.setMargin(new java.awt.Insets(1, 6, 1, 6));
        button.addActionListener(event -> does.run());
    }

    private void tell() {
        if (view.isTight() != isTight) {
            layOut();
        }
        name.setText(view.desk().room().name());
        name.setToolTipText(name.getText());
        about.setText(about());
        about.setToolTipText(about.getText());
        String kept = saved(view.desk());
        saved.setText(isTight ? kept.replaceFirst(" as .*", "") : kept);
        saved.setToolTipText(kept);
        units.setText(
                switch (view.desk().units()) {
                    case METRIC -> "metric units";
                    case US -> "US units";
                });
        units.setToolTipText("Switch between US and metric units");
        theme.setText(view.themes().isDark() ? "dark" : "light");
        theme.setToolTipText("Switch between light and dark");
    }

    private static String saved(Desk desk) {
        if (desk.isWaiting()) {
            return "planning…";
        }
        if (desk.isChanged()) {
            return "not saved";
        }
        return desk.file().map(file -> "saved as " + file.getFileName()).orElse("in no file yet");
    }

    private String about() {
        Room room = view.desk().room();
        List<String> parts = new ArrayList<>();
        long outlets = room.seats().stream().filter(seat -> !seat.planned()).count();
        parts.add(outlets == 1 ? "1 outlet" : outlets + " outlets");
        if (!room.runs().isEmpty()) {
            parts.add(room.runs().get(0).name().toLowerCase(java.util.Locale.ROOT));
        }
        view.plan().flatMap(Header::blower).ifPresent(parts::add);
        return String.join(" · ", parts);
    }

    private static Optional<String> blower(Plan plan) {
        return plan.duty().map(duty -> {
            String name = duty.candidate().fleet().name();
            if (plan.keepPumps()) {
                return "no blower yet: the small pumps do";
            }
            return duty.recommended() ? "recommended: " + name : name;
        });
    }

    void takeFocus() {
        buttons.get(0).requestFocusInWindow();
    }
}
