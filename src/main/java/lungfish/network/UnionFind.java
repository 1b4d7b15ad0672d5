package lungfish.network;

import java.util.Arrays;

/** Sets that only grow together. R. E. Tarjan, J. ACM 22(2), 1975, p. 215; paths are halved as they are walked. */
final class UnionFind {
    private final int[] parent;
    private int groups;

    UnionFind(int count) {
        parent = new int[count];
        Arrays.setAll(parent, i -> i);
        groups = count;
    }

    void unite(int a, int b) {
        int rootA = root(a);
        int rootB = root(b);
        if (rootA != rootB) {
            parent[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
            groups--;
        }
    }

    int groups() {
        return groups;
    }

    private int root(int start) {
        int at = start;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** A number for each set, from 0, in the order in which their first members stand. */
    int[] numbered() {
        int[] number = new int[parent.length];
        int next = 0;
        for (int i = 0; i < parent.length; i++) {
            int root = root(i);
            number[i] = root == i ? next++ : number[root];
        }
        return number;
    }
}
