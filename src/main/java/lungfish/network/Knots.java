package lungfish.network;

/**
 * Nodes that ties make one: a knot has one pressure. Knots that pipes join form a piece; a piece without a source has
 * nothing to breathe.
 */
final class Knots {
    /** Knot of each node. */
    final int[] ofNode;

    /** How many there are. */
    final int count;

    /** Piece of each knot. */
    final int[] piece;

    /** How many pieces there are. */
    final int pieces;

    /** Whether a piece has a source. */
    final boolean[] fed;

    private Knots(Shape shape) {
        UnionFind tied = new UnionFind(shape.nodes);
        UnionFind joined = new UnionFind(shape.nodes);
        for (int i = 0; i < shape.pipes(); i++) {
            joined.unite(shape.pipeFrom[i], shape.pipeTo[i]);
            if (shape.tie[i]) {
                tied.unite(shape.pipeFrom[i], shape.pipeTo[i]);
            }
        }
        ofNode = tied.numbered();
        count = tied.groups();
        int[] pieceOfNode = joined.numbered();
        pieces = joined.groups();
        piece = new int[count];
        for (int node = 0; node < shape.nodes; node++) {
            piece[ofNode[node]] = pieceOfNode[node];
        }
        fed = new boolean[pieces];
        for (int node : shape.sourceNode) {
            fed[pieceOfNode[node]] = true;
        }
    }

    static Knots of(Shape shape) {
        return new Knots(shape);
    }

    boolean isFed(int knot) {
        return fed[piece[knot]];
    }
}
