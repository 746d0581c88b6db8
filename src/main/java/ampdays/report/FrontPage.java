package ampdays.report;

import ampdays.chart.DayChart;
import ampdays.report.Block.Answer;
import ampdays.report.Block.Beside;
import ampdays.report.Block.Picture;
import ampdays.report.Block.Points;
import ampdays.report.Block.Text;
import ampdays.study.Comparison.Option;
import java.util.stream.Stream;

/** The page that the client decides by. */
final class FrontPage {
    private FrontPage() {}

    static Part of(Material material, boolean brief) {
        Say say = new Say(material.units());
        PlainVerdict verdict = new PlainVerdict(material);
        return Part.of(
                "answer",
                "The answer",
                Stream.of(
                        new Answer(verdict.answer()),
                        new Text(verdict.reasons()),
                        OptionSheet.of(material, say),
                        day(material, material.best()),
                        new Beside(
                                "What you do for it",
                                new Points(Duties.of(material, say)),
                                "What it does not promise",
                                Points.of(NotPromised.of(material, brief)))));
    }

    private static Picture day(Material material, Option option) {
        return new Picture(
                "day",
                Units.of(DayChart.of(material.comparison(), option).asLow(), material.units()),
                "An ordinary day and the worst of " + Say.quoted(option.result().option())
                        + " by the hour: the charge of the bank; what feeds it and draws on it; the air outside and in the"
                        + " cabin.");
    }
}
