package ampdays.log;

import java.time.Instant;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/** Local times of a log to instants, also on days on which the clocks change. */
final class LogClock {
    private final ZoneRules rules;
    private long fixedFrom = 1;
    private long fixedTo;
    private long fixedOffset;
    private boolean missing;

    LogClock(ZoneId zone) {
        rules = zone.getRules();
    }

    /**
     * The instant of a local time. Of two that an hour set back gives, the first one that does not lie before the row
     * before; a time that a set forward leaves out counts as if the clock had not been changed.
     *
     * @param localSecond seconds since 1970 as if the local time were UTC
     * @param before instant of the row before
     */
    long instant(long localSecond, long before) {
        missing = false;
        if (localSecond >= fixedFrom && localSecond < fixedTo) {
            return localSecond - fixedOffset;
        }
        ZoneOffsetTransition last = rules.previousTransition(Instant.ofEpochSecond(localSecond + 86_400));
        if (last == null) {
            return localSecond
                    - rules.getOffset(Instant.ofEpochSecond(localSecond)).getTotalSeconds();
        }
        long early = localSecond - last.getOffsetBefore().getTotalSeconds();
        long late = localSecond - last.getOffsetAfter().getTotalSeconds();
        boolean earlyHolds = early < last.toEpochSecond();
        boolean lateHolds = late >= last.toEpochSecond();
        missing = !earlyHolds && !lateHolds;
        if (earlyHolds && lateHolds) {
            return early >= before ? early : late;
        }
        remember(localSecond, last);
        return earlyHolds || missing ? early : late;
    }

    /** Whether the last time asked for does not exist in the zone. */
    boolean wasMissing() {
        return missing;
    }

    /** Times more than a day from any change share its offset. */
    private void remember(long localSecond, ZoneOffsetTransition last) {
        ZoneOffsetTransition next = rules.nextTransition(last.getInstant());
        fixedOffset = last.getOffsetAfter().getTotalSeconds();
        fixedFrom = last.toEpochSecond() + fixedOffset + 86_400;
        fixedTo = next == null ? localSecond + 86_400 : next.toEpochSecond() + fixedOffset - 86_400;
    }
}
