package lungfish.desktop;

import java.awt.CardLayout;
import java.awt.Component;
import java.util.List;
import javax.swing.JPanel;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** The row at the foot of a sheet: what its answer rests on; until there is one, how far it has come. */
final class Footing extends JPanel {
    private static final String BUSY = "busy";
    private static final String IDLE = "idle";
    private static final int HEIGHT = 32;

    private final CardLayout cards = new CardLayout();
    private final UnderWay underWay;
    private final Line rests;

    Footing(View view, Later<?, ?> later) {
        setLayout(cards);
        setOpaque(false);
        underWay = new UnderWay(view, List.of(later));
        rests = new Line(view, Type::body, Palette::softInk);
        add(held(underWay, "[center]"), BUSY);
        add(held(rests, "[" + view.px(HEIGHT) + "!, center]"), IDLE);
    }

    /** What comes and goes by itself needs a place of its own among cards. */
    private static JPanel held(Component inside, String rows) {
        JPanel place = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow, fill]", rows));
        place.setOpaque(false);
        place.add(inside, "wmin 0");
        return place;
    }

    /** Tells how far the question has come; where it is answered, what the answer rests on. */
    void tell(String answered) {
        underWay.tell();
        rests.setText(answered);
        cards.show(this, underWay.isVisible() ? BUSY : IDLE);
    }
}
