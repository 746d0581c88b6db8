package ampdays.study;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.function.LongFunction;

/**
 * Shares numbered pieces of work among threads; what they make is handed over by number, so the threads do not show. At any
 * time only a few pieces are under way: memory does not grow with their number.
 */
final class Workers {
    /** Pieces under way for each worker, so that none waits for a slower one. */
    private static final int AHEAD = 4;

    private Workers() {}

    /**
     * Makes all pieces.
     *
     * @param done called after each piece, in their order
     */
    static <T> List<T> make(int count, int workers, IntFunction<T> piece, Runnable done) throws IOException {
        List<T> made = new ArrayList<>();
        hand(count, workers, number -> piece.apply((int) number), () -> false, one -> {
            made.add(one);
            done.run();
        });
        return made;
    }

    /**
     * Makes pieces and hands each over, in their order.
     *
     * @param stopped asked before each piece; when true, pieces under way are still handed over, and then it ends
     */
    static <T> void hand(long count, int workers, LongFunction<T> piece, BooleanSupplier stopped, Sweep.Sink<T> sink)
            throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            Deque<Future<T>> underWay = new ArrayDeque<>();
            long next = 0;
            while (true) {
                while (next < count && underWay.size() < AHEAD * workers && !stopped.getAsBoolean()) {
                    long number = next++;
                    underWay.add(pool.submit(() -> piece.apply(number)));
                }
                if (underWay.isEmpty()) {
                    return;
                }
                sink.accept(await(underWay.remove()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static <T> T await(Future<T> made) throws IOException {
        try {
            return made.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("The study was interrupted.", e);
        }
    }
}
