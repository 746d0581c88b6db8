package ampdays.io;

import ampdays.log.MeteredLog;
import ampdays.log.Quality;
import ampdays.log.Trap;
import ampdays.results.LoggedDay;
import ampdays.results.Reconciliation;
import ampdays.results.WholeFile;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;

/**
 * What a log says of a promise, as a JSON document and as tables. Their form is told in docs/OUTPUT.md.
 *
 * @param option that was built
 * @param first day of the log that was the trip's first
 * @param missing what the log lacks to tell the use
 * @param found the gap; empty when the log does not tell the bank's power
 */
public record ReconcileFiles(
        String scenario,
        String title,
        String option,
        MeteredLog log,
        Quality quality,
        LocalDate first,
        List<LoggedDay> days,
        List<String> missing,
        Optional<Reconciliation> found) {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    public ReconcileFiles {
        days = List.copyOf(days);
        missing = List.copyOf(missing);
    }

    private static final String DAYS = "log-days.csv";
    private static final String GAP = "log-gap.csv";
    private static final String VALUES = "log-values.csv";
    private static final String DOCUMENT = "reconcile.json";

    /** Names of the files. */
    public static final List<String> NAMES = List.of(DAYS, GAP, VALUES, DOCUMENT);

    /** Writes the files into a folder. */
    public void write(Path folder) throws IOException {
        WholeFile.writeText(folder.resolve(DAYS), this::days);
        WholeFile.writeText(folder.resolve(GAP), this::gap);
        WholeFile.writeText(folder.resolve(VALUES), this::values);
        WholeFile.writeText(folder.resolve(DOCUMENT), this::json);
    }

    private void days(Writer writer) throws IOException {
        FORMAT.printRecord(
                writer,
                "day",
                "covered (%)",
                "sun promised (Wh)",
                "sun logged (Wh)",
                "alternators promised (Wh)",
                "alternators logged (Wh)",
                "shore promised (Wh)",
                "shore logged (Wh)",
                "use promised (Wh)",
                "use logged (Wh)",
                "lowest state of charge promised (%)",
                "lowest state of charge logged (%)");
        for (LoggedDay day : days) {
            LoggedDay.Flows promised = day.promised();
            LoggedDay.Flows logged = day.logged();
            FORMAT.printRecord(
                    writer,
                    first.plusDays(day.number()),
                    Numbers.full(100 * day.coverage()),
                    Numbers.full(promised.solarWh()),
                    Numbers.full(logged.solarWh()),
                    Numbers.full(promised.alternatorWh()),
                    Numbers.full(logged.alternatorWh()),
                    Numbers.full(promised.shoreWh()),
                    Numbers.full(logged.shoreWh()),
                    Numbers.full(promised.useWh()),
                    Numbers.full(logged.useWh()),
                    Numbers.full(100 * promised.lowestSoc()),
                    Numbers.full(100 * logged.lowestSoc()));
        }
    }

    private void gap(Writer writer) throws IOException {
        FORMAT.printRecord(writer, "cause", "takes (Wh)");
        if (found.isPresent()) {
            for (Reconciliation.Share share : found.get().shares()) {
                FORMAT.printRecord(writer, share.cause().label(), Numbers.full(share.wh()));
            }
            FORMAT.printRecord(writer, "not explained", Numbers.full(found.get().unexplainedWh()));
        }
    }

    private void values(Writer writer) throws IOException {
        FORMAT.printRecord(writer, "path", "what", "unit", "promised", "by the log", "half of the 95 % interval");
        for (Reconciliation.Fitted value : found.map(Reconciliation::fitted).orElse(List.of())) {
            FORMAT.printRecord(
                    writer,
                    value.path(),
                    value.label(),
                    unit(value),
                    Numbers.full(value.in().shown(value.promised())),
                    Numbers.full(value.in().shown(value.value())),
                    Numbers.full(value.in().shown(value.plusMinus())));
        }
    }

    private static String unit(Reconciliation.Fitted value) {
        return value.in().symbols().get(0);
    }

    /** Writes the document and a line end, and leaves the writer open. */
    public void json(Writer writer) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, scenario, title);
            json.writeStringField("option", option);
            log(json);
            checks(json);
            json.writeArrayFieldStart("days");
            for (LoggedDay day : days) {
                json.writeStartObject();
                json.writeStringField("day", first.plusDays(day.number()).toString());
                json.writeNumberField("covered", day.coverage());
                flows(json, "promised", day.promised());
                flows(json, "logged", day.logged());
                json.writeEndObject();
            }
            json.writeEndArray();
            SummaryJson.texts(json, "missing", missing);
            if (found.isPresent()) {
                found(json, found.get());
            } else {
                json.writeNullField("gap");
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void log(JsonGenerator json) throws IOException {
        MeteredLog.Facts facts = log.facts();
        json.writeObjectFieldStart("log");
        json.writeStringField("file", facts.file());
        json.writeNumberField("rows", facts.rows());
        json.writeStringField("from", Numbers.localStamp(log.epochSecond(0), facts.zone()));
        json.writeStringField("to", Numbers.localStamp(log.epochSecond(log.minutes()), facts.zone()));
        json.writeNumberField("usualSeconds", facts.usualSeconds());
        json.writeNumberField("gaps", facts.gaps());
        json.writeNumberField("gapSeconds", facts.gapSeconds());
        json.writeNumberField("longestGapSeconds", facts.longestGapSeconds());
        json.writeArrayFieldStart("covers");
        for (Quality.Coverage covered : quality.coverage()) {
            json.writeStartObject();
            json.writeStringField("what", covered.signal().label());
            json.writeNumberField("share", covered.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("doubtful");
        for (Trap trap : log.traps()) {
            json.writeStartObject();
            json.writeNumberField("line", trap.line());
            json.writeStringField("what", trap.text());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void checks(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("checks");
        for (Quality.Check check : quality.checks()) {
            json.writeStartObject();
            json.writeStringField("what", check.what());
            json.writeStringField("unit", check.unit());
            SummaryJson.number(json, "summed", check.summed());
            SummaryJson.number(json, "counted", check.counted());
            json.writeBooleanField("agrees", check.agrees());
            json.writeEndObject();
        }
        json.writeEndArray();
        SummaryJson.number(json, "bankAhByCharge", quality.capacityAh());
        json.writeStringField("signDoubt", quality.signDoubt().orElse(""));
    }

    private static void flows(JsonGenerator json, String name, LoggedDay.Flows flows) throws IOException {
        json.writeObjectFieldStart(name);
        SummaryJson.number(json, "solarWh", flows.solarWh());
        SummaryJson.number(json, "alternatorWh", flows.alternatorWh());
        SummaryJson.number(json, "shoreWh", flows.shoreWh());
        SummaryJson.number(json, "useWh", flows.useWh());
        SummaryJson.number(json, "lowestSoc", flows.lowestSoc());
        json.writeEndObject();
    }

    private static void found(JsonGenerator json, Reconciliation found) throws IOException {
        json.writeObjectFieldStart("gap");
        json.writeNumberField("days", found.days());
        SummaryJson.number(json, "promisedLeftWh", found.promisedLeftWh());
        SummaryJson.number(json, "explainedLeftWh", found.explainedLeftWh());
        SummaryJson.number(json, "loggedLeftWh", found.loggedLeftWh());
        SummaryJson.number(json, "gapWh", found.gapWh());
        SummaryJson.number(json, "notExplainedWh", found.unexplainedWh());
        json.writeArrayFieldStart("causes");
        for (Reconciliation.Share share : found.shares()) {
            json.writeStartObject();
            json.writeStringField("cause", share.cause().label());
            SummaryJson.number(json, "wh", share.wh());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeArrayFieldStart("values");
        for (Reconciliation.Fitted value : found.fitted()) {
            json.writeStartObject();
            json.writeStringField("path", value.path());
            json.writeStringField("what", value.label());
            json.writeStringField("unit", unit(value));
            SummaryJson.number(json, "promised", value.in().shown(value.promised()));
            SummaryJson.number(json, "value", value.in().shown(value.value()));
            SummaryJson.number(json, "plusMinus", value.in().shown(value.plusMinus()));
            json.writeEndObject();
        }
        json.writeEndArray();
        SummaryJson.texts(json, "untold", found.untold());
    }
}
