package lungfish.desktop;

/** The keys of a field in a cell. */
final class CellKeys {
    private CellKeys() {}

    static void bind(CellField field, CellInput input) {
        field.setFocusTraversalKeysEnabled(false);
        Keys.bind(field, "ENTER", () -> input.goDown(1));
        Keys.bind(field, "shift ENTER", () -> input.goDown(-1));
        Keys.bind(field, "ctrl ENTER", input::stopInAll);
        Keys.bind(field, "TAB", () -> input.goOn(1));
        Keys.bind(field, "shift TAB", () -> input.goOn(-1));
        Keys.bind(field, "ESCAPE", input::cancelCellEditing);
        Keys.bind(field, "DOWN", () -> {
            if (!field.point(1)) {
                input.goDown(1);
            }
        });
        Keys.bind(field, "UP", () -> {
            if (!field.point(-1)) {
                input.goDown(-1);
            }
        });
        field.onTake(() -> input.goDown(1));
    }
}
