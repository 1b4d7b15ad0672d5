package lungfish.desktop;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.JButton;
import lungfish.desk.Trouble;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;

/** What could not be done, and every problem with its place: to be read, selected and copied. Nothing else has changed. */
final class TroubleSheet extends SideSheet {
    private final JButton copy = new JButton("Copy the list");

    TroubleSheet(View view, Side side, Trouble trouble) {
        super(view, side, "Not done");
        setName("trouble");
        Paragraph headline = new Paragraph(view, Type::label, Palette::accent, this::innerPx);
        headline.setText(trouble.headline());
        Paragraph list = new Paragraph(view, Type::body, Palette::ink, this::innerPx);
        list.setName("problems");
        list.setFocusable(true);
        list.setText(trouble.problems().stream()
                .map(problem -> "• " + problem.sentence())
                .collect(java.util.stream.Collectors.joining("\n\n")));
        list.getAccessibleContext().setAccessibleName("Problems");
        copy.setName("copy");
        copy.addActionListener(event -> Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(trouble.text()), null));
        Stack stack = new Stack();
        stack.add(headline, "growx");
        stack.add(list, "growx");
        add(Side.scrolling(stack), "grow, push");
        add(copy, "growx 0");
    }

    @Override
    void takeFocus() {
        copy.requestFocusInWindow();
    }
}
