package ampdays.study;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.scenario.Failure;
import ampdays.scenario.FailureKind;
import ampdays.scenario.TripMoment;
import ampdays.units.QuantityException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a failure does, in words, with the moment that was used. */
class FailureTextTest {
    private static String what(FailureKind kind, Optional<TripMoment> from, Optional<TripMoment> until) {
        Failure failure = new Failure("own", Optional.of(kind), List.of(), from, until);
        double warmerK = kind == FailureKind.COLD_MORNING ? -7 : 6;
        return FailureText.what(new FailureCase(failure, 0, 1, 0, 1, warmerK));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "COOLING_BREAKER_OPENS | the breaker of the air conditioner opens at 14:00 of day 3",
                "PROTECTION_OPENS | the bank disconnects itself at 14:00 of day 3, and nothing that charges is counted on"
                        + " without it; somebody resets it at 06:30 of day 5",
                "HOOK_UP_LOST | the hook-up fails, at 14:00 of day 3, with cooling left on for a pet; it is back at 06:30 of"
                        + " day 5",
                "PANEL_BREAKER_OPENS | the breaker of the panels opens and somebody resets it at 06:30 of day 5",
                "SECOND_ALTERNATOR_DIES | the second alternator gives nothing",
                "HEAT_WAVE | air warmer by 6 K while it lasts",
                "COLD_MORNING | air colder by 7 K while it lasts",
            })
    void aMomentThatIsSaidIsTheOneTold(FailureKind kind, String words) throws QuantityException {
        assertThat(what(
                        kind,
                        Optional.of(TripMoment.parse("day 3 14:00")),
                        Optional.of(TripMoment.parse("day 5 06:30"))))
                .isEqualTo(words);
    }

    @Test
    void otherwiseItIsTheOneOfItsKind() {
        assertThat(what(FailureKind.COOLING_BREAKER_OPENS, Optional.empty(), Optional.empty()))
                .isEqualTo("the breaker of the air conditioner opens at noon of the hottest day");
        assertThat(what(FailureKind.HEAT_WAVE, Optional.empty(), Optional.empty()))
                .isEqualTo("air warmer by 6 K in the hottest days");
    }

    /** What is told of a moment by nature, or of an end that never comes, goes when both are said. */
    @ParameterizedTest
    @EnumSource
    void noKindTellsItsOwnMomentBesideASaidOne(FailureKind kind) throws QuantityException {
        Optional<TripMoment> from = Optional.of(TripMoment.parse("day 2 10:00"));
        Optional<TripMoment> until = Optional.of(TripMoment.parse("day 4"));
        assertThat(what(kind, from, until))
                .doesNotContain("hottest", "first hard charge", "in the end", "any more", "no more", "nobody resets");
    }
}
