package ampdays.study;

import ampdays.scenario.Failure;
import ampdays.scenario.FailureKind;
import ampdays.scenario.Problem;
import ampdays.scenario.ScenarioException;
import ampdays.scenario.TripMoment;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a failure does, and what helps against it beyond single changes of the design, in plain words of our own. */
final class FailureText {
    private FailureText() {}

    /** Why a design cannot be, as a sentence without its end. */
    static String why(ScenarioException cannotBe) {
        String problems = cannotBe.problems().stream().map(Problem::message).collect(Collectors.joining(" "));
        return problems.endsWith(".") ? problems.substring(0, problems.length() - 1) : problems;
    }

    /** What it changes, as a sentence without its end. */
    static String what(FailureCase place) {
        Failure failure = place.failure();
        String own = failure.changes().stream()
                .map(change -> change.path() + " " + change.text())
                .collect(Collectors.joining(", "));
        if (failure.kind().isEmpty()) {
            return own;
        }
        String kind = what(failure.kind().get(), place);
        return own.isEmpty() ? kind : kind + "; and " + own;
    }

    private static String what(FailureKind kind, FailureCase place) {
        Failure failure = place.failure();
        boolean ends = failure.until().isPresent();
        boolean moved = failure.from().isPresent() || ends;
        return switch (kind) {
            case PROTECTION_OPENS ->
                "the bank disconnects itself " + begins(failure, "at the first hard charge")
                        + ", and nothing that charges is counted on without it; somebody resets it "
                        + ends(failure, "", "in the end");
            case STRING_LOST -> "one of the parallel strings drops out with its charge";
            case SECOND_ALTERNATOR_DIES -> "the second alternator gives nothing" + (ends ? "" : " any more");
            case FACTORY_ALTERNATOR_DIES ->
                "the factory alternator " + (ends ? "does not charge the bank" : "charges the bank no more")
                        + "; how far the engine runs without it is not told here";
            case PANEL_BREAKER_OPENS ->
                "the breaker of the panels opens and " + ends(failure, "somebody resets it ", "nobody resets it");
            case COOLING_BREAKER_OPENS ->
                "the breaker of the air conditioner opens " + begins(failure, "at noon of the hottest day");
            case HOOK_UP_LOST ->
                "the hook-up fails, " + begins(failure, "at the hottest hour on one")
                        + ", with cooling left on for a pet; " + ends(failure, "it is back ", "it stays away");
            case COLD_MORNING ->
                moved
                        ? String.format(Locale.ROOT, "air colder by %.0f K while it lasts", -place.warmerK())
                        : String.format(Locale.ROOT, "a night %.0f K colder, down to -5 °C", -place.warmerK());
            case HEAT_WAVE ->
                String.format(
                        Locale.ROOT,
                        "air warmer by %.0f K %s",
                        place.warmerK(),
                        moved ? "while it lasts" : "in the hottest days");
            case INVERTER_LEFT_ON -> "the inverter idles day and night";
            case UNDER_TREES -> "the van stays parked in shade and drives nowhere";
            case CLOSED_BOX -> "the refrigerator's condenser gets only the air of a closed box";
        };
    }

    private static String begins(Failure failure, String byItsNature) {
        return failure.from().map(FailureText::at).orElse(byItsNature);
    }

    private static String ends(Failure failure, String before, String byItsNature) {
        return failure.until().map(moment -> before + at(moment)).orElse(byItsNature);
    }

    private static String at(TripMoment moment) {
        return String.format(
                Locale.ROOT,
                "at %02d:%02d of day %d",
                moment.minuteOfDay() / 60,
                moment.minuteOfDay() % 60,
                moment.day());
    }

    /** What to do beyond what was simulated; empty for failures without a named kind. */
    static String advice(Failure failure) {
        return failure.kind().map(FailureText::advice).orElse("");
    }

    private static String advice(FailureKind kind) {
        return switch (kind) {
            case PROTECTION_OPENS ->
                "Have the protection warn before it opens and stop the regulator first: an alternator that loses its"
                        + " load can destroy itself and what hangs on it. Alarms need a small battery of their own.";
            case STRING_LOST -> "A fuse and a current reading for each string show which one is gone.";
            case SECOND_ALTERNATOR_DIES ->
                "A charging lamp or an ammeter on the alternator shows it at the next drive.";
            case FACTORY_ALTERNATOR_DIES ->
                "The starter battery empties as well and the engine stops: go to a workshop, not on a trip.";
            case PANEL_BREAKER_OPENS ->
                "A breaker in hot air holds less than its rating. An alarm on the day's sun finds it in a day.";
            case COOLING_BREAKER_OPENS ->
                "An alarm on cabin heat that reports by its own way; a breaker in a cool place, never a larger one than"
                        + " the conductor allows.";
            case HOOK_UP_LOST ->
                "An alarm that does not hang on the van's power or its network, and a second person nearby.";
            case COLD_MORNING ->
                "Lithium cells take no charge below 0 °C, and some packs then give nothing either: keep the bank indoors,"
                        + " or warm it before charging.";
            case INVERTER_LEFT_ON -> "A search mode, or a switch by the door that takes the inverter with it.";
            case HEAT_WAVE -> "Shade by day, covers, and a place higher up or by hook-up for the worst nights.";
            case UNDER_TREES -> "Move the van, or the panels: a portable one in the sun.";
            case CLOSED_BOX -> "Vents below and above the condenser, or a fan that draws air past it.";
        };
    }
}
