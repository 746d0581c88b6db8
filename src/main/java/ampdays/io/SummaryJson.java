package ampdays.io;

import ampdays.results.Account;
import ampdays.results.Ageing;
import ampdays.results.Causes;
import ampdays.results.Energy;
import ampdays.results.Finding;
import ampdays.results.Lifted;
import ampdays.results.Limit;
import ampdays.results.Reasons;
import ampdays.results.RunResult;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** All results of a scenario as one JSON document. Its form is told in docs/OUTPUT.md. */
public final class SummaryJson {
    /** Rises when a key changes its meaning or goes away; new keys do not raise it. */
    public static final int SCHEMA_VERSION = 1;

    private SummaryJson() {}

    /**
     * Writes the document and a line end, and leaves the writer open.
     *
     * @param reasons of the options, by name; empty where nobody asked
     */
    public static void write(
            Writer writer, String scenario, String title, List<RunResult> options, Map<String, Reasons> reasons)
            throws IOException {
        try (JsonGenerator json = generator(writer)) {
            begin(json, scenario, title);
            json.writeArrayFieldStart("options");
            for (RunResult option : options) {
                option(json, option, Optional.ofNullable(reasons.get(option.option())));
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** A generator with an indent of two blanks that leaves the writer open. */
    static JsonGenerator generator(Writer writer) throws IOException {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return new JsonFactory()
                .createGenerator(writer)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                .setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
    }

    private static void option(JsonGenerator json, RunResult run, Optional<Reasons> reasons) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", run.option());
        number(json, "daysToEmpty", run.daysToEmpty());
        json.writeBooleanField("holds", run.holds());
        number(json, "trendPerDay", run.trendPerDay());
        number(json, "tripDays", run.tripDays());
        number(json, "reserve", run.reserveShare());
        number(json, "lowestSoc", run.lowestSoc());
        json.writeStringField("lowestSocAt", Numbers.localStamp(run.lowestSocEpochSecond(), run.zone()));
        json.writeNumberField("comfortableNights", run.comfortableNights());
        json.writeNumberField("nights", run.nights());
        energy(json, run.energy());
        losses(json, run.energy());
        byName(json, "servedWh", run.servedWhByUse());
        byName(json, "unservedWh", run.unservedWhByUse());
        byLimit(json, "limitHours", run.limitHours());
        byLimit(json, "curtailedWh", run.curtailedWhByCause());
        number(json, "fuelLitres", run.fuelLitres());
        number(json, "engineChargingHours", run.engineChargingHours());
        number(json, "alternatorPeakCaseC", run.alternatorPeakCaseC());
        number(json, "cycles", run.cycles());
        ageing(json, run.ageing());
        number(json, "ledgerResidualWh", run.ledgerResidualWh());
        json.writeArrayFieldStart("findings");
        for (Finding finding : run.findings()) {
            finding(json, finding, run.zone());
        }
        json.writeEndArray();
        if (reasons.isPresent()) {
            lifted(json, reasons.get().lifted());
            if (reasons.get().causes().isPresent()) {
                causes(json, reasons.get().causes().get());
            }
        }
        json.writeEndObject();
    }

    /** What a better part would bring. */
    static void lifted(JsonGenerator json, Lifted lifted) throws IOException {
        json.writeObjectFieldStart("betterPart");
        json.writeStringField("ruling", lifted.ruling().map(Limit::label).orElse(null));
        number(json, "rulingHours", lifted.rulingHours());
        json.writeStringField("next", lifted.next().map(Limit::label).orElse(null));
        number(json, "nextHours", lifted.nextHours());
        number(json, "daysToEmpty", lifted.then().daysToEmpty());
        json.writeBooleanField("holds", lifted.then().holds());
        number(json, "lowestSoc", lifted.then().lowestSoc());
        json.writeNumberField("comfortableNights", lifted.then().comfortableNights());
        json.writeStringField("words", lifted.words());
        json.writeEndObject();
    }

    private static void causes(JsonGenerator json, Causes causes) throws IOException {
        json.writeObjectFieldStart("causes");
        number(json, "drawWh", causes.drawWh());
        number(json, "usableWh", causes.usableWh());
        json.writeObjectFieldStart("shares");
        for (Causes.Share share : causes.shares()) {
            number(json, share.cause(), share.share());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("changes");
        for (Causes.Remedy remedy : causes.remedies()) {
            json.writeStartObject();
            json.writeStringField("change", remedy.change());
            json.writeBooleanField("turns", remedy.turns());
            number(json, "price", remedy.price());
            json.writeBooleanField("perTrip", remedy.perTrip());
            json.writeStringField("currency", remedy.currency());
            json.writeStringField("priceFrom", remedy.priceFrom());
            number(json, "lackWh", remedy.lackWh());
            number(json, "daysToEmpty", remedy.result().daysToEmpty());
            json.writeBooleanField("holds", remedy.result().holds());
            json.writeNumberField("comfortableNights", remedy.result().comfortableNights());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void energy(JsonGenerator json, Energy energy) throws IOException {
        json.writeObjectFieldStart("energyWh");
        number(json, "solar", energy.wh(Account.SOLAR));
        number(json, "shore", energy.wh(Account.SHORE));
        number(json, "factoryAlternator", energy.wh(Account.FACTORY_ALTERNATOR));
        number(json, "secondAlternator", energy.wh(Account.SECOND_ALTERNATOR));
        number(json, "served", energy.servedWh());
        number(json, "unserved", energy.unservedWh());
        number(json, "curtailed", energy.curtailedWh());
        number(json, "losses", energy.lossesWh());
        number(json, "stored", energy.wh(Account.STORED));
        json.writeEndObject();
    }

    private static void ageing(JsonGenerator json, Ageing ageing) throws IOException {
        json.writeObjectFieldStart("ageing");
        json.writeStringField("note", "used to rank; it promises no date");
        number(json, "tripLoss", ageing.tripLoss());
        number(json, "yearLoss", ageing.yearLoss());
        number(json, "yearLossByUse", ageing.yearLossByUse());
        number(json, "yearResistanceGrowth", ageing.yearResistanceGrowth());
        json.writeEndObject();
    }

    private static void losses(JsonGenerator json, Energy energy) throws IOException {
        json.writeObjectFieldStart("lossesWh");
        for (Account account : Account.values()) {
            if (account.kind() == Account.Kind.LOSS) {
                number(json, account.label(), energy.wh(account));
            }
        }
        json.writeEndObject();
    }

    private static void byName(JsonGenerator json, String field, Map<String, Double> values) throws IOException {
        json.writeObjectFieldStart(field);
        for (Map.Entry<String, Double> entry : new TreeMap<>(values).entrySet()) {
            number(json, entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
    }

    private static void byLimit(JsonGenerator json, String field, Map<Limit, Double> values) throws IOException {
        json.writeObjectFieldStart(field);
        for (Map.Entry<Limit, Double> entry : new TreeMap<>(values).entrySet()) {
            number(json, entry.getKey().label(), entry.getValue());
        }
        json.writeEndObject();
    }

    private static void finding(JsonGenerator json, Finding finding, ZoneId zone) throws IOException {
        json.writeStartObject();
        json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        json.writeStringField("kind", finding.kind());
        json.writeStringField("firstAt", Numbers.localStamp(finding.firstEpochSecond(), zone));
        number(json, "minutes", finding.minutes());
        number(json, "worst", finding.worst());
        json.writeStringField("unit", finding.unit());
        json.writeStringField("text", finding.text());
        json.writeEndObject();
    }

    /** Begins a document of results. */
    static void begin(JsonGenerator json, String scenario, String title) throws IOException {
        json.writeStartObject();
        json.writeNumberField("schemaVersion", SCHEMA_VERSION);
        json.writeStringField("scenario", scenario);
        json.writeStringField("title", title);
    }

    /** JSON knows no "not a number": what has no value is null. */
    static void number(JsonGenerator json, String field, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(field, value);
        } else {
            json.writeNullField(field);
        }
    }

    /** A list of texts. */
    static void texts(JsonGenerator json, String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
