package ampdays.commission;

import java.util.Locale;

/** What a reading means for the job, the best first. */
public enum Outcome {
    PASS,
    INVESTIGATE,
    STOP;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
