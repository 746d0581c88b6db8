package ampdays.study;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/** Shares numbered pieces of work among threads; what they make is handed over by number, so the threads do not show. */
final class Workers {
    private Workers() {}

    /**
     * Makes all pieces.
     *
     * @param done called after each piece, in their order
     */
    static <T> List<T> make(int count, int workers, IntFunction<T> piece, Runnable done) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            List<Future<T>> underWay = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int number = i;
                underWay.add(pool.submit(() -> piece.apply(number)));
            }
            List<T> made = new ArrayList<>();
            for (Future<T> one : underWay) {
                made.add(await(one));
                done.run();
            }
            return made;
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
