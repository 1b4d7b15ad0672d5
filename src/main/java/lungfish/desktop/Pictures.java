package lungfish.desktop;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import lungfish.desk.Age;
import lungfish.drawing.BackupPicture;
import lungfish.drawing.CurvePicture;
import lungfish.drawing.HeadroomPicture;
import lungfish.drawing.NoisePicture;
import lungfish.plan.Duty;
import lungfish.plan.Plan;

/** Brings the pictures of the side panels to the screen in the look of one window. */
final class Pictures {
    private static final int CURVE_HEIGHT = 104;

    private Pictures() {}

    static SidePanel.Picture of(Subject subject, View view) {
        return switch (subject) {
            case DUTY ->
                new Picture(
                        (plan, width) -> plan.duty().isPresent() ? view.px(CURVE_HEIGHT) : 0,
                        (plan, area, g) -> plan.duty().ifPresent(duty -> curve(duty, area, view, g)));
            case HEADROOM ->
                new Picture(
                        (plan, width) -> HeadroomPicture.height(plan, width, view.look()),
                        (plan, area, g) -> HeadroomPicture.paint(plan, area, view.look(), g));
            case NOISE ->
                new Picture(
                        (plan, width) -> isHeard(plan) ? NoisePicture.height(view.look()) : 0,
                        (plan, area, g) -> NoisePicture.paint(plan, area, view.look(), g));
            case BACKUP ->
                new Picture(
                        (plan, width) -> plan.backup().isPresent() ? BackupPicture.height(view.look()) : 0,
                        (plan, area, g) -> BackupPicture.paint(plan, area, view.look(), g));
        };
    }

    /** At the age that the figures beside it are of. */
    private static void curve(Duty duty, Rectangle2D area, View view, Graphics2D g) {
        Age age = view.desk().age();
        CurvePicture.paint(duty, age.needed(duty), age.running(duty), area, view.look(), g);
    }

    private static boolean isHeard(Plan plan) {
        return plan.today().dba().isPresent() || plan.planned().dba().isPresent();
    }

    private interface Height {
        double of(Plan plan, double widthPx);
    }

    private interface Painter {
        void paint(Plan plan, Rectangle2D area, Graphics2D g);
    }

    private record Picture(Height height, Painter painter) implements SidePanel.Picture {
        @Override
        public double heightPx(Plan plan, double widthPx) {
            return height.of(plan, widthPx);
        }

        @Override
        public void paint(Plan plan, Rectangle2D area, Graphics2D g) {
            painter.paint(plan, area, g);
        }
    }
}
