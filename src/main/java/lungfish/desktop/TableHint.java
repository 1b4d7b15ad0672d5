package lungfish.desktop;

/** What can be done in the outlets table, where the keys are now. */
final class TableHint {
    private final View view;
    private final OutletsTable table;

    TableHint(View view, OutletsTable table) {
        this.view = view;
        this.table = table;
    }

    String says() {
        int many = table.getSelectedRowCount();
        if (table.leadRow() < 0 || table.leadColumn() < 0) {
            return "Columns with a pencil are typed · a click on a heading sorts · Shift or Ctrl chooses several rows";
        }
        if (table.isEditing()) {
            return "Enter takes it and goes down · Tab goes on · "
                    + (many > 1 ? "Ctrl+Enter sets all " + many + " rows · " : "")
                    + "Esc gives back what was there";
        }
        if (table.input(table.leadColumn()).isEmpty()) {
            return "An answer of the plan · Enter or double click: why · Ctrl+C copies for a spreadsheet";
        }
        return many > 1 ? several(many) : one();
    }

    private static String several(int many) {
        return many
                + " rows: type, then Ctrl+Enter sets all · Ctrl+Shift+D fills down from the first · Ctrl+C, Ctrl+V: with a spreadsheet";
    }

    private String one() {
        boolean isAssumed = table.column(table.leadColumn()).isAssumed(table.outlet(table.leadRow()), view.reader());
        return isAssumed
                ? "Assumed by the plan: type to say your own, in any unit"
                : "Type or F2 to change it, in any unit · Backspace: not known · Ctrl+C, Ctrl+V: with a spreadsheet";
    }
}
