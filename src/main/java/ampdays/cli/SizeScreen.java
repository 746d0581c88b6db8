package ampdays.cli;

import ampdays.results.RunResult;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import ampdays.study.SizeText;
import ampdays.study.Verdict;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The screen of a question of size: the answer, its neighbourhood, files. */
final class SizeScreen {
    private final PrintWriter out;

    SizeScreen(PrintWriter out) {
        this.out = out;
    }

    void print(String title, Sizing sizing, Optional<String> lift, Path folder, Collection<String> charts) {
        out.println(title);
        out.println();
        SizeText.of(sizing).forEach(sentence -> Paragraph.print(out, sentence, ""));
        lift.ifPresent(words -> Paragraph.print(out, "What a better part would bring " + words, ""));
        out.println();
        table(sizing).print(out);
        Paragraph.print(
                out,
                "Written to " + folder + ": size.json, and all "
                        + sizing.tried().size()
                        + " values that were run in sweep.csv, sweep.json"
                        + (charts.isEmpty() ? "." : "; charts (.svg and .png): " + String.join(", ", charts) + "."),
                "");
        Paragraph.print(out, Paragraph.ESTIMATES, "");
    }

    private static Table table(Sizing sizing) {
        List<String> heads = new ArrayList<>(List.of("days to empty", "lowest charge", "comfortable nights"));
        heads.add(sizing.goals().size() == 1 ? "reaches the goal" : "reaches the goals");
        Table table = new Table(heads);
        for (int at : SizeText.shown(sizing)) {
            Tried tried = sizing.tried().get(at);
            boolean answer = sizing.answer().isPresent() && sizing.best() == at;
            List<String> cells =
                    new ArrayList<>(tried.result().map(SizeScreen::cells).orElse(List.of("impossible", "–", "–")));
            cells.add(answer ? "yes, just" : tried.reached() ? "yes" : "no");
            table.row(tried.value(), cells);
        }
        return table;
    }

    private static List<String> cells(RunResult run) {
        return List.of(
                run.holds()
                        ? "holds"
                        : Double.isNaN(run.daysToEmpty())
                                ? "over " + Verdict.twoDigits(run.tripDays())
                                : String.format(Locale.ROOT, "%.3f", run.daysToEmpty()),
                String.format(Locale.ROOT, "%.1f %%", 100 * run.lowestSoc()),
                run.comfortableNights() + " of " + run.nights());
    }
}
