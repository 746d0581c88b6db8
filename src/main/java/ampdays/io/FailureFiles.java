package ampdays.io;

import ampdays.results.FailureOutcome;
import ampdays.results.FailureOutcome.Addition;
import ampdays.results.FailureOutcome.Impossible;
import ampdays.results.FailureOutcome.Sign;
import ampdays.results.FailureOutcome.Times;
import ampdays.results.FailureOutcome.Use;
import ampdays.results.FailureReport;
import ampdays.results.FailureReport.NotApplying;
import ampdays.results.HeatAfterLoss;
import ampdays.results.WholeFile;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/** What happens when something fails, as a table and as a JSON document. Their form is told in docs/OUTPUT.md. */
public final class FailureFiles {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private static final List<String> HEADINGS = List.of(
            "failure",
            "what",
            "applies",
            "begins",
            "ends",
            "left of the trip (h)",
            "to reserve (h)",
            "to reserve without it (h)",
            "to cut-out (h)",
            "to cut-out without it (h)",
            "to cabin above 32 °C (h)",
            "to cabin above 32 °C without it (h)",
            "to cabin above 35 °C (h)",
            "to cabin above 35 °C without it (h)",
            "to cabin above 40 °C (h)",
            "to cabin above 40 °C without it (h)",
            "hot with people (h)",
            "hot with people without it (h)",
            "comfortable nights",
            "comfortable nights without it",
            "goes on",
            "goes short",
            "first sign",
            "first sign after (h)",
            "first alarm",
            "first alarm after (h)",
            "survived",
            "worse in",
            "made good by",
            "price",
            "currency",
            "advice",
            "cannot be with it");

    private FailureFiles() {}

    /** Writes {@code failures.csv} and {@code failures.json} into a folder. */
    public static void write(Path folder, FailureReport report) throws IOException {
        WholeFile.writeText(folder.resolve("failures.csv"), writer -> table(writer, report));
        WholeFile.writeText(folder.resolve("failures.json"), writer -> json(writer, report));
    }

    private static void table(Writer writer, FailureReport report) throws IOException {
        FORMAT.printRecord(writer, HEADINGS.toArray());
        for (FailureOutcome outcome : report.outcomes()) {
            FORMAT.printRecord(writer, row(report, outcome).toArray());
        }
        for (NotApplying not : report.notApplying()) {
            List<String> row = new ArrayList<>(List.of(not.name(), "", "no: " + not.why()));
            row.addAll(Collections.nCopies(HEADINGS.size() - row.size(), ""));
            FORMAT.printRecord(writer, row.toArray());
        }
    }

    private static List<String> row(FailureReport report, FailureOutcome outcome) {
        Times times = outcome.times();
        Times otherwise = outcome.otherwise();
        Optional<Addition> cheapest = outcome.additions().stream().findFirst();
        return List.of(
                outcome.name(),
                outcome.what(),
                "yes",
                Numbers.localStamp(outcome.fromEpochSecond(), report.zone()),
                Numbers.localStamp(outcome.untilEpochSecond(), report.zone()),
                Numbers.full(outcome.leftH()),
                Numbers.full(times.reserveH()),
                Numbers.full(otherwise.reserveH()),
                Numbers.full(times.cutOutH()),
                Numbers.full(otherwise.cutOutH()),
                Numbers.full(times.over32H()),
                Numbers.full(otherwise.over32H()),
                Numbers.full(times.over35H()),
                Numbers.full(otherwise.over35H()),
                Numbers.full(times.over40H()),
                Numbers.full(otherwise.over40H()),
                Numbers.full(times.hotH()),
                Numbers.full(otherwise.hotH()),
                Integer.toString(times.comfortableNights()),
                Integer.toString(otherwise.comfortableNights()),
                names(outcome, Use::goesOn),
                names(outcome, Use::goesShort),
                outcome.sign().map(Sign::words).orElse(""),
                Numbers.full(outcome.sign().map(Sign::afterH).orElse(Double.NaN)),
                outcome.alarm().map(Sign::words).orElse(""),
                Numbers.full(outcome.alarm().map(Sign::afterH).orElse(Double.NaN)),
                outcome.survived() ? "yes" : "no",
                String.join("; ", outcome.worse()),
                cheapest.map(Addition::change).orElse(""),
                cheapest.map(addition -> Numbers.full(addition.price())).orElse(""),
                cheapest.map(Addition::currency).orElse(""),
                outcome.advice(),
                outcome.impossible().stream()
                        .map(cannotBe -> cannotBe.change() + ": " + cannotBe.why())
                        .collect(Collectors.joining("; ")));
    }

    private static String names(FailureOutcome outcome, Predicate<Use> which) {
        return outcome.uses().stream().filter(which).map(Use::name).collect(Collectors.joining("; "));
    }

    /** Writes the document and a line end, and leaves the writer open. */
    public static void json(Writer writer, FailureReport report) throws IOException {
        try (JsonGenerator json = SummaryJson.generator(writer)) {
            SummaryJson.begin(json, report.scenario(), report.title());
            json.writeStringField("option", report.option());
            json.writeNumberField("reserve", report.reserveShare());
            json.writeNumberField("tripDays", report.tripDays());
            json.writeArrayFieldStart("failures");
            for (FailureOutcome outcome : report.outcomes()) {
                outcome(json, report, outcome);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("notApplying");
            for (NotApplying not : report.notApplying()) {
                json.writeStartObject();
                json.writeStringField("name", not.name());
                json.writeStringField("why", not.why());
                json.writeEndObject();
            }
            json.writeEndArray();
            heat(json, report.heat());
            json.writeStringField("caution", HeatAfterLoss.CAUTION);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void outcome(JsonGenerator json, FailureReport report, FailureOutcome outcome) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", outcome.name());
        json.writeStringField("what", outcome.what());
        json.writeStringField("begins", Numbers.localStamp(outcome.fromEpochSecond(), report.zone()));
        json.writeStringField("ends", Numbers.localStamp(outcome.untilEpochSecond(), report.zone()));
        SummaryJson.number(json, "leftHours", outcome.leftH());
        times(json, "with", outcome.times());
        times(json, "without", outcome.otherwise());
        json.writeArrayFieldStart("uses");
        for (Use use : outcome.uses()) {
            json.writeStartObject();
            json.writeStringField("name", use.name());
            SummaryJson.number(json, "servedWh", use.servedWh());
            SummaryJson.number(json, "servedWhWithout", use.otherwiseWh());
            SummaryJson.number(json, "servedShare", use.servedShare());
            SummaryJson.number(json, "servedShareWithout", use.otherwiseShare());
            json.writeBooleanField("goesOn", use.goesOn());
            json.writeBooleanField("goesShort", use.goesShort());
            json.writeEndObject();
        }
        json.writeEndArray();
        sign(json, "firstSign", outcome.sign());
        sign(json, "firstAlarm", outcome.alarm());
        json.writeBooleanField("survived", outcome.survived());
        SummaryJson.texts(json, "worseIn", outcome.worse());
        json.writeArrayFieldStart("madeGoodBy");
        for (Addition addition : outcome.additions()) {
            json.writeStartObject();
            json.writeStringField("change", addition.change());
            SummaryJson.number(json, "price", addition.price());
            json.writeStringField("currency", addition.currency());
            json.writeStringField("priceFrom", addition.priceFrom());
            json.writeBooleanField("perTrip", addition.perTrip());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("impossibleWithIt");
        for (Impossible impossible : outcome.impossible()) {
            json.writeStartObject();
            json.writeStringField("change", impossible.change());
            json.writeStringField("why", impossible.why());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("kindsOfChangeTried", outcome.tried());
        json.writeStringField("advice", outcome.advice());
        json.writeEndObject();
    }

    private static void times(JsonGenerator json, String name, Times times) throws IOException {
        json.writeObjectFieldStart(name);
        SummaryJson.number(json, "hoursToReserve", times.reserveH());
        SummaryJson.number(json, "hoursToCutOut", times.cutOutH());
        SummaryJson.number(json, "hoursToCabinAbove32C", times.over32H());
        SummaryJson.number(json, "hoursToCabinAbove35C", times.over35H());
        SummaryJson.number(json, "hoursToCabinAbove40C", times.over40H());
        SummaryJson.number(json, "hotHoursWithPeople", times.hotH());
        json.writeNumberField("comfortableNights", times.comfortableNights());
        json.writeEndObject();
    }

    private static void sign(JsonGenerator json, String name, Optional<Sign> sign) throws IOException {
        if (sign.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        json.writeStringField("words", sign.get().words());
        SummaryJson.number(json, "afterHours", sign.get().afterH());
        json.writeEndObject();
    }

    private static void heat(JsonGenerator json, HeatAfterLoss heat) throws IOException {
        json.writeObjectFieldStart("heatAfterLossOfCooling");
        json.writeStringField("from", Numbers.localStamp(heat.epochSecond(), heat.zone()));
        SummaryJson.number(json, "cabinC", heat.keptC());
        SummaryJson.number(json, "outsideC", heat.outsideC());
        SummaryJson.number(json, "minutesTo32C", heat.minutesTo32C());
        SummaryJson.number(json, "minutesTo35C", heat.minutesTo35C());
        SummaryJson.number(json, "minutesTo40C", heat.minutesTo40C());
        json.writeArrayFieldStart("cabinCByMinute");
        for (double cabinC : heat.cabinC()) {
            json.writeNumber(Math.round(100 * cabinC) / 100.0);
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
