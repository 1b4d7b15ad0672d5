package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JPanel;
import lungfish.catalogue.DeviceClass;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.growth.NewKind;
import lungfish.headroom.Newcomer;
import lungfish.quantity.Dimension;
import net.miginfocom.swing.MigLayout;

/** Which outlets are to be hung on: their device, and how deep it stands. */
final class NewKindFields extends JPanel {
    /** No tank is deeper, m. */
    private static final double DEEPEST_M = 10;

    /** Two fields are not squeezed into less, at 100 %. */
    private static final int NARROW = 400;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final JPanel overDevice;
    private final JPanel overDepth;
    private boolean isNarrow;
    private final transient Supplier<Optional<Newcomer>> taken;
    private final transient Runnable changed;
    private final Choice<Optional<DeviceClass>> device = new Choice<>("Device of the new outlets");
    private final QuantityField depth;
    private final Paragraph trouble;
    private transient List<DeviceClass> offered = List.of();
    private OptionalDouble depthM = OptionalDouble.empty();

    /**
     * Fields.
     *
     * @param taken what was counted last
     * @param changed told when something else is to be counted
     */
    NewKindFields(View view, IntSupplier widthPx, Supplier<Optional<Newcomer>> taken, Runnable changed) {
        this.widthPx = widthPx;
        this.view = view;
        this.taken = taken;
        this.changed = changed;
        setOpaque(false);
        trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        trouble.setVisible(false);
        depth = QuantityField.refusing(view, Dimension.DEPTH, () -> depthM, this::deep, this::troubled);
        depth.setName("depth");
        depth.getAccessibleContext().setAccessibleName("Depth of the new outlets");
        depth.whenSilent(this::usual);
        offer();
        device.addActionListener(event -> changed.run());
        overDevice = Line.over(view, "Counted in", device);
        overDepth = Line.over(view, "Depth", depth);
        layOut();
    }

    /** Side by side where there is room for both. */
    private void layOut() {
        isNarrow = widthPx.getAsInt() < view.px(NARROW);
        setLayout(new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + (isNarrow ? 1 : 2) + ", gap " + view.px(12) + " " + view.px(4),
                isNarrow ? "[grow, fill]" : "[grow, fill][]"));
        removeAll();
        add(overDevice, "growx, wmin 0");
        add(overDepth, "growx 0, wmin " + view.px(170));
        add(trouble, "growx" + (isNarrow ? "" : ", spanx 2"));
    }

    private void offer() {
        List<DeviceClass> all = Stream.concat(
                        view.desk().room().ownClasses().devices().stream(),
                        view.desk().shared().catalogue().devices().stream())
                .toList();
        if (!all.equals(offered)) {
            offered = all;
            device.offer(
                    Stream.concat(
                                    Stream.of(Optional.<DeviceClass>empty()),
                                    all.stream().map(Optional::of))
                            .toList(),
                    each -> each.map(DeviceClass::name).orElse("outlets like most of those here"),
                    Optional::isEmpty);
        }
    }

    private Silence usual() {
        return taken.get()
                .filter(newcomer -> depthM.isEmpty())
                .map(newcomer -> new Silence(OptionalDouble.of(newcomer.depthM()), "as here"))
                .orElse(Silence.NOTHING);
    }

    private String deep(OptionalDouble si) {
        if (si.orElse(0) < 0 || si.orElse(0) > DEEPEST_M) {
            return "A depth is between nothing and " + view.quantities().show(DEEPEST_M, Dimension.LENGTH)
                    + ". Type one, or leave it empty.";
        }
        depthM = si;
        changed.run();
        return "";
    }

    private void troubled(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    /** What is to be hung on. */
    NewKind kind() {
        return new NewKind(device.chosen().flatMap(each -> each).map(DeviceClass::id), depthM);
    }

    void tell() {
        if (isNarrow != widthPx.getAsInt() < view.px(NARROW)) {
            layOut();
        }
        offer();
        depth.tell();
    }

    void takeFocus() {
        device.requestFocusInWindow();
    }
}
