package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** With what the document was made, so that it can be made again. */
final class Provenance {
    private Provenance() {}

    static Part of(Material material) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(List.of("program", material.program())));
        rows.add(Row.of(
                List.of("date", material.date().map(Say::day).orElse("none given (--date YYYY-MM-DD puts one here)"))));
        rows.add(Row.of(List.of("units", material.units().word())));
        rows.add(Row.of(List.of("seed", seeds(material.studies()))));
        material.inputs()
                .forEach(input -> rows.add(Row.of(List.of(input.what() + " " + input.name(), input.digest()))));
        return Part.of(
                "provenance",
                "How it was made",
                Stream.of(new Sheet(
                        "Program and files",
                        List.of(Column.words("What"), Column.words("Which; of files the SHA-256 digest")),
                        rows,
                        Form.PLAIN,
                        List.of("The same program with the same files gives the same document to the last byte."))));
    }

    private static String seeds(Studies studies) {
        List<String> seeds = new ArrayList<>();
        studies.chances()
                .ifPresent(chances -> seeds.add(chances.seed() + ", of " + chances.trips() + " trips of each option"));
        studies.matters()
                .ifPresent(
                        matters -> seeds.add(matters.seed() + ", of " + matters.samples() + " draws of all figures"));
        return seeds.isEmpty() ? "none; nothing here is drawn at random" : String.join("; ", seeds);
    }
}
