package ampdays.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import ampdays.trip.DayKind;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.units.QuantityException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days with more and with less driving, worked out by hand; no outside source. */
class DriveChangesTest {
    private static final DayKind TWO_DRIVES = kind(
            "field",
            "06:30 drive highway",
            "07:00 park sun, away",
            "17:00 drive town",
            "18:30 park open, awake",
            "22:00 park open, asleep");
    private static final DayKind NO_DRIVE = kind("rest", "08:00 park open, awake", "22:00 park open, asleep");

    private static DayKind kind(String name, String... lines) {
        List<Stretch> stretches = new ArrayList<>();
        for (String line : lines) {
            try {
                TimetableLine read = TimetableLine.parse(line);
                stretches.add(new Stretch(
                        read.minuteOfDay(), read.vehicle(), ampdays.trip.Shade.NONE, read.hookUp(), read.people()));
            } catch (QuantityException e) {
                throw new IllegalArgumentException(e);
            }
        }
        return new DayKind(name, stretches);
    }

    private static Trip trip(DayKind first, DayKind second, Integer... kinds) {
        return new Trip(LocalDate.of(2025, 7, 8), ZoneOffset.UTC, List.of(first, second), List.of(kinds), 0.2);
    }

    private static String words(DayKind kind) {
        return kind.stretches().stream()
                .map(s -> String.format(
                        Locale.ROOT,
                        "%02d:%02d %s %s",
                        s.fromMinuteOfDay() / 60,
                        s.fromMinuteOfDay() % 60,
                        s.vehicle(),
                        s.people()))
                .collect(Collectors.joining("; "));
    }

    /** Two hours as written; every drive by the same factor, from its own beginning. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | 06:30 HIGHWAY ABOARD; 07:00 PARKED AWAY; 17:00 TOWN ABOARD; 18:30 PARKED AWAKE; 22:00 PARKED ASLEEP",
                "1 | 06:30 HIGHWAY ABOARD; 06:45 PARKED AWAY; 17:00 TOWN ABOARD; 17:45 PARKED AWAKE; 22:00 PARKED ASLEEP",
                "4 | 06:30 HIGHWAY ABOARD; 07:30 PARKED AWAY; 17:00 TOWN ABOARD; 20:00 PARKED AWAKE; 22:00 PARKED ASLEEP",
                "8 | 06:30 HIGHWAY ABOARD; 08:30 PARKED AWAY; 17:00 TOWN ABOARD; 23:00 PARKED ASLEEP",
                "0 | 06:30 PARKED AWAY; 17:00 PARKED AWAKE; 22:00 PARKED ASLEEP",
            })
    void drivesLastAsLongAsSaid(double hours, String expected) {
        Trip changed = DriveChanges.lasting(trip(TWO_DRIVES, NO_DRIVE, 0, 1), hours);
        assertThat(words(changed.kinds().get(0))).isEqualTo(expected);
        assertThat(changed.kinds().get(1)).isEqualTo(NO_DRIVE);
        assertThat(changed.kindOfDay()).containsExactly(0, 1);
    }

    @Test
    void drivesThatFollowEachOtherStayTogether() {
        DayKind there = kind(
                "there", "08:00 drive town", "08:10 drive highway", "09:00 park sun, away", "20:00 park open, asleep");
        assertThat(words(DriveChanges.lasting(trip(there, NO_DRIVE, 0), 2)
                        .kinds()
                        .get(0)))
                .isEqualTo("08:00 TOWN ABOARD; 08:20 HIGHWAY ABOARD; 10:00 PARKED AWAY; 20:00 PARKED ASLEEP");
    }

    @Test
    void aDayThatHasNoRoomOrNoDriveIsRefused() {
        assertThatThrownBy(() -> DriveChanges.lasting(trip(TWO_DRIVES, NO_DRIVE, 0, 1), 10))
                .hasMessage("trip.drive-hours of 10.00 h leaves no room for what follows the drives of \"field\"");
        assertThatThrownBy(() -> DriveChanges.lasting(trip(NO_DRIVE, NO_DRIVE, 0, 1), 1))
                .hasMessageContaining("makes drives longer, but the timetable has none");
    }

    /** A drive on the first day, then the days that shall stay; days without a drive count among them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | DDDDDDDD",
                "1 | DpDpDpDp",
                "2 | DppDppDp",
                "7 | Dppppppp",
                "9 | Dppppppp",
            })
    void drivingDaysStandApart(int parked, String expected) {
        Trip changed = DriveChanges.apart(trip(TWO_DRIVES, NO_DRIVE, 0, 0, 0, 0, 0, 0, 0, 0), parked);
        assertThat(pattern(changed)).isEqualTo(expected);
    }

    @Test
    void daysThatRestedAlreadyCount() {
        assertThat(pattern(DriveChanges.apart(trip(TWO_DRIVES, NO_DRIVE, 0, 0, 1, 0, 1, 0, 0, 0), 2)))
                .isEqualTo("DppDppDp");
        assertThat(pattern(DriveChanges.apart(trip(TWO_DRIVES, NO_DRIVE, 1, 1, 1, 0, 1, 0), 3)))
                .isEqualTo("pppDpp");
    }

    private static String pattern(Trip trip) {
        return trip.kindOfDay().stream()
                .map(kind -> trip.kinds().get(kind).stretches().stream()
                                .anyMatch(s -> s.vehicle().moves())
                        ? "D"
                        : "p")
                .collect(Collectors.joining());
    }
}
