package lungfish.desktop;

/** Pipe sizes, and the cheapest build that meets every wish. */
final class PipesSheet extends SideSheet {
    PipesSheet(View view, Side side) {
        super(view, side, "Pipes");
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }
}
