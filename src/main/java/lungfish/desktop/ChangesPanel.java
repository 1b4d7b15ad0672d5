package lungfish.desktop;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import lungfish.drawing.ChangesPicture;
import lungfish.drawing.ChangesPicture.Tooth;
import lungfish.drawing.OutletState;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Moved;
import lungfish.plan.Plan;
import lungfish.report.EverydayWords;
import lungfish.room.OutletId;

/** The picture of what a disturbance does to every outlet, in the order of the plan. */
final class ChangesPanel {
    private final View view;
    private final Painted drawn;
    private List<Tooth> teeth = List.of();
    private String longest = "";

    ChangesPanel(View view, IntSupplier widthPx, BooleanSupplier isCurrent) {
        this.view = view;
        drawn = new Painted(
                view,
                "The change of every outlet",
                widthPx,
                () -> ChangesPicture.height(teeth, widthPx.getAsInt(), view.look()),
                (area, look, g) -> ChangesPicture.paint(teeth, longest, area, look, g),
                isCurrent);
        drawn.setName("everyday-picture");
    }

    Painted drawn() {
        return drawn;
    }

    void show(Optional<Disturbed> answer, Optional<Plan> plan) {
        drawn.setVisible(answer.isPresent());
        answer.ifPresent(found -> plan.ifPresent(planned -> show(found, planned)));
    }

    private void show(Disturbed answer, Plan plan) {
        Map<OutletId, Moved> moved =
                answer.all().collect(Collectors.toMap(each -> each.need().id(), Function.identity()));
        Set<OutletId> hit = answer.what().outlets();
        teeth = plan.outlets().stream()
                .map(outlet -> moved.get(outlet.need().id()))
                .filter(Objects::nonNull)
                .map(each -> tooth(each, hit.contains(each.need().id())))
                .toList();
        longest = answer.bubbling()
                .max(Comparator.comparingDouble(each -> Math.abs(each.share())))
                .map(each -> new EverydayWords(answer, view.quantities(), view.names()).change(each))
                .orElse("");
        drawn.getAccessibleContext().setAccessibleDescription("Up more air, down less; the most changed " + longest);
    }

    private static Tooth tooth(Moved moved, boolean isHit) {
        return new Tooth(
                moved.need().seat().rack().name(),
                moved.share(),
                OutletState.of(moved.after().state()),
                isHit);
    }
}
