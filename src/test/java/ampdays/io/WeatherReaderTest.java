package ampdays.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import ampdays.weather.WeatherSeries;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each format read right. What a field means is, for EPW, the field description of the manual that {@code EpwReader} cites;
 * for TMY3 its users manual (Wilcox and Marion 2008, NREL/TP-581-43156); for the plain CSV {@code docs/WEATHER.md}. The
 * files are invented; what is expected of them is read off them.
 */
class WeatherReaderTest {
    private static final String EPW = "right-weather.epw";
    private static final String TMY3 = "right-weather-tmy3.csv";
    private static final String PLAIN = "right-weather.csv";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {EPW, TMY3, PLAIN})
    void allThreeFormatsSayTheSame(String name) throws IOException, InputException {
        WeatherSeries series = read(right(name));
        assertThat(series.source()).isEqualTo("weather.csv");
        assertThat(series.size()).isEqualTo(9);
        assertThat(series.notes()).isEmpty();
        assertThat(series.info().latitudeDeg()).isEqualTo(33.4);
        assertThat(series.info().longitudeDeg()).isEqualTo(-112);
        assertThat(series.info().elevationM()).isEqualTo(340);
        assertThat(series.info().utcOffsetHours()).isEqualTo(-7);
        assertThat(series.info().stepSeconds()).isEqualTo(3600);
        assertThat(series.info().typicalYear()).isFalse();
        assertThat(series.info().instantShare()).isEqualTo(1);
        assertThat(begin(series)).isEqualTo(Instant.parse("2005-07-08T07:00:00Z"));
        assertThat(series.localStart(6)).isEqualTo(LocalDateTime.parse("2005-07-08T06:00"));
        assertThat(series.ghiWm2(6)).isEqualTo(180);
        assertThat(series.dniWm2(6)).isEqualTo(480);
        assertThat(series.dhiWm2(6)).isEqualTo(60);
        assertThat(series.airC(6)).isEqualTo(21.4);
        assertThat(series.dewPointC(6)).isEqualTo(12.5);
        assertThat(series.windMs(6)).isEqualTo(2.5);
        assertThat(series.pressurePa(6)).isEqualTo(97_300);
    }

    @ParameterizedTest
    @ValueSource(strings = {EPW, TMY3, PLAIN})
    void byteOrderMarkAndLineEndsDoNotMatter(String name) throws IOException, InputException {
        WeatherSeries series = read("\uFEFF" + right(name).replace("\n", "\r\n") + "\r\n\r\n");
        assertThat(series.size()).isEqualTo(9);
        assertThat(series.ghiWm2(8)).isEqualTo(590);
        assertThat(series.windMs(8)).isEqualTo(2.5);
    }

    @Test
    void aPlaceNameInLatin1DoesNotMatter() throws IOException, InputException {
        WeatherSeries series = read(right(EPW).replace("Invented", "Erdachte Höhe"), StandardCharsets.ISO_8859_1);
        assertThat(series.size()).isEqualTo(9);
    }

    /** Hour 24 and 24:00 end the day; the next row's interval begins at midnight. */
    @Test
    void midnightIsTheEndOfItsDay() throws IOException, InputException {
        for (WeatherSeries series : new WeatherSeries[] {
            read(epw("-7.0", 1, epwRow("2005,7,8,23,0", 1) + epwRow("2005,7,8,24,0", 2) + epwRow("2005,7,9,1,0", 3))),
            read(tmy3(
                    tmy3Row("07/08/2005,23:00", 1) + tmy3Row("07/08/2005,24:00", 2) + tmy3Row("07/09/2005,01:00", 3))),
            read(plain(
                    "end",
                    plainRow("2005-07-08 23:00", 1)
                            + plainRow("2005-07-08 24:00", 2)
                            + plainRow("2005-07-09 01:00", 3))),
            read(plain(
                    "end",
                    plainRow("2005-07-08T23:00", 1)
                            + plainRow("2005-07-09T00:00", 2)
                            + plainRow("2005-07-09T01:00", 3)))
        }) {
            assertThat(series.info().typicalYear()).isFalse();
            assertThat(series.localStart(1)).isEqualTo(LocalDateTime.parse("2005-07-08T23:00"));
            assertThat(series.localStart(2)).isEqualTo(LocalDateTime.parse("2005-07-09T00:00"));
            assertThat(series.airC(1)).isEqualTo(2);
        }
    }

    /** Months of a typical year come from different years: then only month, day and time count. */
    @Test
    void monthsOfDifferentYearsMakeATypicalYear() throws IOException, InputException {
        for (WeatherSeries series : new WeatherSeries[] {
            read(epw("-7.0", 1, epwRow("1995,1,31,24,0", 1) + epwRow("2002,2,1,1,0", 2) + epwRow("2002,2,1,2,0", 3))),
            read(tmy3(tmy3Row("01/31/1995,24:00", 1) + tmy3Row("02/01/2002,01:00", 2) + tmy3Row("02/01/2002,02:00", 3)))
        }) {
            assertThat(series.info().typicalYear()).isTrue();
            assertThat(series.localStart(0)).isEqualTo(LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 1, 31, 23, 0));
            assertThat(series.coverage()).isEqualTo("01-31 to 02-01 of any year");
        }
    }

    @Test
    void rowsWithoutAYearMakeATypicalYearThatMayCrossNewYear() throws IOException, InputException {
        WeatherSeries series = read(plain("start", plainRow("12-31 23:00", 1) + plainRow("01-01 00:00", 2)));
        assertThat(series.info().typicalYear()).isTrue();
        assertThat(series.localStart(0)).isEqualTo(LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 12, 31, 23, 0));
        assertThat(series.airC(1)).isEqualTo(2);
    }

    @Test
    void ofALeapYearWithoutDates29FebruaryIsLeftOutAndThatIsSaid() throws IOException, InputException {
        WeatherSeries series = read(plain("start", yearOfRows(2024, false)));
        assertThat(series.size()).isEqualTo(8760);
        assertThat(series.notes())
                .containsExactly("29 February was left out, because the file counts as a year of no date");
        assertThat(series.localStart(59 * 24)).isEqualTo(LocalDateTime.of(WeatherSeries.NOMINAL_YEAR, 3, 1, 0, 0));
        assertThat(series.airC(59 * 24 - 1)).as("28 February").isEqualTo(28);
        assertThat(series.airC(59 * 24)).as("1 March").isEqualTo(1);
    }

    @Test
    void ofALeapYearWithDatesAllRowsAreKept() throws IOException, InputException {
        WeatherSeries series = read(plain("start", yearOfRows(2024, true)));
        assertThat(series.size()).isEqualTo(8784);
        assertThat(series.notes()).isEmpty();
        assertThat(series.info().typicalYear()).isFalse();
        assertThat(series.airC(59 * 24)).as("29 February").isEqualTo(29);
        assertThat(series.coverage()).isEqualTo("2024-01-01 to 2024-12-31");
    }

    @Test
    void twoYearsInARowAreASeriesOfTheirDates() throws IOException, InputException {
        WeatherSeries series = read(plain("start", yearOfRows(2022, true) + yearOfRows(2023, true)));
        assertThat(series.size()).isEqualTo(2 * 8760);
        assertThat(series.info().typicalYear()).isFalse();
        assertThat(series.coverage()).isEqualTo("2022-01-01 to 2023-12-31");
    }

    @ParameterizedTest
    @CsvSource({"5.5, 2005-07-07T18:30:00Z", "-3.5, 2005-07-08T03:30:00Z", "0, 2005-07-08T00:00:00Z"})
    void zonesOfHalfHoursAreRead(String offset, String begin) throws IOException, InputException {
        assertThat(begin(read(epw(offset, 1, epwRow("2005,7,8,1,0", 1))))).isEqualTo(Instant.parse(begin));
        assertThat(begin(read(right(TMY3).replace("-7.0", offset)))).isEqualTo(Instant.parse(begin));
        assertThat(begin(read(right(PLAIN).replace("utc-offset: -7", "utc-offset: " + offset))))
                .isEqualTo(Instant.parse(begin));
    }

    @ParameterizedTest
    @CsvSource({"+5:30, 5.5", "-3:30, -3.5", "+05:45, 5.75", "5.75, 5.75", "-7, -7"})
    void plainOffsetsMayBeHoursAndMinutes(String written, double hours) throws IOException, InputException {
        assertThat(read(right(PLAIN).replace("utc-offset: -7", "utc-offset: " + written))
                        .info()
                        .utcOffsetHours())
                .isEqualTo(hours);
    }

    @Test
    void placesBelowTheSeaAreRead() throws IOException, InputException {
        assertThat(read(right(EPW).replace("340.0", "-86.0")).info().elevationM())
                .isEqualTo(-86);
        assertThat(read(right(TMY3).replace(",340\n", ",-86\n")).info().elevationM())
                .isEqualTo(-86);
        assertThat(read(right(PLAIN).replace("340 m", "-86 m")).info().elevationM())
                .isEqualTo(-86);
    }

    /** The minute field is written in several ways; the order of the rows within the hour counts. */
    @ParameterizedTest
    @CsvSource({"30, 60", "0, 30", "15, 45", "0, 0"})
    void epwOfHalfHours(String first, String second) throws IOException, InputException {
        WeatherSeries series = read(epw(
                "-7.0",
                2,
                epwRow("2005,7,8,23," + first, 1)
                        + epwRow("2005,7,8,23," + second, 2)
                        + epwRow("2005,7,8,24," + first, 3)
                        + epwRow("2005,7,8,24," + second, 4)
                        + epwRow("2005,7,9,1," + first, 5)));
        assertThat(series.info().stepSeconds()).isEqualTo(1800);
        assertThat(series.localStart(0)).isEqualTo(LocalDateTime.parse("2005-07-08T22:00"));
        assertThat(series.localStart(3)).isEqualTo(LocalDateTime.parse("2005-07-08T23:30"));
        assertThat(series.airC(4)).isEqualTo(5);
    }

    /** Names with units and dashes, names with Wh/m^2 for the same numbers, and short names are the same columns. */
    @ParameterizedTest
    @CsvSource({
        "'GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s)'",
        "'GHI (Wh/m^2),DNI (Wh/m^2),DHI (Wh/m^2),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wspd (m/s)'",
        "'GHI,DNI,DHI,DryBulb,DewPoint,RHum,Pressure,Wspd'"
    })
    void allWritingsOfTmy3NamesAreUnderstood(String names) throws IOException, InputException {
        WeatherSeries series = read("1,\"A, B\",XX,-7.0,33.4,-112,340\nDate (MM/DD/YYYY),Time (HH:MM)," + names
                + "\n7/8/2005,7:00,180,480,60,21.4,12.5,43,973,2.5\n");
        assertThat(series.ghiWm2(0)).isEqualTo(180);
        assertThat(series.dniWm2(0)).isEqualTo(480);
        assertThat(series.dhiWm2(0)).isEqualTo(60);
        assertThat(series.airC(0)).isEqualTo(21.4);
        assertThat(series.dewPointC(0)).isEqualTo(12.5);
        assertThat(series.pressurePa(0)).isEqualTo(97_300);
        assertThat(series.windMs(0)).isEqualTo(2.5);
    }

    @ParameterizedTest
    @CsvSource({"start, 06:00, 07:00, 0", "middle, 06:30, 07:30, 0.5", "end, 07:00, 08:00, 1"})
    void plainStampsStandWhereTheHeadingSays(String stamp, String first, String second, double share)
            throws IOException, InputException {
        WeatherSeries series =
                read(plain(stamp, plainRow("2005-07-08 " + first, 1) + plainRow("2005-07-08 " + second, 2)));
        assertThat(series.localStart(0)).isEqualTo(LocalDateTime.parse("2005-07-08T06:00"));
        assertThat(series.info().instantShare()).isEqualTo(share);
    }

    @ParameterizedTest
    @CsvSource({"10 s, 10", "5 min, 300", "1 h, 3600", "3 h, 10800"})
    void plainIntervalsHaveAnyOfThreeUnits(String interval, int seconds) throws IOException, InputException {
        WeatherSeries series = read(
                plain("start", plainRow("2005-07-08 06:00", 1)).replace("interval: 60 min", "interval: " + interval));
        assertThat(series.info().stepSeconds()).isEqualTo(seconds);
    }

    /** 13.9 °C at 25 °C and 50 %: psychrometric tables, from memory, to their last digit. */
    @Test
    void dewPointsAreMadeFromRelativeHumidityAndThatIsSaid() throws IOException, InputException {
        WeatherSeries plain = read(plainHeading("end")
                + "time,ghi W/m2,dni W/m2,dhi W/m2,air C,relative humidity %,wind m/s,pressure Pa\n"
                + "07-08 07:00,0,0,0,25,50,2,97300\n");
        assertThat(plain.dewPointC(0)).isCloseTo(13.9, within(0.05));
        assertThat(plain.notes()).containsExactly("the dew point was made from relative humidity in 1 of 1 rows");
        WeatherSeries epw = read(epw("-7.0", 1, epwRow("2005,7,8,1,0", 25).replace(",12.5,43,", ",99.9,50,")));
        assertThat(epw.dewPointC(0)).isCloseTo(13.9, within(0.05));
    }

    /** 898.75 hPa at 1000 m: U.S. Standard Atmosphere, 1976; the power law in use is within 0.1 % of it. */
    @Test
    void windAndPressureMayBeAbsentAndThatIsSaid() throws IOException, InputException {
        WeatherSeries series = read(plainHeading("end").replace("340", "1000")
                + "time,ghi W/m2,air C,dew point C\n07-08 07:00,180,20,12.5\n07-08 08:00,380,22,12.5\n");
        assertThat(series.pressurePa(1)).isCloseTo(89_875, within(90.0));
        assertThat(series.windMs(1)).isEqualTo(2);
        assertThat(series.notes())
                .containsExactly(
                        "no wind in the file: 2 m/s is assumed (guess)",
                        "no air pressure in the file: that of the standard atmosphere is used");
    }

    /** Rows 3 and 4 between 19.5 and 18 °C: a straight line gives 19 and 18.5. */
    @ParameterizedTest
    @CsvSource({EPW + ",99.9", TMY3 + ",-9900", PLAIN + ",''"})
    void shortGapsAreBridgedByAStraightLineAndThatIsSaid(String name, String missing)
            throws IOException, InputException {
        WeatherSeries series =
                read(right(name).replace(",19.0,", "," + missing + ",").replace(",18.5,", "," + missing + ","));
        assertThat(series.airC(2)).isCloseTo(19.0, within(1e-12));
        assertThat(series.airC(3)).isCloseTo(18.5, within(1e-12));
        assertThat(series.notes()).containsExactly("air temperature was missing in 2 of 9 rows and was interpolated");
    }

    @Test
    void aGapAtAnEndHoldsItsNeighbour() throws IOException, InputException {
        WeatherSeries series = read(right(PLAIN).replace(",20.0,", ",,").replace(",28.1,", ",,"));
        assertThat(series.airC(0)).isEqualTo(19.5);
        assertThat(series.airC(8)).isEqualTo(24.8);
    }

    @Test
    void aGapOfSixHoursIsBridgedAndOneOfSevenIsNot() throws IOException, InputException {
        String six = right(PLAIN)
                .replace("02:00,0,0,0,19.5", "02:00,0,0,0,")
                .replaceAll("0([3-7]:.*),[\\d.]+,12.5", "0$1,,12.5");
        assertThat(read(six).airC(4)).isCloseTo(20.0 + 4 * (24.8 - 20.0) / 7, within(1e-9));
        String seven = six.replace("24.8", "");
        assertThat(catchThrowableOfType(InputException.class, () -> read(seven)))
                .hasMessage(
                        "weather.csv:10: air temperature is missing here and in 6 more rows; a gap may last 6 h, over"
                                + " which a straight line is drawn.");
    }

    @ParameterizedTest
    @CsvSource({EPW + ",9999", TMY3 + ",-9900", PLAIN + ",''"})
    void lightThatIsMissingStaysUnknown(String name, String missing) throws IOException, InputException {
        WeatherSeries series = read(right(name)
                .replaceAll(",180(,1)?,480,60,", ",180$1," + missing + "," + missing + ",")
                .replaceAll(",390(,1)?,650,90,", "," + missing + "$1,650,90,"));
        assertThat(series.ghiWm2(6)).isEqualTo(180);
        assertThat(series.dniWm2(6)).isNaN();
        assertThat(series.dhiWm2(6)).isNaN();
        assertThat(series.ghiWm2(7)).isNaN();
        assertThat(series.dniWm2(7)).isEqualTo(650);
        assertThat(series.notes()).isEmpty();
    }

    /** Instruments read a few watts below zero at night. */
    @Test
    void lightALittleBelowNothingCountsAsNone() throws IOException, InputException {
        WeatherSeries series = read(right(PLAIN).replace("03:00,0,0,0", "03:00,-3.2,-0.4,-2"));
        assertThat(series.ghiWm2(2)).isZero();
        assertThat(series.dniWm2(2)).isZero();
        assertThat(series.dhiWm2(2)).isZero();
    }

    private WeatherSeries read(String text) throws IOException, InputException {
        return read(text, StandardCharsets.UTF_8);
    }

    private WeatherSeries read(String text, Charset charset) throws IOException, InputException {
        Path file = folder.resolve("weather.csv");
        Files.writeString(file, text, charset);
        return WeatherReader.read(file);
    }

    private static String right(String name) {
        return WrongScenarioTest.resource(name);
    }

    private static Instant begin(WeatherSeries series) {
        return Instant.ofEpochSecond(series.info().startEpochSecond());
    }

    private static String epw(String offset, int rowsPerHour, String rows) {
        return "LOCATION,Invented Flat,XX,XXX,invented,000000,33.40,-112.00," + offset + ",340.0\nDATA PERIODS,1,"
                + rowsPerHour + ",Data,Sunday, 1/ 1,12/31\n" + rows;
    }

    private static String epwRow(String time, int airC) {
        return time + ",?9?9?9?9E0," + airC + ",12.5,43,97300,0,0,390,0,0,0,0,0,0,0,90,2.5,1,1\n";
    }

    private static String tmy3(String rows) {
        return "000000,\"INVENTED FLAT\",XX,-7.0,33.400,-112.000,340\n"
                + "Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),Dry-bulb (C),Dew-point (C)\n" + rows;
    }

    private static String tmy3Row(String time, int airC) {
        return time + ",0," + airC + ",0\n";
    }

    private static String plainHeading(String stamp) {
        return "# latitude: 33.4\n# longitude: -112\n# elevation: 340 m\n# utc-offset: -7\n# interval: 60 min\n# stamp: "
                + stamp + "\n";
    }

    private static String plain(String stamp, String rows) {
        return plainHeading(stamp) + "time,ghi W/m2,dni W/m2,dhi W/m2,air C,dew point C,wind m/s,pressure Pa\n" + rows;
    }

    private static String plainRow(String time, int airC) {
        return time + ",0,0,0," + airC + ",0,2,97300\n";
    }

    /** Hourly rows of a year; the air has as many degrees as the day of the month. */
    private static String yearOfRows(int year, boolean withYear) {
        StringBuilder rows = new StringBuilder();
        LocalDateTime end = LocalDateTime.of(year + 1, 1, 1, 0, 0);
        for (LocalDateTime at = LocalDateTime.of(year, 1, 1, 0, 0); at.isBefore(end); at = at.plusHours(1)) {
            String stamp = at.toString().replace('T', ' ');
            rows.append(plainRow(withYear ? stamp : stamp.substring(5), at.getDayOfMonth()));
        }
        return rows.toString();
    }
}
