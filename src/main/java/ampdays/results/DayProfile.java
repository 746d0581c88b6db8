package ampdays.results;

import java.time.LocalDate;
import java.util.Map;

/**
 * One day by the hour.
 *
 * @param name what the day stands for, such as "ordinary day"
 * @param sourceW mean power of each source in each hour of the clock as it reaches the bus, W
 * @param useW mean power of each use, W, as positive numbers; "unserved" among them where there is any
 * @param socAtQuarter state of charge at the end of each quarter of an hour, 0 to 1
 * @param outsideC mean outside air of each hour, °C
 * @param cabinC mean cabin air of each hour, °C
 * @param asleep share of each hour in which people sleep, 0 to 1
 */
public record DayProfile(
        String name,
        LocalDate date,
        Map<String, Series> sourceW,
        Map<String, Series> useW,
        Series socAtQuarter,
        Series outsideC,
        Series cabinC,
        Series asleep) {}
