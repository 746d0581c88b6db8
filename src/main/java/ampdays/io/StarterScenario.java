package ampdays.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The commented scenario that a newcomer begins with. */
public final class StarterScenario {
    private StarterScenario() {}

    /**
     * Its text.
     *
     * @param weather path of the weather file, relative to where the scenario will stand
     */
    public static String text(String weather) {
        try (InputStream in = StarterScenario.class.getResourceAsStream("/ampdays/starter.yaml")) {
            String quoted = "'" + weather.replace("'", "''") + "'";
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("WEATHER", quoted);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
