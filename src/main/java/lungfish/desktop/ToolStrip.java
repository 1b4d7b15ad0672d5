package lungfish.desktop;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The tools as buttons, each with its letter. */
final class ToolStrip extends JPanel {
    private final transient View view;
    private final transient ToolBelt belt;
    private final Map<Tool, JToggleButton> buttons = new LinkedHashMap<>();

    ToolStrip(View view, ToolBelt belt) {
        super(new MigLayout("insets 0, gap 2 0"));
        this.view = view;
        this.belt = belt;
        setOpaque(false);
        getAccessibleContext().setAccessibleName("Tools");
        ButtonGroup group = new ButtonGroup();
        for (Tool tool : belt.tools()) {
            JToggleButton button = button(tool);
            group.add(button);
            add(button);
            buttons.put(tool, button);
        }
        belt.onTake(this::tell);
    }

    private JToggleButton button(Tool tool) {
        JToggleButton button = new JToggleButton(tool.name());
        button.setName("tool " + tool.name());
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.putClientProperty("JButton.squareSize", false);
        button.setMargin(new java.awt.Insets(2, 8, 2, 8));
        button.setToolTipText("<html>" + tool.name() + " <b>" + tool.key() + "</b> · " + tool.hint() + "</html>");
        button.getAccessibleContext().setAccessibleName(tool.name());
        button.getAccessibleContext().setAccessibleDescription(tool.hint() + ". Key " + tool.key());
        button.addActionListener(event -> belt.take(tool));
        return button;
    }

    boolean isOf(ToolBelt that) {
        return belt == that;
    }

    private void tell() {
        buttons.forEach((tool, button) -> button.setSelected(tool == belt.inHand()));
    }

    /** With words where there is room for them, else with letters. */
    void fitInto(int widthPx) {
        boolean words = wordsPx() <= widthPx;
        buttons.forEach((tool, button) -> button.setText(words ? tool.name() : String.valueOf(tool.key())));
    }

    private int wordsPx() {
        int px = 0;
        for (Map.Entry<Tool, JToggleButton> each : buttons.entrySet()) {
            JToggleButton button = each.getValue();
            px += button.getFontMetrics(button.getFont())
                            .stringWidth(each.getKey().name())
                    + view.px(2)
                    + 20;
        }
        return px;
    }
}
