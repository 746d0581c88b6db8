package ampdays.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The commented list of readings that a newcomer begins with. */
public final class StarterReadings {
    private StarterReadings() {}

    public static String text() {
        try (InputStream in = StarterReadings.class.getResourceAsStream("/ampdays/readings.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
