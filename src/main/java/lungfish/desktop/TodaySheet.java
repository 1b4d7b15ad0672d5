package lungfish.desktop;

/** Today's pumps beside the planned blower. */
final class TodaySheet extends SideSheet {
    TodaySheet(View view, Side side) {
        super(view, side, "Today and planned");
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }
}
