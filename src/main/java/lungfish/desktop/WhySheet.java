package lungfish.desktop;

import java.util.List;
import java.util.function.Function;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.reason.Why;

/** Why some figures are what they are, one under the other. It follows the plan while it is open. */
final class WhySheet extends SideSheet {
    private final transient Function<Plan, List<Why>> asked;
    private final Stack whys = new Stack();

    /**
     * A sheet.
     *
     * @param asked the figures to explain, of each plan anew
     */
    WhySheet(View view, Side side, Function<Plan, List<Why>> asked) {
        super(view, side, "Why?");
        this.asked = asked;
        add(Side.scrolling(whys), "grow, push");
        view.follow(this, this::tell);
    }

    private void tell() {
        whys.removeAll();
        List<Why> now = view().plan().map(asked).orElse(List.of());
        for (Why why : now) {
            if (whys.getComponentCount() > 0) {
                whys.add(new JSeparator(), "growx, gaptop " + view().px(6) + ", gapbottom " + view().px(6));
            }
            whys.add(new WhyBlock(view(), why, innerPx()), "growx");
        }
        if (now.isEmpty()) {
            Paragraph nothing = new Paragraph(view(), Type::body, Palette::softInk, this::innerPx);
            nothing.setText("There is no figure to explain yet: see what must be mended first.");
            whys.add(nothing, "growx");
        }
        whys.revalidate();
        whys.repaint();
    }
}
