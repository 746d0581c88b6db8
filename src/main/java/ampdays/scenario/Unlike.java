package ampdays.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What may be answered otherwise by the values of one design than by those of another. Where both say something at the same
 * paths, only what is said otherwise there and what a preset named otherwise gives.
 *
 * @param paths single ones
 * @param sections all of whose paths may be answered otherwise
 */
record Unlike(Set<String> paths, Set<String> sections) {
    /** By what each of two designs says, with the same presets to choose from or with others. */
    static Unlike of(Map<String, Value> one, Map<String, Value> other, boolean samePresets) {
        return (samePresets ? byPath(one, other) : Optional.<Unlike>empty())
                .orElseGet(() -> bySection(one, other, samePresets));
    }

    /** Whether any of some paths may be answered otherwise. */
    boolean isAnyOf(Set<String> lookedUp) {
        return !Collections.disjoint(lookedUp, paths)
                || (!sections.isEmpty()
                        && lookedUp.stream().map(Values::section).anyMatch(sections::contains));
    }

    /** With one path more. */
    Unlike and(String path) {
        Set<String> more = new HashSet<>(paths);
        more.add(path);
        return new Unlike(more, sections);
    }

    /** Empty where not the same paths are said in the same order. */
    private static Optional<Unlike> byPath(Map<String, Value> one, Map<String, Value> other) {
        Set<String> paths = new HashSet<>();
        Set<String> sections = new HashSet<>();
        Iterator<Map.Entry<String, Value>> theirs = other.entrySet().iterator();
        for (Map.Entry<String, Value> mine : one.entrySet()) {
            String path = mine.getKey();
            Map.Entry<String, Value> their = theirs.hasNext() ? theirs.next() : null;
            if (their == null || !path.equals(their.getKey())) {
                return Optional.empty();
            }
            if (!Objects.equals(mine.getValue(), their.getValue())) {
                if (path.endsWith(Values.PRESET)) {
                    sections.add(Values.section(path));
                } else {
                    paths.add(path);
                }
            }
        }
        return theirs.hasNext() ? Optional.empty() : Optional.of(new Unlike(paths, sections));
    }

    private static Unlike bySection(Map<String, Value> one, Map<String, Value> other, boolean samePresets) {
        Map<String, List<Map.Entry<String, Value>>> mine = sections(one);
        Map<String, List<Map.Entry<String, Value>>> theirs = sections(other);
        Set<String> unlike = new HashSet<>(mine.keySet());
        unlike.addAll(theirs.keySet());
        if (samePresets) {
            unlike.removeIf(section -> Objects.equals(mine.get(section), theirs.get(section)));
        }
        return new Unlike(Set.of(), unlike);
    }

    /** What is said of each section, in the order written. */
    private static Map<String, List<Map.Entry<String, Value>>> sections(Map<String, Value> said) {
        Map<String, List<Map.Entry<String, Value>>> lists = new HashMap<>();
        for (Map.Entry<String, Value> entry : said.entrySet()) {
            lists.computeIfAbsent(Values.section(entry.getKey()), section -> new ArrayList<>())
                    .add(entry);
        }
        return lists;
    }
}
