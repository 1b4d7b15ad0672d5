package lungfish.desktop;

/** Where more outlets fit along the pipe, and which planned stage breaks what. */
final class GrowthSheet extends SideSheet {
    GrowthSheet(View view, Side side) {
        super(view, side, "Room to grow");
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }
}
