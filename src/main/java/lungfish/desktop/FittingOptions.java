package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JPanel;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.FittingClass;
import net.miginfocom.swing.MigLayout;

/** What is fitted next: something into the pipe, or something onto a machine. */
final class FittingOptions extends JPanel {
    private static final String USUAL = "ball-valve";

    /** Elbows, tees and what stands at the ends of a pipe are seen from its corners: they are not fitted by hand. */
    private static final Set<String> DRAWN_ANYWAY = Set.of("entry", "exit", "return-bend");

    private final Choice<Kind> kind = new Choice<>("What is fitted");

    /** One of three: a fitting in the pipe, a filter or silencer of a machine, the bleed of a machine. */
    record Kind(Optional<FittingClass> inPipe, Optional<AccessoryClass> onMachine) {
        String words() {
            return inPipe.map(FittingClass::name)
                    .or(() -> onMachine.map(AccessoryClass::name))
                    .orElse("Bleed valve");
        }
    }

    FittingOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0"));
        setOpaque(false);
        Catalogue catalogue = view.desk().shared().catalogue();
        kind.offer(kinds(catalogue), Kind::words, one -> one.inPipe()
                .filter(fitting -> fitting.id().equals(USUAL))
                .isPresent());
        add(kind, "wmin 0, wmax " + view.px(260));
    }

    private static List<Kind> kinds(Catalogue catalogue) {
        List<Kind> all = new java.util.ArrayList<>();
        insertable(catalogue).forEach(one -> all.add(new Kind(Optional.of(one), Optional.empty())));
        all.add(new Kind(Optional.empty(), Optional.empty()));
        catalogue.accessories().forEach(one -> all.add(new Kind(Optional.empty(), Optional.of(one))));
        return all;
    }

    /** Valves first: they are what one looks for. */
    static List<FittingClass> insertable(Catalogue catalogue) {
        return catalogue.fittings().stream()
                .filter(one -> !one.id().startsWith("elbow") && !one.id().startsWith("tee"))
                .filter(one -> !DRAWN_ANYWAY.contains(one.id()))
                .sorted(java.util.Comparator.comparing((FittingClass one) -> !one.valve()))
                .toList();
    }

    Kind chosen() {
        return kind.chosen().orElseThrow();
    }
}
