package ampdays.cli;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Counts what is finished, and on a terminal shows it with its rate and the time left. */
final class Progress implements AutoCloseable {
    /** Set by the launcher when messages go to a terminal, which Java itself cannot tell in every version. */
    private static final String TERMINAL = "ampdays.terminal";

    private static final int WIDTH = 90;
    private static final int REFRESH_MS = 500;

    private final Optional<ProgressBar> bar;
    private long done;

    /**
     * Begins.
     *
     * @param what is counted, as it is shown
     * @param before how many are there already
     */
    Progress(String what, long before, long all) {
        this.done = before;
        this.bar = Boolean.getBoolean(TERMINAL) ? Optional.of(shown(what, before, all)) : Optional.empty();
    }

    private static ProgressBar shown(String what, long before, long all) {
        return new ProgressBarBuilder()
                .setTaskName(what)
                .setInitialMax(all)
                .startsFrom(before, Duration.ZERO)
                .setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new ConsoleProgressBarConsumer(System.err, WIDTH))
                .setUpdateIntervalMillis(REFRESH_MS)
                .setSpeedUnit(ChronoUnit.SECONDS)
                .showSpeed(new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT)))
                .build();
    }

    /** One more is finished; for any thread. */
    synchronized void step() {
        done++;
        bar.ifPresent(ProgressBar::step);
    }

    synchronized long done() {
        return done;
    }

    @Override
    public void close() {
        bar.ifPresent(ProgressBar::close);
    }
}
