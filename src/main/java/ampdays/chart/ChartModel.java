package ampdays.chart;

/** What a chart says, without a picture: words, units and numbers that a test can read. */
public sealed interface ChartModel
        permits SocChart,
                DayChart,
                DaysBars,
                LinesChart,
                EnergyBalance,
                EnergyDays,
                CabinChart,
                DriveChart,
                OperatingPoints,
                HeatMap,
                TornadoChart,
                BreakEven,
                FrontChart {
    /** What the picture shows, in one line. */
    String title();

    /** A line of explanation under the title. */
    String subtitle();
}
