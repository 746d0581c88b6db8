package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.log.MeteredLog;
import ampdays.log.Signal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small logs, each with one of the traps that loggers set, and exactly what is said of it with what remains of the log;
 * the traps are common practice, no source. The files are as they were afterwards.
 */
class LogTrapsTest {
    private static final ZoneId PLACE = ZoneId.of("UTC");

    @TempDir
    private Path folder;

    record Case(String name, String map, String log, List<String> says) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Arrays.stream(WrongScenarioTest.resource("log-traps.txt").split("(?m)^=== ", -1))
                .filter(block -> !block.isBlank())
                .map(LogTrapsTest::parsed);
    }

    private static Case parsed(String block) {
        int map = block.indexOf("--- map\n");
        int log = block.indexOf("--- log\n");
        int says = block.indexOf("--- says\n");
        return new Case(
                block.substring(0, map).strip(),
                block.substring(map + 8, log),
                block.substring(log + 8, says).replace("\\uFEFF", "\uFEFF").replace("\\0", "\0"),
                block.substring(says + 9).lines().toList());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachTrapIsNamed(Case trap) throws IOException {
        Path map = written("map.yaml", trap.map());
        Path log = written("log.csv", trap.log());
        assertThat(said(map, log)).isEqualTo(trap.says());
        assertThat(Files.readString(log)).isEqualTo(trap.log());
        assertThat(Files.readString(map)).isEqualTo(trap.map());
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrder(map, log);
        }
    }

    private static List<String> said(Path map, Path file) throws IOException {
        List<String> said = new ArrayList<>();
        try {
            MeteredLog log = LogReader.read(file, LogMapReader.read(map, PLACE));
            log.traps().forEach(trap -> said.add("log.csv:" + trap.line() + ": " + trap.text()));
            log.signals()
                    .forEach(signal -> said.add(signal.label() + " " + Math.round(measuredMinutes(log, signal))
                            + " min, " + signal.dimension().show(log.value(signal, log.minutes() - 1))));
            said.add(log.minutes() + " min, gaps " + log.facts().gaps());
        } catch (InputException e) {
            e.problems().forEach(problem -> said.add(problem.toString()));
        }
        return said;
    }

    private static double measuredMinutes(MeteredLog log, Signal signal) {
        return log.coverage(signal) * log.minutes();
    }

    private Path written(String name, String text) throws IOException {
        return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }
}
