package ampdays.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Between making and closing it, Ctrl-C does not end the program at once: it asks for an end and waits for it a while. */
final class Interruption implements AutoCloseable {
    private static final long PATIENCE_S = 60;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook = new Thread(this::askAndWait, "interruption");
    private volatile boolean asked;

    Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    boolean isAsked() {
        return asked;
    }

    private void askAndWait() {
        asked = true;
        try {
            boolean inTime = ended.await(PATIENCE_S, TimeUnit.SECONDS);
            if (!inTime) {
                Runtime.getRuntime().halt(Exit.INTERNAL_ERROR);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        ended.countDown();
        if (!asked) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
    }
}
