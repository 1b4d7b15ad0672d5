package lungfish.desktop;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.SwingConstants;
import javax.swing.Timer;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import net.miginfocom.swing.MigLayout;

/** One glance: a headline that can be asked why, the reason under it, and one picture. */
final class SidePanel extends Sheet {
    /** Paints the picture of a plan, and says how high it is. */
    interface Picture {
        double heightPx(Plan plan, double widthPx);

        void paint(Plan plan, Rectangle2D area, Graphics2D g);
    }

    private static final int PAD = 16;
    /** Beside the text of a button. */
    private static final int CLEARANCE = 8;

    /** How long a changed figure is marked. */
    private static final int MARKED_MS = 1500;

    private final transient View view;
    private final Subject subject;
    private final transient Picture picture;
    private final Line title;
    private final Line was;
    private final transient Changes changes;
    private final Timer fade = new Timer(MARKED_MS, event -> unmark());
    private final JButton headline = new JButton();
    private final Paragraph reason;
    private final Canvas canvas = new Canvas();
    private transient Optional<JButton> offered = Optional.empty();

    SidePanel(View view, Subject subject, Picture picture, Consumer<Subject> asked) {
        super(view, new MigLayout("insets 0, fillx, wrap 1, gap 0", "[grow, fill]", "[][][][grow]"));
        this.view = view;
        this.subject = subject;
        this.picture = picture;
        this.title = Line.title(view, "");
        this.was = new Line(view, Type::drawing, Palette::softInk);
        this.changes = new Changes(subject);
        fade.setRepeats(false);
        addHierarchyListener(event -> fadeWhenSeen());
        this.reason = new Paragraph(view, Type::body, Palette::softInk, () -> Side.panelPx(view) - 2 * view.px(PAD));
        headline.setName(subject.name());
        headline.setHorizontalAlignment(SwingConstants.LEADING);
        headline.putClientProperty("JButton.buttonType", "borderless");
        headline.setMargin(new java.awt.Insets(0, 0, 0, 0));
        headline.setToolTipText("Why? Click, or press Enter");
        headline.addActionListener(event -> asked.accept(subject));
        view.onChange(this::tell);
    }

    /** A button beside its title. */
    void offer(String words, String tip, Runnable does) {
        JButton button = new JButton(words);
        button.setName("offer-" + subject.name());
        button.setToolTipText(tip);
        button.setMargin(new java.awt.Insets(0, 6, 0, 6));
        button.addActionListener(event -> does.run());
        offered = Optional.of(button);
        layOut();
    }

    void takeFocus() {
        headline.requestFocusInWindow();
    }

    private void layOut() {
        String pad = "gapleft " + view.px(PAD) + ", gapright " + view.px(PAD);
        removeAll();
        add(title, pad + ", gaptop " + view.px(12) + ", split " + (offered.isPresent() ? 3 : 2) + ", wmin 0");
        add(was, "growx 0, gapright " + view.px(offered.isPresent() ? CLEARANCE : PAD));
        offered.ifPresent(button -> {
            button.setFont(view.look().type().drawing());
            add(button, "growx 0, gapright " + view.px(PAD) + ", hmax " + view.px(20));
        });
        add(headline, "gapleft " + view.px(PAD) + ", gaptop " + view.px(2) + ", growx, wmin 0");
        add(reason, pad + ", gaptop " + view.px(2));
        add(canvas, pad + ", gaptop " + view.px(8) + ", gapbottom " + view.px(12) + ", growy");
    }

    private void tell() {
        headline.setForeground(ink(Palette::ink));
        Glance glance = view.plan()
                .map(plan -> new Glances(plan, view.desk().age(), view.quantities()).of(subject))
                .orElseGet(() -> new Glance("", "…", "being planned"));
        title.setText(glance.title());
        headline.setText(glance.headline());
        headline.setFont(fitting(glance.headline()));
        reason.setText(glance.reason());
        headline.getAccessibleContext().setAccessibleName(glance.title() + ": " + glance.headline());
        headline.getAccessibleContext().setAccessibleDescription(glance.reason());
        markWhatChanged();
        canvas.getAccessibleContext().setAccessibleName(glance.title() + ", as a picture");
        layOut();
        revalidate();
        repaint();
    }

    private void markWhatChanged() {
        view.plan()
                .filter(plan -> view.desk().isCurrent())
                .flatMap(plan -> changes.hear(plan, view.desk().age(), view.quantities()))
                .ifPresent(this::mark);
    }

    /** What changes under a sheet is marked when the sheet is closed, by what was last seen. */
    private void mark(String before) {
        if (isShowing() || was.getText().isEmpty()) {
            was.setText(was(before));
        }
        if (was.getText().equals(was(headline.getText()))) {
            unmark();
        }
        fadeWhenSeen();
    }

    private static String was(String headline) {
        return "was " + headline.substring(0, 1).toLowerCase(Locale.ROOT) + headline.substring(1);
    }

    private void fadeWhenSeen() {
        if (isShowing() && !was.getText().isEmpty()) {
            fade.restart();
        }
    }

    private void unmark() {
        was.setText("");
        repaint();
    }

    /** A changed figure has a short line under it while it is marked. */
    @Override
    protected void paintChildren(Graphics graphics) {
        super.paintChildren(graphics);
        if (!was.getText().isEmpty()) {
            graphics.setColor(view.look().palette().accent());
            int wide = Math.min(headline.getWidth(), view.px(40));
            graphics.fillRect(
                    headline.getX() + view.px(2),
                    headline.getY() + headline.getHeight() - view.px(3),
                    wide,
                    view.px(2));
        }
    }

    /** A figure that is cut says nothing: large text in a small window gives way. */
    private Font fitting(String text) {
        Font font = view.look().type().headline();
        double needed = headline.getFontMetrics(font).stringWidth(text);
        double there = Side.panelPx(view) - 2.0 * view.px(PAD) - view.px(CLEARANCE);
        return needed <= there ? font : font.deriveFont((float) (font.getSize2D() * there / needed));
    }

    /** An older figure is painted soft until the new one is there. */
    private Color ink(Function<Palette, Color> role) {
        Palette palette = view.look().palette();
        return view.desk().isCurrent() ? role.apply(palette) : palette.free();
    }

    /** Where the picture is painted. */
    private final class Canvas extends Drawn {
        @Override
        public Dimension getPreferredSize() {
            int width = Side.panelPx(view) - 2 * view.px(PAD);
            return new Dimension(
                    width,
                    view.plan()
                            .map(plan -> (int) Math.ceil(picture.heightPx(plan, width)))
                            .orElse(0));
        }

        @Override
        public Dimension getMinimumSize() {
            return getPreferredSize();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            if (!view.desk().isCurrent()) {
                g.setComposite(java.awt.AlphaComposite.SrcOver.derive(0.4f));
            }
            Rectangle2D area = new Rectangle2D.Double(0, 0, getWidth(), getHeight());
            view.plan().filter(plan -> getHeight() > 0).ifPresent(plan -> picture.paint(plan, area, g));
            g.dispose();
        }
    }
}
