package ampdays.audit;

import ampdays.audit.Untold.Next;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What readings cannot tell apart, and which further ones would. */
final class Separation {
    private final List<String> names;
    private final List<Set<String>> states;

    private Separation(List<String> names, List<Set<String>> states) {
        this.names = names;
        this.states = new ArrayList<>(states);
    }

    /**
     * Groups of several names, and groups that are only known in sums.
     *
     * @param rows the readings in use
     * @param groups names that were only ever on together
     * @param unknown those of the groups whose draw is not known
     */
    static List<Untold> of(
            Readings readings, List<Reading> rows, List<List<String>> groups, List<List<String>> unknown) {
        List<String> names = Stream.concat(Stream.of(Draw.BASE), readings.appliances().stream())
                .toList();
        List<Set<String>> states = rows.stream().map(Reading::on).toList();
        Set<String> last = readings.rows().get(readings.rows().size() - 1).on();
        List<Untold> untold = new ArrayList<>();
        for (List<String> group : groups) {
            if (group.size() > 1 && !unknown.contains(group)) {
                untold.add(new Untold(group, new Separation(names, states).next(group, last)));
            }
        }
        if (!unknown.isEmpty()) {
            List<String> together = unknown.stream().flatMap(List::stream).toList();
            untold.add(new Untold(together, new Separation(names, states).next(together, last)));
        }
        return untold;
    }

    /** One switch after another from the last state, each the one that tells most; everything off when no switch helps. */
    private List<Next> next(List<String> wanted, Set<String> last) {
        List<Next> next = new ArrayList<>();
        Set<String> state = last;
        while (toldOf(wanted) < wanted.size()) {
            Optional<String> best = best(wanted, state);
            if (best.isPresent()) {
                state = toggled(state, best.get());
                next.add(new Next(best.get(), state.contains(best.get())));
            } else {
                state = Set.of();
                next.add(new Next(Draw.BASE, false));
            }
            states.add(state);
        }
        return next;
    }

    private Optional<String> best(List<String> wanted, Set<String> state) {
        int before = fit().rank();
        int most = -1;
        Optional<String> best = Optional.empty();
        for (String name : wanted) {
            if (!name.equals(Draw.BASE)) {
                states.add(toggled(state, name));
                int told = fit().rank() > before ? toldOf(wanted) : -1;
                states.remove(states.size() - 1);
                if (told > most) {
                    most = told;
                    best = Optional.of(name);
                }
            }
        }
        return best;
    }

    private static Set<String> toggled(Set<String> state, String name) {
        Set<String> changed = new LinkedHashSet<>(state);
        if (!changed.remove(name)) {
            changed.add(name);
        }
        return changed;
    }

    private int toldOf(List<String> wanted) {
        LeastSquares fit = fit();
        return (int)
                wanted.stream().filter(name -> fit.known(names.indexOf(name))).count();
    }

    /** Only the pattern matters here, not what was read. */
    private LeastSquares fit() {
        double[][] x = new double[states.size()][names.size()];
        double[] u = new double[states.size()];
        for (int i = 0; i < states.size(); i++) {
            u[i] = 1;
            for (int j = 0; j < names.size(); j++) {
                String name = names.get(j);
                x[i][j] = name.equals(Draw.BASE) || states.get(i).contains(name) ? 1 : 0;
            }
        }
        return new LeastSquares(x, new double[states.size()], u);
    }
}
