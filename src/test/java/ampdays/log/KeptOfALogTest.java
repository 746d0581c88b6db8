package ampdays.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ampdays.log.LogMap.Column;
import ampdays.log.LogMap.Time;
import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is kept of a log while it is read, counted object by object, does not grow with its rows; by logic. */
class KeptOfALogTest {
    private static final long START = 1_783_468_800L;
    private static final int DAY = 86_400;

    /** Everything that is kept of a log with all kinds of columns and, now and then, each kind of fault. */
    private static long kept(int seconds, int stepS) throws IllegalAccessException {
        List<Column> columns = List.of(
                column(Signal.BANK_VOLTAGE, null),
                column(Signal.BANK_CURRENT, null),
                column(Signal.STATE_OF_CHARGE, null),
                column(Signal.ENERGY_OUT, CounterKind.LIFETIME),
                column(Signal.CHARGE_IN, CounterKind.PER_ROW));
        LogMap map = new LogMap(new Time("t", "", TimeForm.EPOCH_SECONDS, ZoneOffset.UTC, false), "", true, columns);
        LogBuilder builder = new LogBuilder(map, Map.of("", (double) stepS));
        for (int row = 0; row < seconds / stepS; row++) {
            long at = START + (long) row * stepS;
            fault(builder, row, at);
            builder.row("", row, Long.toString(at), new double[] {13, row % 7 - 3, 0.5, row, 0.01});
        }
        return Kept.by(builder);
    }

    private static void fault(LogBuilder builder, int row, long at) {
        switch (row % 200) {
            case 10 -> builder.headingAgain(row);
            case 20 -> builder.shortRow(row, 2);
            case 30 -> builder.longRow(row, 9);
            case 40 -> builder.unread("", 1, row, "abc");
            case 50 -> builder.unknownDevice("other");
            case 60 -> builder.row("", row, "soon", new double[5]);
            case 70 -> builder.row("", row, Long.toString(at - 7200), new double[5]);
            case 80 -> builder.row("", row, Long.toString(at + 9 * DAY), new double[5]);
            case 90 -> builder.row("", row, Long.toString(at), new double[] {999, 9999, 7, -1, -1});
            default -> {}
        }
    }

    private static Column column(Signal signal, CounterKind counter) {
        return new Column(signal, signal.label(), "", 1, 0, "", true, counter);
    }

    /** By logic: sixty times the rows keep as much, but for the digits of what is said; only more minutes keep more. */
    @Test
    void growsWithMinutesAndNotWithRows() throws IllegalAccessException {
        long eachMinute = kept(2 * DAY, 60);
        assertThat(kept(2 * DAY, 1)).isCloseTo(eachMinute, within(200L));
        assertThat(kept(8 * DAY, 60)).isGreaterThan(2 * eachMinute);
    }

    /** Counts objects, places of arrays and collections, and letters; what the Java library made counts as one. */
    private static final class Kept {
        private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

        static long by(Object root) throws IllegalAccessException {
            return new Kept().count(root);
        }

        private long count(Object object) throws IllegalAccessException {
            if (object == null || !seen.add(object)) {
                return 0;
            }
            if (object instanceof String text) {
                return text.length();
            }
            if (object instanceof Map<?, ?> map) {
                return all(map.keySet()) + all(map.values());
            }
            if (object instanceof Collection<?> collection) {
                return all(collection);
            }
            if (object.getClass().isArray()) {
                long sum = Array.getLength(object);
                for (int i = 0; object instanceof Object[] && i < Array.getLength(object); i++) {
                    sum += count(Array.get(object, i));
                }
                return sum;
            }
            return object.getClass().getName().startsWith("java.") ? 1 : fields(object);
        }

        private long all(Collection<?> objects) throws IllegalAccessException {
            long sum = objects.size();
            for (Object object : objects) {
                sum += count(object);
            }
            return sum;
        }

        private long fields(Object object) throws IllegalAccessException {
            long sum = 1;
            for (Field field : object.getClass().getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    sum += count(field.get(object));
                }
            }
            return sum;
        }
    }
}
