package lungfish.desktop;

import java.util.List;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.reason.Why;

/** Why the figures of one subject are what they are, one under the other. It follows the plan while it is open. */
final class WhySheet extends SideSheet {
    private final Subject subject;
    private final Stack whys = new Stack();

    WhySheet(View view, Side side, Subject subject) {
        super(view, side, "Why?");
        this.subject = subject;
        add(Side.scrolling(whys), "grow, push");
        view.follow(this, this::tell);
    }

    private void tell() {
        whys.removeAll();
        List<Why> asked = view().plan().map(this::asked).orElse(List.of());
        for (Why why : asked) {
            if (whys.getComponentCount() > 0) {
                whys.add(new JSeparator(), "growx, gaptop " + view().px(6) + ", gapbottom " + view().px(6));
            }
            whys.add(new WhyBlock(view(), why, innerPx()), "growx");
        }
        if (asked.isEmpty()) {
            Paragraph nothing = new Paragraph(view(), Type::body, Palette::softInk, this::innerPx);
            nothing.setText("There is no figure to explain yet: see what must be mended first.");
            whys.add(nothing, "growx");
        }
        whys.revalidate();
        whys.repaint();
    }

    private List<Why> asked(Plan plan) {
        return subject.whys(plan);
    }
}
