package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of loggers; how they are written is common practice, no source. */
class LogNumberTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.5     | false | 3.5",
                "1,234.5 | false | 1234.5",
                "1,234   | false | 1234",
                "3,5     | true  | 3.5",
                "1.234,5 | true  | 1234.5",
                "12 A    | false | 12"
            })
    void numbersAreRead(String text, boolean commaIsDecimal, double value) {
        assertThat(LogNumber.read(text, commaIsDecimal, "A")).isEqualTo(value);
    }

    /** A sign that is not the decimal one and parts no thousands would make 3,5 thirty-five. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3,5 | false", "12.85 | true", "1.5,000 | false", "1,2345 | false", "1.2.3 | false"})
    void signsThatPartNoThousandsAreRefused(String text, boolean commaIsDecimal) {
        assertThat(LogNumber.read(text, commaIsDecimal, "A")).isEqualTo(LogNumber.UNREADABLE);
    }
}
