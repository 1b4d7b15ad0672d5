package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.Color;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.room.OutletId;
import net.miginfocom.swing.MigLayout;

/** Above the drawing: the tools, how it is zoomed, and one line that tells of what is pointed at. */
final class CanvasHead extends JPanel {
    private static final int LINE_PX = 30;

    private final transient View view;
    private final transient Supplier<ToolBelt> belt;
    private final transient Supplier<Optional<Canvas>> canvas;
    private final RackSteps steps;
    private final JButton why = new JButton("Why?");
    private final transient List<ToolStrip> strips;
    private final JPanel zooming = new JPanel(new MigLayout("insets 0, gap 8 0"));
    private final JPanel options = new JPanel(new BorderLayout());
    private final Line telling;

    /**
     * For a canvas that may be another each time.
     *
     * @param belts all that there are
     * @param belt of what is shown
     * @param canvas what is shown; empty while the questions of an empty room are
     * @param steps away from the front of a rack
     * @param whyAsked explains the figures of an outlet
     */
    CanvasHead(
            View view,
            List<ToolBelt> belts,
            Supplier<ToolBelt> belt,
            Supplier<Optional<Canvas>> canvas,
            RackSteps steps,
            Consumer<OutletId> whyAsked) {
        super(new MigLayout("insets 0, fillx, hidemode 3, gap 8 2, wrap 2", "[grow, fill][]"));
        this.view = view;
        this.belt = belt;
        this.canvas = canvas;
        this.steps = steps;
        this.strips = belts.stream().map(each -> new ToolStrip(view, each)).toList();
        this.telling = Line.reason(view);
        setOpaque(false);
        options.setOpaque(false);
        zooming.setOpaque(false);
        telling.setName("telling");
        telling.dropParts();
        zoom("−", "Smaller", one -> one.zoom(1 / Canvas.ZOOM_STEP, Optional.empty()));
        zoom("Fit", "Show all of it", Canvas::fit);
        zoom("+", "Larger", one -> one.zoom(Canvas.ZOOM_STEP, Optional.empty()));
        add(steps, "cell 0 0, growx 0"); // cells by name: what is hidden must not move the others
        strips.forEach(strip -> add(strip, "cell 0 0, growx, wmin 0"));
        add(zooming, "cell 1 0");
        why.setName("why-outlet");
        why.putClientProperty("JButton.buttonType", "borderless");
        why.setToolTipText("Why are the figures of the chosen outlet what they are?");
        why.addActionListener(event -> view.chosenOutlet().ifPresent(whyAsked));
        add(options, "cell 0 1 2 1, growx 0, h " + view.px(LINE_PX) + "!");
        add(telling, "cell 0 1, growx, pushx, wmin 0, h " + view.px(LINE_PX) + "!");
        add(why, "cell 0 1, growx 0");
        view.onMark(this::tell);
    }

    private void zoom(String text, String help, Consumer<Canvas> does) {
        JButton button = new JButton(text);
        button.putClientProperty("JButton.buttonType", "borderless");
        button.putClientProperty("JComponent.minimumWidth", 28);
        button.setToolTipText(help);
        button.getAccessibleContext().setAccessibleName(help);
        button.addActionListener(event -> canvas.get().ifPresent(does));
        zooming.add(button);
    }

    /** For what is shown now, and the tool in the hand. */
    void dress(boolean rack) {
        steps.setVisible(rack);
        steps.tell();
        strips.forEach(strip -> strip.setVisible(strip.isOf(belt.get())));
        zooming.setVisible(canvas.get().isPresent());
        options.removeAll();
        Optional<JComponent> of = belt.get().options();
        of.ifPresent(options::add);
        options.setVisible(of.isPresent());
        revalidate();
        repaint();
        tell();
    }

    void tell() {
        telling.setText(view.said().orElseGet(() -> told().orElseGet(this::hint)));
        telling.inked(ink());
        telling.setToolTipText(telling.getText());
        why.setVisible(view.chosenOutlet().isPresent());
    }

    /** What to tell of; with a drawing tool in the hand the hint matters more than what is chosen. */
    private Optional<String> told() {
        return tool().enters() ? pointedAt().or(this::chosen) : Optional.empty();
    }

    private Optional<String> pointedAt() {
        return view.pointed()
                .flatMap(new SmallTelling(view)::of)
                .or(() -> view.marked().hovered().map(new Telling(view)::of));
    }

    private Optional<String> chosen() {
        return view.selection().lead().flatMap(new SmallTelling(view)::of).or(() -> view.chosen()
                .map(new Telling(view)::of));
    }

    private Tool tool() {
        return belt.get().inHand();
    }

    private String hint() {
        return canvas.get().isPresent() ? tool().hint() : "";
    }

    private Function<Palette, Color> ink() {
        if (view.said().isPresent()) {
            return Palette::accent;
        }
        return view.marked().chosen().isEmpty() ? Palette::softInk : Palette::ink;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        int widthPx = getWidth() - zooming.getPreferredSize().width - view.px(8);
        steps.fitInto(widthPx / 3);
        int besidePx = steps.isVisible() ? steps.getPreferredSize().width + view.px(8) : 0;
        strips.forEach(strip -> strip.fitInto(widthPx - besidePx));
    }
}
