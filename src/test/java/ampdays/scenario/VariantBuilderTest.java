package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.io.ScenarioReader;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** By logic: a builder that remembers the parts of the last variant makes what one without memory makes. */
class VariantBuilderTest {
    private static final int CHANGES = 400;
    private static final String FIELD_DAYS = "trip.field days";

    private final VariantBuilder builder = new VariantBuilder();
    private int sound;
    private int refused;

    /** Whatever is changed: single values between their bounds, components and loads taken out, options and back. */
    @ParameterizedTest
    @ValueSource(strings = {"coast-weekends", "desert-survey", "plateau-autumn"})
    void nothingIsLeftOfTheLastVariant(String name) throws Exception {
        ScenarioFile file = ScenarioReader.read(Path.of("scenarios", name + ".yaml"));
        List<Values> designs = Stream.concat(
                        Stream.of(file.base()), file.options().stream().map(ScenarioFile.Option::values))
                .toList();
        SplittableRandom random = new SplittableRandom(1);
        Values values = file.base();
        for (int i = 0; i < CHANGES; i++) {
            values = random.nextInt(10) == 0 ? designs.get(random.nextInt(designs.size())) : changed(values, random);
            check(values);
        }
        assertThat(sound).isGreaterThan(CHANGES / 10);
        assertThat(refused).isGreaterThan(CHANGES / 10);
    }

    /** Of a row of banks nothing is read again but the bank. */
    @Test
    void whatNoChangeReachesIsKept() throws Exception {
        Values values =
                ScenarioReader.read(Path.of("scenarios", "coast-weekends.yaml")).base();
        Variant one = builder.next("one", values);
        Variant other = builder.next("other", values.with("battery.capacity", "321 Ah"));
        assertThat(other.trip()).isSameAs(one.trip());
        assertThat(other.design().cabin()).isSameAs(one.design().cabin());
        assertThat(other.design().refrigerator()).isSameAs(one.design().refrigerator());
        assertThat(other.design().solar()).isSameAs(one.design().solar());
        assertThat(other.design().inverter()).isSameAs(one.design().inverter());
        assertThat(other.design().bank()).isNotEqualTo(one.design().bank());
    }

    private static Values demo() throws Exception {
        return ScenarioReader.read(Path.of("scenarios", "desert-survey.yaml")).base();
    }

    /** The demo has fourteen days, of which the first five and the eighth to the twelfth are spent in the field. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"14 | XXXXX..XXXXX..", "9 | XXXXX..XX", "3 | XXX", "16 | XXXXX..XXXXX...."})
    void daysAfterTheEndOfATripMadeShorterAreNotReached(String days, String expected) throws Exception {
        StringBuilder found = new StringBuilder();
        builder.next("shorter", demo().with("trip.days", days))
                .trip()
                .kindOfDay()
                .forEach(kind -> found.append(kind == 0 ? 'X' : '.'));
        assertThat(found).hasToString(expected);
    }

    /** Whatever was the last length, and the order in which things were said. */
    @Test
    void aDayThatNoLengthOfTheTripEverHadIsRefused() throws Exception {
        Values seven = demo().with("trip.days", "7");
        assertThat(builder.next("as long as the scenario says", seven.with(FIELD_DAYS, "1-14"))
                        .trip()
                        .days())
                .isEqualTo(7);
        Values longer = demo().with("trip.days", "21").with(FIELD_DAYS, "1-15");
        assertThat(builder.next("longer in between", longer.with("trip.days", "7"))
                        .trip()
                        .days())
                .isEqualTo(7);
        String refused = "trip.field days \"1-15\" does not lie within the 14 days of the trip, first to last.";
        assertThatThrownBy(() -> builder.next("never as long", seven.with(FIELD_DAYS, "1-15")))
                .hasMessage(refused);
        assertThatThrownBy(() -> builder.next("never as long", demo().with(FIELD_DAYS, "1-15")))
                .hasMessage(refused);
    }

    private static Values changed(Values values, SplittableRandom random) {
        List<Values.Listed> listing = values.listing();
        String path = listing.get(random.nextInt(listing.size())).path();
        String above = path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : path;
        if (random.nextInt(20) == 0 && Values.isComponent(above)) {
            return values.without(above);
        }
        Kind kind = Registry.parameter(path).orElseThrow().kind();
        if (kind instanceof Kind.Choice choice) {
            return values.with(
                    path, choice.words().get(random.nextInt(choice.words().size())));
        }
        if (kind instanceof Kind.Measured measured) {
            double share = random.nextDouble();
            return values.with(path, measured.low() + share * share * (measured.high() - measured.low()));
        }
        return values;
    }

    private void check(Values values) {
        Variant fresh;
        try {
            fresh = VariantBuilder.build("changed", values);
        } catch (ScenarioException e) {
            refused++;
            assertThatThrownBy(() -> builder.next("changed", values))
                    .isInstanceOfSatisfying(
                            ScenarioException.class,
                            again -> assertThat(again.problems()).isEqualTo(e.problems()));
            return;
        } catch (IllegalArgumentException e) {
            refused++;
            assertThatThrownBy(() -> builder.next("changed", values))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(e.getMessage());
            return;
        }
        sound++;
        assertThat(next(values)).isEqualTo(fresh);
    }

    private Variant next(Values values) {
        try {
            return builder.next("changed", values);
        } catch (ScenarioException e) {
            throw new AssertionError(e);
        }
    }
}
