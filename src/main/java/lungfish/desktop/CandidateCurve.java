package lungfish.desktop;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import lungfish.drawing.CandidatePicture;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.sizing.Candidate;

/** Where the picture of a candidate's curve is painted in its row; the row's words say all that it shows. */
final class CandidateCurve extends Drawn {
    private final transient View view;
    private transient Optional<Candidate> candidate = Optional.empty();

    CandidateCurve(View view) {
        this.view = view;
        getAccessibleContext().setAccessibleName("Its curve, in little");
    }

    void show(Candidate that) {
        candidate = Optional.of(that);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension((int) Math.ceil(CandidatePicture.width(view.look())), (int)
                Math.ceil(CandidatePicture.height(view.look())));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Rectangle2D area = new Rectangle2D.Double(0, 0, getWidth(), getHeight());
        view.plan()
                .flatMap(Plan::duty)
                .map(Duty::needed)
                .ifPresent(needed ->
                        candidate.ifPresent(that -> CandidatePicture.paint(that, needed, area, view.look(), g)));
        g.dispose();
    }
}
