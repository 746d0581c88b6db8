package ampdays.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Places labels of equal height beside the ends of lines so that none covers another. */
public final class EndLabels {
    private EndLabels() {}

    /**
     * Moves labels as little as needed (least squares): neighbours that are too close are pooled into a block, which
     * stands around the mean of where its labels would like to be.
     *
     * @param wanted where each label would like to be
     * @param gap least distance between two of them
     * @param low lowest place allowed
     * @param high highest; the labels are spread evenly when they do not fit
     * @return places in the order of {@code wanted}
     */
    public static List<Double> spread(List<Double> wanted, double gap, double low, double high) {
        int n = wanted.size();
        double step = n < 2 ? gap : Math.min(gap, (high - low) / (n - 1));
        List<Integer> order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparing(wanted::get))
                .toList();
        List<Block> blocks = new ArrayList<>();
        for (int index : order) {
            Block block = Block.around(wanted.get(index), step, low, high);
            while (!blocks.isEmpty() && blocks.get(blocks.size() - 1).last(step) + step > block.first) {
                block = blocks.remove(blocks.size() - 1).joined(block, step, low, high);
            }
            blocks.add(block);
        }
        List<Double> sorted = new ArrayList<>();
        for (Block block : blocks) {
            for (int i = 0; i < block.count; i++) {
                sorted.add(block.first + i * step);
            }
        }
        return IntStream.range(0, n).mapToObj(i -> sorted.get(order.indexOf(i))).toList();
    }

    /**
     * Labels that touch.
     *
     * @param sum sum of where each would like the first one to be
     */
    private record Block(int count, double sum, double first) {
        static Block around(double wanted, double step, double low, double high) {
            return of(1, wanted, step, low, high);
        }

        Block joined(Block above, double step, double low, double high) {
            return of(count + above.count, sum + above.sum - above.count * count * step, step, low, high);
        }

        double last(double step) {
            return first + (count - 1) * step;
        }

        private static Block of(int count, double sum, double step, double low, double high) {
            double highest = high - (count - 1) * step;
            return new Block(count, sum, Math.max(low, Math.min(highest, sum / count)));
        }
    }
}
