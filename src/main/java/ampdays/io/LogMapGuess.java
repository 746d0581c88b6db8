package ampdays.io;

import ampdays.log.CounterKind;
import ampdays.log.Signal;
import ampdays.log.TimeForm;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A first map of a log, guessed from names and values, with how sure each line is. */
public final class LogMapGuess {
    private static final String SHORT_NUMBER = "\\d{1,4}";

    private static final int ROWS = 2000;
    private static final int MOST_DEVICES = 20;

    private final LogText text;
    private final boolean header;
    private final List<String> names;
    private final List<List<String>> rows;
    private int date = -1;
    private int time = -1;
    private int device = -1;
    private TimeForm form = TimeForm.YEAR_FIRST;
    private String formDoubt = "";

    private record Found(Signal signal, String line, String column) {}

    private LogMapGuess(LogText text) {
        this.text = text;
        List<List<String>> all = text.beginning().stream()
                .filter(line -> !line.isBlank())
                .limit(ROWS)
                .map(text::cells)
                .toList();
        int widest = all.stream().mapToInt(List::size).max().orElse(0);
        int first = 0;
        while (first < all.size() - 1 && all.get(first).size() < widest) {
            first++;
        }
        List<String> top = all.get(first);
        header = top.stream().noneMatch(this::isNumber);
        List<String> numbers = new ArrayList<>();
        for (int i = 1; i <= top.size(); i++) {
            numbers.add(Integer.toString(i));
        }
        names = header ? top : numbers;
        rows = all.subList(header ? first + 1 : first, all.size()).stream()
                .filter(row -> row.size() == names.size())
                .toList();
    }

    private boolean isNumber(String cell) {
        return Double.isFinite(LogNumber.read(cell, text.commaIsDecimal(), ""));
    }

    /**
     * The text of a map for a log.
     *
     * @throws InputException when the file is no log
     */
    public static String of(Path log) throws IOException, InputException {
        LogMapGuess guess = new LogMapGuess(LogText.of(log));
        if (guess.rows.isEmpty()) {
            throw LogText.problem(guess.text.file(), 1, "after the names of the columns comes no row.");
        }
        guess.findTime();
        guess.findDevice();
        return guess.text();
    }

    private List<String> values(int column, Predicate<List<String>> of) {
        return rows.stream().filter(of).map(row -> row.get(column)).toList();
    }

    private List<String> values(int column) {
        return values(column, row -> true);
    }

    private void findTime() throws InputException {
        for (int column = 0; column < names.size() && time < 0; column++) {
            List<String> values = values(column);
            if (values.stream().allMatch(v -> v.matches("\\d{10}([.,]\\d+)?|\\d{13}"))) {
                time = column;
                form = values.get(0).length() >= 13 && values.get(0).matches("\\d{13}")
                        ? TimeForm.EPOCH_MILLISECONDS
                        : TimeForm.EPOCH_SECONDS;
            } else if (share(values, "\\D*\\d{1,4}\\D\\d{1,2}\\D\\d{1,4}\\D+\\d{1,2}:\\d{2}.*") > 0.9) {
                time = column;
                orderOf(values);
            }
        }
        for (int column = 0; column < names.size() && time < 0; column++) {
            if (share(values(column), "\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4}") > 0.9) {
                date = column;
                orderOf(values(column));
            }
        }
        for (int column = 0; column < names.size() && time < 0 && date >= 0; column++) {
            if (share(values(column), "\\d{1,2}:\\d{2}.*") > 0.9) {
                time = column;
            }
        }
        if (time < 0) {
            throw LogText.problem(
                    text.file(),
                    1,
                    "no column looks like a time. A log needs date and time in each row, such as 2026-07-08 14:05:00.");
        }
    }

    private static double share(List<String> values, String pattern) {
        return values.stream().filter(v -> v.matches(pattern)).count() / (double) values.size();
    }

    private void orderOf(List<String> values) {
        List<int[]> parts = values.stream()
                .map(v -> v.replaceFirst("^\\D+", "").split("\\D+", -1))
                .filter(p -> p.length >= 3 && p[0].matches(SHORT_NUMBER) && p[1].matches(SHORT_NUMBER))
                .map(p -> new int[] {Integer.parseInt(p[0]), Integer.parseInt(p[1])})
                .toList();
        if (parts.stream().anyMatch(p -> p[0] > 31)) {
            form = TimeForm.YEAR_FIRST;
        } else if (parts.stream().anyMatch(p -> p[0] > 12)) {
            form = TimeForm.DAY_FIRST;
        } else if (parts.stream().anyMatch(p -> p[1] > 12)) {
            form = TimeForm.MONTH_FIRST;
        } else {
            boolean twelveHours = values.get(0).toUpperCase(Locale.ROOT).endsWith("M");
            form = twelveHours ? TimeForm.MONTH_FIRST : TimeForm.DAY_FIRST;
            boolean points = values.get(0).matches("\\d+\\.\\d+\\..*");
            formDoubt = (points ? "confidence medium" : "confidence low")
                    + ": day and month could be the other way round; check it";
        }
    }

    /** A column of a few words that stand in turn; numbers only if it is named so. */
    private void findDevice() {
        for (int column = 0; column < names.size() && device < 0; column++) {
            if (column == time || column == date) {
                continue;
            }
            List<String> values = values(column);
            Set<String> different = Set.copyOf(values);
            boolean named = names.get(column)
                    .toLowerCase(Locale.ROOT)
                    .matches(".*(device|port|sensor|channel|source|instance|address|unit id|name).*");
            boolean words = values.stream().noneMatch(this::isNumber);
            boolean turns = different.size() >= 2 && different.size() <= MOST_DEVICES;
            if (named && turns && (words || isWhole(values)) && 3 * different.size() <= values.size()) {
                device = column;
            }
        }
    }

    private static boolean isWhole(List<String> values) {
        return values.stream().allMatch(v -> v.matches("\\d{1,4}"));
    }

    private String text() {
        StringBuilder map = new StringBuilder();
        map.append("# A guess: what the columns of ")
                .append(text.file())
                .append(" mean. Check each line, above all those of low confidence.\n");
        map.append("time:\n  column: ").append(quoted(names.get(time))).append('\n');
        if (date >= 0) {
            map.append("  date: ").append(quoted(names.get(date))).append('\n');
        }
        map.append("  form: ").append(form.label());
        map.append(formDoubt.isEmpty() ? "\n" : "    # " + formDoubt + "\n");
        map.append(
                "  # zone: UTC    # nothing in the file tells it; without this line the zone of the scenario's place\n");
        map.append("  # stamp: end   # if a row tells of the time before its stamp\n");
        if (!header) {
            map.append("header: no    # the columns are numbered from 1\n");
        }
        if (device >= 0) {
            map.append("device: ").append(quoted(names.get(device))).append('\n');
        }
        map.append("columns:\n");
        columns().forEach(line -> map.append("  ").append(line).append('\n'));
        return map.toString();
    }

    private List<String> columns() {
        Map<Signal, Found> found = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        Set<String> devices = device < 0 ? Set.of("") : new LinkedHashSet<>(values(device));
        for (String of : devices) {
            Predicate<List<String>> rowsOf =
                    row -> device < 0 || row.get(device).equals(of);
            for (int column = 0; column < names.size(); column++) {
                if (column == time || column == date || column == device) {
                    continue;
                }
                column(column, of, rowsOf, found, notes);
            }
        }
        List<String> lines = found.values().stream().map(Found::line).collect(Collectors.toCollection(ArrayList::new));
        lines.addAll(notes);
        return lines;
    }

    private void column(
            int column, String of, Predicate<List<String>> rowsOf, Map<Signal, Found> found, List<String> notes) {
        String name = names.get(column);
        String label = of.isEmpty() ? quoted(name) : quoted(name) + " of " + quoted(of);
        double[] numbers = values(column, rowsOf).stream()
                .mapToDouble(v -> LogNumber.read(v, text.commaIsDecimal(), ""))
                .filter(Double::isFinite)
                .toArray();
        if (numbers.length == 0) {
            notes.add("# column " + label + ": no numbers");
            return;
        }
        Optional<ColumnWords.Meaning> meaning = ColumnWords.meaning(of + " " + name, numbers);
        if (meaning.isEmpty()) {
            notes.add("# column " + label + ": not understood");
            return;
        }
        Signal signal = meaning.get().signal();
        if (found.containsKey(signal)) {
            notes.add("# column " + label + ": looks like " + signal.label() + " as well as "
                    + found.get(signal).column());
            return;
        }
        StringBuilder line = new StringBuilder(signal.label() + ": {column: " + quoted(name));
        if (!of.isEmpty()) {
            line.append(", device: ").append(quoted(of));
        }
        line.append(", unit: ").append(quoted(meaning.get().unit()));
        String doubt = "";
        if (signal.isSigned()) {
            Optional<Boolean> plus = chargeIsPlus(column, rowsOf);
            line.append(", plus: ").append(plus.orElse(true) ? "charge" : "discharge");
            doubt = plus.isPresent() ? "" : "; which way is plus cannot be told from the beginning of the log";
        }
        if (signal.isCounter()) {
            CounterKind kind = counter(numbers);
            line.append(", counter: ").append(kind.label());
            doubt = kind == CounterKind.LIFETIME ? "; it never falls here: if it starts anew at midnight, daily" : "";
        }
        line.append("}    # confidence ")
                .append(doubt.isEmpty() ? meaning.get().confidence() : "low")
                .append(": ")
                .append(meaning.get().reason())
                .append(doubt);
        found.put(signal, new Found(signal, line.toString(), label));
    }

    private static CounterKind counter(double... numbers) {
        int falls = 0;
        for (int i = 1; i < numbers.length; i++) {
            falls += numbers[i] < numbers[i - 1] ? 1 : 0;
        }
        return falls == 0
                ? CounterKind.LIFETIME
                : falls * 10 > numbers.length ? CounterKind.PER_ROW : CounterKind.DAILY;
    }

    /** A battery's voltage rises when more current flows in. */
    private Optional<Boolean> chargeIsPlus(int column, Predicate<List<String>> rowsOf) {
        int voltage = -1;
        for (int other = 0; other < names.size(); other++) {
            double[] numbers = values(other, rowsOf).stream()
                    .mapToDouble(v -> LogNumber.read(v, text.commaIsDecimal(), ""))
                    .filter(Double::isFinite)
                    .toArray();
            boolean isVoltage = other != time
                    && numbers.length > 0
                    && ColumnWords.meaning(names.get(other), numbers)
                            .filter(m -> m.signal() == Signal.BANK_VOLTAGE)
                            .isPresent();
            voltage = isVoltage && voltage < 0 ? other : voltage;
        }
        if (voltage < 0) {
            return Optional.empty();
        }
        double sum = 0;
        double size = 0;
        double beforeA = Double.NaN;
        double beforeV = Double.NaN;
        for (List<String> row : rows) {
            double amps = LogNumber.read(row.get(column), text.commaIsDecimal(), "");
            double volts = LogNumber.read(row.get(voltage), text.commaIsDecimal(), "");
            double product = (amps - beforeA) * (volts - beforeV);
            if (rowsOf.test(row) && Double.isFinite(product)) {
                sum += product;
                size += Math.abs(product);
            }
            beforeA = amps;
            beforeV = volts;
        }
        return Math.abs(sum) > 0.5 * size && size > 0 ? Optional.of(sum > 0) : Optional.empty();
    }

    private static String quoted(String word) {
        return '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
