package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.log.CounterKind;
import ampdays.log.LogMap;
import ampdays.log.Signal;
import ampdays.log.TimeForm;
import ampdays.units.Dimension;
import ampdays.units.Nearest;
import ampdays.units.Quantity;
import ampdays.units.QuantityException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads what the columns of a log mean, as {@code docs/LOGS.md} describes it. */
public final class LogMapReader {
    private static final List<String> KEYS = List.of("time", "device", "header", "columns");
    private static final List<String> TIME_KEYS = List.of("column", "date", "form", "zone", "stamp");
    private static final List<String> COLUMN_KEYS = List.of("column", "device", "unit", "plus", "counter");

    private final String file;
    private final ZoneId usualZone;
    private final List<InputProblem> problems = new ArrayList<>();
    private final ScenarioWalk walk;

    private LogMapReader(String file, ZoneId usualZone) {
        this.file = file;
        this.usualZone = usualZone;
        this.walk = new ScenarioWalk(file, problems);
    }

    /**
     * Reads a map.
     *
     * @param usualZone zone of times where the map names none
     * @throws IOException when the file cannot be read
     * @throws InputException when it is wrong, with all that is wrong
     */
    public static LogMap read(Path path, ZoneId usualZone) throws IOException, InputException {
        String name = String.valueOf(path.getFileName());
        try {
            return new LogMapReader(name, usualZone).map(Files.readString(path, StandardCharsets.UTF_8));
        } catch (CharacterCodingException e) {
            throw new InputException(
                    List.of(new InputProblem(name, 0, 0, "The file is not UTF-8 text. Save it as UTF-8.")));
        }
    }

    private LogMap map(String text) throws InputException {
        Optional<MappingNode> root = YamlText.map(file, text, problems);
        refuseIfWrong();
        Map<String, Entry> entries = entries(root.orElseThrow(), "", KEYS);
        Entry time = entries.get("time");
        if (time == null) {
            problems.add(new InputProblem(
                    file, 1, 1, "time is missing. Write: time: {column: Time, form: year month day, zone: UTC}."));
        }
        LogMap.Time stamps = time == null ? null : time(time);
        String device = word(entries, "device", "");
        boolean header = choice(entries, "header", List.of("yes", "no"), "yes").equals("yes");
        List<LogMap.Column> columns = columns(entries.get("columns"), !device.isEmpty());
        refuseIfWrong();
        return new LogMap(stamps, device, header, columns);
    }

    private LogMap.Time time(Entry entry) {
        Optional<MappingNode> node = mapping(entry, "time", "{column: Time, form: year month day, zone: UTC}");
        if (node.isEmpty()) {
            return null;
        }
        Map<String, Entry> entries = entries(node.get(), "time.", TIME_KEYS);
        String column = needed(entries, "column", entry, "time", "Write the name of the column with the time.");
        String form = choice(entries, "form", TimeForm.labels(), "");
        if (!entries.containsKey("form")) {
            walk.problem(entry.key(), "time has no form. Write one of: " + String.join(", ", TimeForm.labels()) + ".");
        }
        boolean end = choice(entries, "stamp", List.of("start", "end"), "start").equals("end");
        ZoneId zone = usualZone;
        if (entries.containsKey("zone")) {
            String written = word(entries, "zone", "");
            try {
                zone = ZoneId.of(written);
            } catch (DateTimeException e) {
                walk.problem(
                        entries.get("zone").value(),
                        "time.zone \"" + written
                                + "\" is no time zone. Write one like America/Phoenix, UTC or +02:00.");
            }
        }
        return new LogMap.Time(
                column, word(entries, "date", ""), TimeForm.of(form).orElse(null), zone, end);
    }

    private List<LogMap.Column> columns(Entry entry, boolean devices) {
        List<LogMap.Column> columns = new ArrayList<>();
        if (entry == null) {
            problems.add(new InputProblem(
                    file, 1, 1, "columns is missing. Write lines under it like: bank voltage: {column: V, unit: V}."));
            return columns;
        }
        Optional<MappingNode> node = mapping(entry, "columns", "lines like: bank voltage: {column: V, unit: V}");
        node.ifPresent(all -> walk.entries(all).forEach((name, one) -> column(name, one, devices, columns)));
        if (node.isPresent() && columns.isEmpty() && problems.isEmpty()) {
            walk.problem(entry.key(), "columns names no column. Write lines like: bank voltage: {column: V, unit: V}.");
        }
        return columns;
    }

    private void column(String name, Entry entry, boolean devices, List<LogMap.Column> columns) {
        Optional<Signal> signal = Signal.of(name);
        if (signal.isEmpty()) {
            walk.problem(
                    entry.key(),
                    "\"" + name + "\" is nothing that a log is read for."
                            + Nearest.of(name, Signal.labels())
                                    .map(w -> " Did you mean \"" + w + "\"?")
                                    .orElse(" Known: " + String.join(", ", Signal.labels()) + "."));
            return;
        }
        Optional<MappingNode> node = mapping(entry, name, "{column: NAME, unit: UNIT}");
        if (node.isEmpty()) {
            return;
        }
        Map<String, Entry> entries = entries(node.get(), name + ".", COLUMN_KEYS);
        String column = needed(entries, "column", entry, name, "Write the name of its column in the log.");
        String device = word(entries, "device", "");
        if (!device.isEmpty() != devices) {
            walk.problem(
                    entry.key(),
                    devices
                            ? name + " has no device, but the map names a device column. Write device: with what stands"
                                    + " in that column."
                            : name + " has a device, but the map names no device column. Write at the top: device:"
                                    + " NAME OF THE COLUMN.");
        }
        double[] line = unit(name, signal.get().dimension(), entries.get("unit"), entry);
        String plus = choice(entries, "plus", List.of("charge", "discharge"), "");
        if (signal.get().isSigned() != entries.containsKey("plus")) {
            walk.problem(
                    entry.key(),
                    signal.get().isSigned()
                            ? name + " does not say which way is plus. Write plus: charge, or plus: discharge."
                            : name + " has one direction only. Take plus away.");
        }
        String counter = choice(entries, "counter", CounterKind.labels(), "");
        if (signal.get().isCounter() != entries.containsKey("counter")) {
            walk.problem(
                    entry.key(),
                    signal.get().isCounter()
                            ? name + " does not say how it counts. Write counter: lifetime, daily or per row."
                            : name + " is no counter. Take counter away.");
        }
        columns.add(new LogMap.Column(
                signal.get(),
                column,
                device,
                line[0],
                line[1],
                word(entries, "unit", ""),
                plus.equals("charge"),
                CounterKind.of(counter).orElse(null)));
    }

    /** Factor and offset of a unit: base = (number + offset) · factor. */
    private double[] unit(String name, Dimension dimension, Entry entry, Entry column) {
        List<String> known = dimension.symbols();
        if (entry == null) {
            walk.problem(column.key(), name + " has no unit. Write unit: " + String.join(" or ", known) + ".");
            return new double[2];
        }
        String unit = text(entry.value());
        if (dimension == Dimension.SHARE && unit.equals("1")) {
            return new double[] {1, 0};
        }
        try {
            double one = Quantity.parse("1 " + unit, dimension).value();
            double zero = Quantity.parse("0 " + unit, dimension).value();
            double offset = zero == 0 ? 0 : zero / (one - zero);
            return new double[] {one - zero, offset};
        } catch (QuantityException e) {
            walk.problem(
                    entry.value(),
                    name + ".unit \"" + unit + "\" is no unit of it. Write " + String.join(" or ", known) + ".");
            return new double[2];
        }
    }

    private Optional<MappingNode> mapping(Entry entry, String name, String example) {
        if (entry.value() instanceof MappingNode node) {
            return Optional.of(node);
        }
        walk.problem(entry.value(), name + " has no keys below it. Write " + example + ".");
        return Optional.empty();
    }

    private Map<String, Entry> entries(MappingNode node, String above, List<String> known) {
        Map<String, Entry> entries = walk.entries(node);
        Set<String> unknown = new HashSet<>(entries.keySet());
        known.forEach(unknown::remove);
        for (String key : entries.keySet()) {
            if (unknown.contains(key)) {
                walk.problem(
                        entries.get(key).key(),
                        above + key + " is not known."
                                + Nearest.of(key, known)
                                        .map(w -> " Did you mean " + w + "?")
                                        .orElse(" Known here: " + String.join(", ", known) + "."));
            }
        }
        return entries;
    }

    private String needed(Map<String, Entry> entries, String key, Entry above, String name, String repair) {
        String word = word(entries, key, "");
        if (word.isEmpty()) {
            walk.problem(above.key(), name + " has no " + key + ". " + repair);
        }
        return word;
    }

    private String choice(Map<String, Entry> entries, String key, List<String> known, String usual) {
        String word = word(entries, key, usual);
        if (entries.containsKey(key) && !known.contains(word)) {
            walk.problem(
                    entries.get(key).value(),
                    key + " is \"" + word + "\". Write one of: " + String.join(", ", known) + ".");
        }
        return word;
    }

    private String word(Map<String, Entry> entries, String key, String usual) {
        Function<Entry, String> read = entry -> text(entry.value());
        return Optional.ofNullable(entries.get(key)).map(read).orElse(usual);
    }

    private String text(Node node) {
        if (node instanceof ScalarNode scalar) {
            return YamlText.text(scalar).strip();
        }
        walk.problem(node, "a single word or name belongs here.");
        return "";
    }

    private void refuseIfWrong() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }
}
