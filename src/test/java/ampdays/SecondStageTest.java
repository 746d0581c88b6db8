package ampdays;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The launcher's file of what the compiler's second stage may take up in long studies. */
class SecondStageTest {
    private static final Path FILE = Path.of("src", "main", "launcher", "second-stage.json");

    /** The Java runtime itself is the reference: it refuses to start with a file that it cannot read. */
    @Test
    void theRuntimeReadsIt() throws Exception {
        Process java = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UnlockDiagnosticVMOptions",
                        "-XX:CompilerDirectivesFile=" + FILE,
                        "-version")
                .redirectErrorStream(true)
                .start();
        String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor()).as(said).isZero();
        assertThat(said).contains("2 compiler directives added");
    }

    /** By logic: whatever a run holds from minute to minute is among it. */
    @Test
    void everyPartOfARunIsInIt() throws Exception {
        String text = Files.readString(FILE);
        for (Field field : Class.forName("ampdays.sim.RunState").getDeclaredFields()) {
            assertThat(text).contains('"' + field.getType().getPackageName().replace('.', '/') + "/*.*\"");
        }
        assertThat(text).contains("\"ampdays/sim/*.*\"");
    }
}
