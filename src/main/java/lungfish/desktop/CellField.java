package lungfish.desktop;

import java.awt.Color;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;

/** A field in a cell of a table. Where there are choices it opens them below itself, and typing narrows them down. */
final class CellField extends JTextField {
    private static final int ROWS = 12;

    private final transient View view;
    private final transient List<String> choices;
    private final String before;
    private final DefaultListModel<String> offered = new DefaultListModel<>();
    private final JList<String> list = new JList<>(offered);
    private final JPopupMenu popup = new JPopupMenu();
    private transient Runnable take = () -> {};

    /**
     * A field.
     *
     * @param choices empty where anything may be typed
     * @param before what stands in it to begin with
     */
    CellField(View view, List<String> choices, String before) {
        super(before);
        this.view = view;
        this.choices = List.copyOf(choices);
        this.before = before;
        setFont(view.look().type().body());
        mark(false);
        if (!choices.isEmpty()) {
            offerBelow();
        }
    }

    private void offerBelow() {
        JButton open = new JButton(UIManager.getIcon("Tree.expandedIcon"));
        open.putClientProperty("JButton.buttonType", "borderless");
        open.setFocusable(false);
        open.getAccessibleContext().setAccessibleName("Choices");
        open.addActionListener(event -> open());
        putClientProperty("JTextField.trailingComponent", open);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Choices");
        list.setFocusable(false);
        list.setFont(getFont());
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                setText(list.getSelectedValue());
                take.run();
            }
        });
        popup.setFocusable(false); // the keys stay with the field
        popup.add(new JScrollPane(list));
        Typing.on(this, this::narrow);
        offer(choices, before);
    }

    void onTake(Runnable does) {
        take = does;
    }

    /** To be typed into: what stands in it is chosen, or gives way to a first letter. */
    void begin(Optional<Character> letter) {
        requestFocusInWindow();
        letter.ifPresentOrElse(first -> setText(String.valueOf(first)), this::selectAll);
        open();
    }

    private void open() {
        if (!choices.isEmpty() && isShowing() && !offered.isEmpty()) {
            list.setVisibleRowCount(Math.min(ROWS, offered.size()));
            popup.show(this, 0, getHeight());
            list.ensureIndexIsVisible(list.getSelectedIndex());
        }
    }

    @Override
    public void removeNotify() {
        popup.setVisible(false);
        super.removeNotify();
    }

    /** What is typed: of choices the one that is pointed at, unless another is typed in full. */
    String text() {
        String typed = getText().strip();
        boolean isWhole = typed.isEmpty() || choices.stream().anyMatch(typed::equalsIgnoreCase);
        String pointed = list.getSelectedValue();
        return isWhole || pointed == null ? typed : pointed;
    }

    /** Points at the choice so many further down. Whether there are choices to point at. */
    boolean point(int by) {
        if (offered.isEmpty()) {
            return false;
        }
        int at = Math.floorMod(list.getSelectedIndex() + by, offered.size());
        setText(offered.get(at));
        offer(choices, getText());
        open();
        return true;
    }

    private void offer(List<String> those, String pointed) {
        offered.clear();
        offered.addAll(those);
        list.setSelectedValue(pointed, true);
    }

    /** Those with the letters typed; first those that begin with them. */
    private void narrow() {
        String typed = getText().strip().toLowerCase(Locale.ROOT);
        List<String> near = choices.stream()
                .filter(choice -> choice.toLowerCase(Locale.ROOT).contains(typed))
                .sorted(java.util.Comparator.comparing(
                        choice -> !choice.toLowerCase(Locale.ROOT).startsWith(typed)))
                .toList();
        offer(near, typed.isEmpty() || near.isEmpty() ? "" : near.get(0));
        if (near.isEmpty()) {
            popup.setVisible(false);
        } else if (isFocusOwner()) {
            open();
        }
    }

    /** Whether what stands in it cannot be taken. */
    void mark(boolean wrong) {
        Color edge =
                wrong ? view.look().palette().accent() : view.look().palette().air();
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(edge, view.px(2)),
                BorderFactory.createEmptyBorder(0, view.px(4), 0, view.px(4))));
    }
}
