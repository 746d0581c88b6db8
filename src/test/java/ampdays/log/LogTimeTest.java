package ampdays.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Times of logs against the calendar and the zone rules of the Java library. */
class LogTimeTest {
    /** Reference: java.time, for the same written time. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "year month day | 2026-07-08 14:05:09 | 2026-07-08T14:05:09Z",
                "year month day | 2026-07-08T14:05:09.250+02:00 | 2026-07-08T12:05:09Z",
                "year month day | 2026/7/8 4:5 | 2026-07-08T04:05:00Z",
                "year month day | 26-07-08 14:05:09Z | 2026-07-08T14:05:09Z",
                "day month year | 08.07.2026 14:05 | 2026-07-08T14:05:00Z",
                "day month year | 29.02.24, 23:59:59 | 2024-02-29T23:59:59Z",
                "month day year | 07/08/2026 12:05:09 AM | 2026-07-08T00:05:09Z",
                "month day year | 7/8/26 12:05 pm -0700 | 2026-07-08T19:05:00Z",
                "epoch seconds | 1783519509 | 2026-07-08T14:05:09Z",
                "epoch seconds | 1783519509.75 | 2026-07-08T14:05:09Z",
                "epoch milliseconds | 1783519509999 | 2026-07-08T14:05:09Z"
            })
    void readsTimesAsTheyAreWritten(String form, String written, String instant) {
        long[] read = new long[2];
        assertThat(TimeForm.of(form).orElseThrow().read(written, read)).isTrue();
        long offset = read[1] == TimeForm.NONE ? 0 : read[1];
        assertThat(Instant.ofEpochSecond(read[0] - offset)).isEqualTo(Instant.parse(instant));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "year month day | 2026-13-08 14:05:09",
                "year month day | 2026-07-08",
                "year month day | 2026-07-08 24:05",
                "day month year | 07/31/2026 10:00",
                "month day year | 7/8/26 13:05 PM",
                "year month day | 2026-07-08 14:05:09 sharp",
                "epoch seconds | 2026-07-08 14:05:09",
                "epoch milliseconds | -"
            })
    void refusesWhatIsNoTimeOfTheForm(String form, String written) {
        assertThat(TimeForm.of(form).orElseThrow().read(written, new long[2])).isFalse();
    }

    /** Reference: java.time over five years in steps of seven hours, leap years among them. */
    @Test
    void countsDaysAsTheCalendarDoes() {
        long[] read = new long[2];
        for (LocalDateTime at = LocalDateTime.of(2023, 12, 31, 0, 30); at.getYear() < 2029; at = at.plusHours(7)) {
            String written = at.toString().replace('T', ' ');
            assertThat(TimeForm.YEAR_FIRST.read(written, read)).isTrue();
            assertThat(read[0]).isEqualTo(at.toEpochSecond(ZoneOffset.UTC));
        }
    }

    /** Reference: the zone rules of java.time, for rows every quarter of an hour over two years, in order. */
    @ParameterizedTest
    @ValueSource(strings = {"Europe/Berlin", "America/New_York", "America/Phoenix", "Australia/Lord_Howe", "UTC"})
    void keepsItsPlaceThroughChangesOfTheClock(String zone) {
        ZoneId id = ZoneId.of(zone);
        LogClock clock = new LogClock(id);
        long before = Long.MIN_VALUE;
        for (long at = 1_735_689_600L; at < 1_735_689_600L + 2 * 365 * 86_400L; at += 900) {
            long local = at + id.getRules().getOffset(Instant.ofEpochSecond(at)).getTotalSeconds();
            long instant = clock.instant(local, before);
            assertThat(instant).isEqualTo(at);
            assertThat(clock.wasMissing()).isFalse();
            before = instant;
        }
    }

    /** Reference: the zone rules of java.time, for times in any order that are not in the hour that comes twice. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void needsNoOrderOutsideTheHourThatComesTwice(long seed) {
        ZoneId id = ZoneId.of("Europe/Berlin");
        LogClock clock = new LogClock(id);
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20_000; i++) {
            LocalDateTime local =
                    LocalDateTime.ofEpochSecond(random.nextLong(1_600_000_000L, 1_900_000_000L), 0, ZoneOffset.UTC);
            int offsets = id.getRules().getValidOffsets(local).size();
            if (offsets == 2) {
                continue;
            }
            long expected = local.atZone(id).toEpochSecond();
            assertThat(clock.instant(local.toEpochSecond(ZoneOffset.UTC), 0)).isEqualTo(expected);
            assertThat(clock.wasMissing()).isEqualTo(offsets == 0);
        }
    }
}
