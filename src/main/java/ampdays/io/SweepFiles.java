package ampdays.io;

import ampdays.results.RunResult;
import ampdays.results.SweepRows;
import ampdays.results.SweepTable;
import ampdays.results.WholeFile;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/**
 * The table of a sweep in a folder of its own. Rows go to {@code sweep.partial.csv} as they come, which is a valid table up
 * to its last line end; {@code sweep.partial.json} says what is swept. When all rows are there, both are renamed to
 * {@code sweep.csv} and {@code sweep.json}.
 */
public final class SweepFiles implements AutoCloseable {
    /** The finished table. */
    public static final String TABLE = "sweep.csv";

    /** The table as long as rows are missing. */
    public static final String PARTIAL_TABLE = "sweep.partial.csv";

    static final String FIRST_METRIC = "days to empty (days)";

    static final String PRICE = "price of parts (";
    static final String MASS = "mass of parts (kg)";
    static final String PANELS = "panels on the roof (m²)";

    private static final String STUDY = "sweep.json";
    private static final String PARTIAL_STUDY = "sweep.partial.json";
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT;

    private final Path folder;
    private final ScenarioFile file;
    private final Grid grid;
    private final OptionColumns columns;
    private final String study;
    private final SweepRows kept;
    private OutputStream table = OutputStream.nullOutputStream();
    private long rowsBefore;

    /**
     * Nothing is written yet.
     *
     * @param file that the designs are changes of
     * @param uses names of loads and coolers that have columns
     * @param study what is swept, as {@link SweepJson} writes it
     */
    public SweepFiles(Path folder, ScenarioFile file, Grid grid, SortedSet<String> uses, String study) {
        this.folder = folder;
        this.file = file;
        this.grid = grid;
        this.columns = new OptionColumns(uses);
        this.study = study;
        this.kept = new SweepRows(varied(), Parts.currency(file.base()));
    }

    /**
     * One design.
     *
     * @param text the line of the table, with its line end
     * @param row what charts need of it
     */
    public record Line(String text, SweepRows.Row row) {}

    /** The line of a design; may be called by several threads. */
    public Line line(long row, List<Integer> places, Parts parts, Optional<RunResult> result, String problem) {
        List<String> values = values(places);
        List<String> first = new ArrayList<>(List.of(Long.toString(row + 1)));
        first.addAll(values);
        List<String> measures = new ArrayList<>(result.map(columns::cells)
                .orElseGet(() -> Collections.nCopies(columns.headings().size(), "")));
        measures.addAll(
                List.of(Numbers.full(parts.price()), Numbers.full(parts.massKg()), Numbers.full(parts.panelM2())));
        String text = FORMAT.format(first.toArray())
                + ','
                + String.join(",", measures)
                + ','
                + (problem.isEmpty() ? "" : FORMAT.format(problem))
                + '\n';
        return new Line(text, SweepRows.Row.of(values, result, parts.price(), parts.massKg(), parts.panelM2()));
    }

    /** The option that a design starts from, then the values of the other knobs. */
    private List<String> values(List<Integer> places) {
        List<String> values = new ArrayList<>(List.of(grid.option(places)));
        for (int i = 0; i < places.size(); i++) {
            Knob knob = grid.knobs().get(i);
            if (!knob.isOption()) {
                values.add(knob.cell(places.get(i)));
            }
        }
        return values;
    }

    private List<String> varied() {
        List<String> headings = new ArrayList<>(List.of("option"));
        for (Knob knob : grid.knobs()) {
            if (!knob.isOption()) {
                headings.add(knob.heading());
            }
        }
        return headings;
    }

    private String heading() {
        List<String> cells = new ArrayList<>(List.of("row"));
        cells.addAll(varied());
        cells.addAll(columns.headings());
        cells.addAll(List.of(PRICE + Parts.currency(file.base()) + ")", MASS, PANELS));
        cells.add("why impossible");
        return FORMAT.format(cells.toArray()) + '\n';
    }

    /** Deletes a sweep that is in the folder, finished or not. */
    public void delete() throws IOException {
        delete(Stream.of(TABLE, STUDY, PARTIAL_TABLE, PARTIAL_STUDY)
                .map(folder::resolve)
                .toList());
    }

    private static void delete(List<Path> files) throws IOException {
        for (Path file : files) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                throw WholeFile.failure(file, e);
            }
        }
    }

    /**
     * Opens the table for rows to come.
     *
     * @param resume whether to go on with what is there
     * @return how many rows are there already
     * @throws InputException when what is there belongs to another study, or would be lost
     */
    public long begin(boolean resume) throws IOException, InputException {
        Path partial = folder.resolve(PARTIAL_TABLE);
        Optional<String> begun = text(PARTIAL_STUDY);
        boolean rowsAreThere = begun.isPresent() && Files.exists(partial);
        boolean cutOffAtTheEnd = begun.isPresent() && !Files.exists(partial);
        boolean finished = Files.exists(folder.resolve(TABLE));
        Optional<String> finishedStudy = cutOffAtTheEnd ? begun : text(STUDY);
        if (finished && !finishedStudy.equals(Optional.of(study))) {
            long rows = rows(folder.resolve(TABLE));
            throw refused(
                    folder.resolve(TABLE),
                    "has " + rows + (rows == 1 ? " row" : " rows") + " of a sweep of other values, or of this scenario"
                            + " or weather before a change. Give another --out, or add --replace to write over it.");
        }
        if (!resume && rowsAreThere && rows(partial) > 0) {
            throw refused(
                    partial,
                    "has " + rows(partial) + " rows of an unfinished sweep. Add --resume to go on with it, or --replace"
                            + " to begin again.");
        }
        if (resume && begun.isPresent() && !begun.get().equals(study)) {
            throw refused(
                    partial,
                    "was begun with another scenario, weather or values to vary; its rows and new ones do not belong"
                            + " together. Add --replace instead of --resume to begin again.");
        }
        rowsBefore = resume && !rowsAreThere && finished ? grid.rows() : open(partial, resume && rowsAreThere);
        return rowsBefore;
    }

    private long open(Path partial, boolean goOn) throws IOException {
        try {
            if (goOn) {
                long rows = cutHalfLine(partial);
                table = appending(partial);
                return rows;
            }
            Files.createDirectories(folder);
            Files.deleteIfExists(folder.resolve(PARTIAL_STUDY));
            Files.writeString(partial, heading());
            table = appending(partial);
        } catch (IOException e) {
            throw WholeFile.failure(partial, e);
        }
        WholeFile.writeText(folder.resolve(PARTIAL_STUDY), study);
        return 0;
    }

    private static OutputStream appending(Path partial) throws IOException {
        return new BufferedOutputStream(Files.newOutputStream(partial, StandardOpenOption.APPEND), 1 << 13);
    }

    public void append(Line line) throws IOException {
        try {
            table.write(line.text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw WholeFile.failure(folder.resolve(PARTIAL_TABLE), e);
        }
        if (rowsBefore == 0) {
            kept.add(line.row());
        }
    }

    /** Writes a table at once, each file whole or absent. */
    void writeWhole(List<Line> lines) throws IOException {
        WholeFile.write(folder.resolve(TABLE), out -> {
            out.write(heading().getBytes(StandardCharsets.UTF_8));
            for (Line line : lines) {
                out.write(line.text().getBytes(StandardCharsets.UTF_8));
            }
        });
        WholeFile.writeText(folder.resolve(STUDY), study);
        lines.forEach(line -> kept.add(line.row()));
    }

    /**
     * Closes the table and gives the files their final names; all rows must be there. What was made from an earlier table
     * is taken away.
     *
     * @param isChart whether a file, by its name, is a chart that may have been made from it
     */
    public void finish(Predicate<String> isChart) throws IOException {
        close();
        List<Path> old;
        try (Stream<Path> files = Files.list(folder)) {
            old = files.filter(file -> {
                        String name = file.getFileName().toString();
                        return name.equals(FrontFile.NAME) || isChart.test(name);
                    })
                    .toList();
        }
        delete(old);
        Path partial = folder.resolve(PARTIAL_TABLE);
        if (Files.exists(partial)) {
            Files.move(partial, folder.resolve(TABLE), StandardCopyOption.REPLACE_EXISTING);
        }
        if (Files.exists(folder.resolve(PARTIAL_STUDY))) {
            Files.move(folder.resolve(PARTIAL_STUDY), folder.resolve(STUDY), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The finished table, as charts need it: kept row by row, or read where some rows were there before. */
    public SweepTable table() throws IOException, InputException {
        return rowsBefore == 0 ? kept.table() : SweepReader.read(folder.resolve(TABLE));
    }

    @Override
    public void close() throws IOException {
        try {
            table.close();
        } catch (IOException e) {
            throw WholeFile.failure(folder.resolve(PARTIAL_TABLE), e);
        }
    }

    private Optional<String> text(String name) throws IOException {
        Path file = folder.resolve(name);
        return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    }

    private static InputException refused(Path file, String message) {
        return new InputException(List.of(new InputProblem(file.toString(), 0, 0, message)));
    }

    /** Whole lines below the heading; no cell of the table has a line end in it. */
    private static long rows(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return Math.max(0, wholeLines(channel).lines() - 1);
        }
    }

    /** Takes away what stands behind the last line end. */
    private static long cutHalfLine(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            WholeLines whole = wholeLines(channel);
            channel.truncate(whole.bytes());
            return Math.max(0, whole.lines() - 1);
        }
    }

    private record WholeLines(long lines, long bytes) {}

    private static WholeLines wholeLines(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
        long read = 0;
        long lines = 0;
        long bytes = 0;
        while (channel.read(buffer.clear()) > 0) {
            buffer.flip();
            while (buffer.hasRemaining()) {
                read++;
                if (buffer.get() == '\n') {
                    lines++;
                    bytes = read;
                }
            }
        }
        return new WholeLines(lines, bytes);
    }
}
