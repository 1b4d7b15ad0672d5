package lungfish.desktop;

/** How sure headroom, running point and stages are. */
final class SureSheet extends SideSheet {
    SureSheet(View view, Side side) {
        super(view, side, "How sure");
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }
}
