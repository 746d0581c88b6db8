package ampdays.io;

import ampdays.results.Chances;
import ampdays.results.Chances.Drawn;
import ampdays.results.TripOutcome;
import ampdays.results.WholeFile;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** The files of a study of many trips. What stands in them is told in docs/OUTPUT.md. */
public final class ChancesFiles {
    /** A row for each trip of each option. */
    public static final String TABLE = "chances.csv";

    /** The distribution of each option. */
    public static final String DOCUMENT = "chances.json";

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private ChancesFiles() {}

    /** Writes both files. */
    public static void write(Path folder, Chances chances) throws IOException {
        WholeFile.writeText(folder.resolve(TABLE), text -> table(text, chances));
        WholeFile.writeText(folder.resolve(DOCUMENT), text -> ChancesJson.write(text, chances));
    }

    private static void table(Writer text, Chances chances) throws IOException {
        List<String> headings = new ArrayList<>(List.of("option", "trip", "start", "weather"));
        chances.drawn().forEach(drawn -> headings.add(ResultFiles.heading(drawn.name(), drawn.unit())));
        headings.addAll(List.of(
                "trip (days)",
                "days to empty (days)",
                "holds",
                "lowest state of charge (%)",
                "comfortable nights",
                "nights",
                "all nights comfortable",
                "served (Wh)",
                "unserved (Wh)",
                "worst three days from",
                "asked in them (Wh)",
                "came in them (Wh)"));
        FORMAT.printRecord(text, headings.toArray());
        for (Chances.Option option : chances.options()) {
            for (TripOutcome trip : option.trips()) {
                FORMAT.printRecord(
                        text, row(option.name(), trip, chances.drawn()).toArray());
            }
        }
    }

    private static List<String> row(String option, TripOutcome trip, List<Drawn> drawn) {
        List<String> row = new ArrayList<>(
                List.of(option, Integer.toString(trip.trip()), trip.start().toString(), trip.weather()));
        for (int i = 0; i < drawn.size(); i++) {
            row.add(Numbers.full(trip.drawn().get(i) / drawn.get(i).perUnit()));
        }
        row.addAll(List.of(
                Numbers.full(trip.tripDays()),
                Numbers.full(trip.daysToEmpty()),
                trip.holds() ? "yes" : "no",
                Numbers.percent(trip.lowestSoc()),
                Integer.toString(trip.comfortableNights()),
                Integer.toString(trip.nights()),
                trip.isComfortable() ? "yes" : "no",
                Numbers.full(trip.servedWh()),
                Numbers.full(trip.unservedWh()),
                trip.worst().first().toString(),
                Numbers.full(trip.worst().askedWh()),
                Numbers.full(trip.worst().cameWh())));
        return row;
    }
}
