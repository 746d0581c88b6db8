package ampdays.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/** The demo, a week long, in a folder with its weather and normals; what it says of options and chances is replaced. */
final class StudiedVan {
    private StudiedVan() {}

    static Path in(Path folder, String chances, String options) throws IOException {
        for (String file : List.of("low-desert-summer.csv", "low-desert-normals.csv")) {
            Files.copy(Path.of("weather-profiles", file), folder.resolve(file));
        }
        String demo = Files.readString(Path.of("scenarios/desert-survey.yaml"));
        String text = demo.substring(0, demo.indexOf("chances:"))
                .replace("../weather-profiles/", "")
                .replace("days: 14", "days: 7")
                .replace("1-5, 8-12", "1-5");
        Path file = folder.resolve("van.yaml");
        Files.writeString(file, text + "chances: " + chances + "\noptions:\n" + options);
        return file;
    }

    /** The blocks of a table of wrong inputs: words of the command, the section, the message. */
    static Stream<Arguments> wrong(String table) throws IOException {
        String text = new String(
                StudiedVan.class.getResourceAsStream("/ampdays/" + table).readAllBytes(), StandardCharsets.UTF_8);
        return Arrays.stream(text.split("\n\n", -1)).skip(1).map(block -> {
            String[] lines = block.strip().split("\n", 3);
            return Arguments.of(lines[0].equals("-") ? "" : lines[0], lines[1], lines[2]);
        });
    }
}
