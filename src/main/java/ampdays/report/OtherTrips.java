package ampdays.report;

import ampdays.results.Chances;
import java.util.Comparator;
import java.util.Optional;

/** On how many of the many trips a bank stayed above its reserve, as the client's page says it. */
record OtherTrips(Chances chances) {
    /** Where fewer trips than this share go well the answer itself says so; a guess. */
    private static final double SURE_SHARE = 0.9;

    boolean isSure(String option) {
        return of(option).neverEmpty().value() >= SURE_SHARE;
    }

    /** Such as "21 of 32". */
    String neverEmpty(String option) {
        return chances.trips() - emptied(of(option)) + " of " + chances.trips();
    }

    /** Such as "the bank ran empty on 15 of 32 other trips, with “bigger bank” on 2": with the one that fares best, if another. */
    String emptied(String option) {
        int here = emptied(of(option));
        String surer = chances.options().stream()
                .min(Comparator.comparingInt(this::emptied))
                .filter(other -> emptied(other) < here)
                .map(other -> ", with " + Say.quoted(other.name()) + " on " + count(emptied(other)))
                .orElse("");
        return "the bank ran empty on " + count(here) + " of " + chances.trips() + " other trips" + surer;
    }

    private int emptied(Chances.Option option) {
        return (int) Math.round((1 - option.neverEmpty().value()) * chances.trips());
    }

    private static String count(int trips) {
        return trips == 0 ? "none" : Integer.toString(trips);
    }

    private Chances.Option of(String option) {
        return chances.options().stream()
                .filter(one -> one.name().equals(option))
                .findFirst()
                .orElseThrow();
    }

    static Optional<OtherTrips> of(Material material) {
        return material.studies().chances().map(OtherTrips::new);
    }
}
