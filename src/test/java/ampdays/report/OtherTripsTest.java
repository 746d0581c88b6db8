package ampdays.report;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.results.Bounded;
import ampdays.results.Chances;
import ampdays.results.Chances.Tenths;
import ampdays.results.Survival;
import ampdays.results.ThreeDays;
import ampdays.results.TripOutcome;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the client reads of the chances: counts by hand of 32 trips; practice, no source. */
class OtherTripsTest {
    private static final int TRIPS = 32;

    private static Chances.Option option(String name, int neverEmpty) {
        return option(name, neverEmpty, 0);
    }

    private static Chances.Option option(String name, int neverEmpty, int nights) {
        Bounded none = new Bounded(0, 0, 0);
        Tenths tenths = new Tenths(none, none, none);
        ThreeDays worst = new ThreeDays(LocalDate.of(2025, 7, 8), 0, 0);
        TripOutcome trip =
                new TripOutcome(1, worst.first(), "", List.of(), 14, Double.NaN, true, 0, 0, nights, 1, 0, worst);
        double share = neverEmpty / (double) TRIPS;
        return new Chances.Option(
                name,
                "",
                "",
                new Bounded(share, share, share),
                new Bounded(share, share, share),
                tenths,
                tenths,
                new Survival(List.of()),
                trip,
                0,
                0,
                List.of(trip));
    }

    private static OtherTrips trips(Chances.Option... options) {
        return new OtherTrips(new Chances("van", "Van", TRIPS, 1, 0.2, List.of(), List.of(options)));
    }

    @Test
    void theOptionThatFaresBestIsNamedBesideAWorseOne() {
        OtherTrips trips = trips(option("as it is", 17), option("second alternator", 17), option("bigger bank", 30));
        assertThat(trips.neverEmpty("as it is")).isEqualTo("17 of 32");
        assertThat(trips.emptied("as it is"))
                .isEqualTo("the bank ran empty on 15 of 32 other trips, with “bigger bank” on 2");
        assertThat(trips.emptied("bigger bank")).isEqualTo("the bank ran empty on 2 of 32 other trips");
        assertThat(trips(option("as it is", 31), option("hook-up", 32)).emptied("as it is"))
                .isEqualTo("the bank ran empty on 1 of 32 other trips, with “hook-up” on none");
    }

    private static String noteOfTheTable(Chances.Option... options) {
        Part part = ChancesPart.of(new Chances("van", "Van", TRIPS, 1, 0.2, List.of(), List.of(options)));
        Block last = part.blocks().get(part.blocks().size() - 1);
        return ((Block.Sheet) last).notes().get(0);
    }

    @Test
    void tripsOfDifferentLengthsAreToldBesideTheCountsOfNights() {
        assertThat(noteOfTheTable(option("a", 1, 6), option("b", 1, 8))).endsWith(" A trip has 6 to 8 nights.");
        assertThat(noteOfTheTable(option("a", 1, 7), option("b", 1, 7))).doesNotContain("A trip has");
    }

    /** Nine trips of ten: 29 of 32 are 91 %, 28 are 88 %. */
    @Test
    void sureIsWhatGoesWellOnNineTripsOfTen() {
        OtherTrips trips = trips(option("a", 29), option("b", 28), option("c", 32));
        assertThat(trips.isSure("a")).isTrue();
        assertThat(trips.isSure("b")).isFalse();
        assertThat(trips.isSure("c")).isTrue();
        assertThat(trips.emptied("c")).isEqualTo("the bank ran empty on none of 32 other trips");
    }
}
