package lungfish.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Pieces of pipe packed into stock lengths, as few as can be found. The saw takes its kerf between two pieces; what ends just at
 * the end of the stock needs no cut.
 *
 * @param stocks in which all pieces are, each once
 * @param least no packing takes fewer stocks than this
 * @param proved whether no packing takes fewer than this one
 */
public record Cutting(double stockM, double kerfM, List<Stock> stocks, int least, boolean proved) {
    /**
     * One length of stock.
     *
     * @param pieces positions in the list of pieces, longest first
     * @param leftM what is left over, the kerf of the cuts taken off
     */
    public record Stock(List<Integer> pieces, double leftM) {
        public Stock {
            pieces = List.copyOf(pieces);
        }
    }

    /** Lengths are packed in tenths of a millimetre, finer than any tape. */
    private static final double PER_M = 1e4;

    public Cutting {
        stocks = List.copyOf(stocks);
    }

    /**
     * Packs pieces.
     *
     * @param piecesM each above 0 and not longer than the stock
     * @param kerfM 0 or more
     * @throws IllegalArgumentException if a piece is longer than the stock
     */
    public static Cutting of(List<Double> piecesM, double stockM, double kerfM) {
        int kerf = tenths(kerfM);
        int room = tenths(stockM) + kerf;
        Integer[] order = new Integer[piecesM.size()];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -piecesM.get(i)));
        int[] sizes = Arrays.stream(order)
                .mapToInt(i -> tenths(piecesM.get(i)) + kerf)
                .toArray();
        if (sizes.length > 0 && sizes[0] > room) {
            throw new IllegalArgumentException(
                    "a piece of " + piecesM.get(order[0]) + " m does not fit a stock of " + stockM + " m");
        }
        Packing packing = Packing.of(sizes, room);
        List<Stock> stocks = new ArrayList<>();
        for (List<Integer> bin : packing.bins()) {
            List<Integer> pieces = bin.stream().map(i -> order[i]).toList();
            stocks.add(new Stock(pieces, leftM(pieces, piecesM, stockM, kerfM)));
        }
        return new Cutting(stockM, kerfM, stocks, packing.least(), packing.proved());
    }

    private static double leftM(List<Integer> pieces, List<Double> piecesM, double stockM, double kerfM) {
        double sum = pieces.stream().mapToDouble(i -> piecesM.get(i) + kerfM).sum();
        return Math.max(0, stockM - sum);
    }

    private static int tenths(double lengthM) {
        return (int) Math.ceil(lengthM * PER_M - 1e-6);
    }
}
