package ampdays;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
        assertThat(said).contains("4 compiler directives added");
    }

    /** What is left out is named; a method that was renamed would come back unseen. */
    @Test
    void whatIsLeftOutIsThere() throws Exception {
        Matcher named =
                Pattern.compile("\"(ampdays/[A-Za-z/]+)\\.([a-z][A-Za-z]+)\"").matcher(Files.readString(FILE));
        int found = 0;
        while (named.find()) {
            assertThat(Class.forName(named.group(1).replace('/', '.')).getDeclaredMethods())
                    .extracting(Method::getName)
                    .contains(named.group(2));
            found++;
        }
        assertThat(found).isPositive();
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
