package ampdays.report;

import ampdays.results.RunResult;
import ampdays.scenario.ScenarioFile;
import ampdays.study.Comparison.Option;
import ampdays.study.Verdict;
import ampdays.trip.Trip;
import ampdays.units.Wording;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The verdict for somebody who does not know the trade. */
final class PlainVerdict {
    private final Material material;
    private final List<RunResult> results;
    private final RunResult base;
    private final RunResult best;
    private final Optional<OtherTrips> otherTrips;

    PlainVerdict(Material material) {
        this.material = material;
        this.results = material.results();
        this.base = results.get(0);
        this.best = material.best().result();
        this.otherTrips = OtherTrips.of(material);
    }

    /** One sentence that can be read in ten seconds. */
    String answer() {
        long holding = results.stream().filter(RunResult::holds).count();
        int options = results.size() - 1;
        String trip = Say.number("for all %.0f days ", base.tripDays()) + when() + " at this place";
        if (base.holds() && Material.isSame(best, base)) {
            return "As it is, the van holds " + trip + nights(base) + "." + doubt().orElse(enough());
        }
        if (best.holds()) {
            return (holding == 1 && options > 1 ? "Of the " + options + " options, only " : "")
                    + Say.quoted(best.option())
                    + (holding == 1 ? " holds " : " holds best ")
                    + trip + nights(best) + "." + doubt().orElse("");
        }
        return (options > 1 ? "None of the " + options + " options holds " : "No option holds ") + trip + ". "
                + Wording.capital(name(best)) + " comes nearest: the bank " + fate(best) + nights(best) + ".";
    }

    /** What the answer itself has to say against it: that many other trips did not go so well. */
    private Optional<String> doubt() {
        return otherTrips
                .filter(trips -> !trips.isSure(best.option()))
                .map(trips -> " But " + trips.emptied(best.option()) + ".");
    }

    private String enough() {
        return " Nothing has to be added" + (otherTrips.isPresent() ? "." : " for this trip.");
    }

    /** What becomes of the others, and what a day asks for. */
    String reasons() {
        StringBuilder text = new StringBuilder();
        if (!best.holds() || doubt().isEmpty()) {
            otherTrips.ifPresent(trips -> text.append(Wording.capital(with(best) + trips.emptied(best.option())))
                    .append(". "));
        }
        if (!Material.isSame(best, base)) {
            text.append("As it is, the bank ")
                    .append(fate(base))
                    .append(nights(base))
                    .append(". ");
        }
        Optional<String> cheaper = CheaperWay.of(material);
        cheaper.ifPresent(way -> text.append(way).append(' '));
        text.append(balance());
        next().ifPresent(other -> text.append(" Next best is ")
                .append(Say.quoted(other.option()))
                .append(other.holds() ? ", which holds too" : ": the bank " + fate(other))
                .append(nights(other))
                .append('.'));
        cheapest()
                .filter(cheap -> cheaper.isEmpty())
                .ifPresent(cheap -> text.append(' ').append(cheap));
        return text.toString();
    }

    private Optional<RunResult> next() {
        List<RunResult> others = results.stream()
                .filter(r -> !Material.isSame(r, base) && !Material.isSame(r, best))
                .toList();
        return others.isEmpty() ? Optional.empty() : Optional.of(Verdict.best(others));
    }

    private Optional<String> cheapest() {
        CostSheet costs = new CostSheet(material);
        List<Option> priced = material.options().stream()
                .skip(1)
                .filter(option -> costs.total(option).isPresent())
                .toList();
        Optional<Option> least = priced.stream()
                .min(Comparator.comparingDouble(option -> costs.total(option).getAsDouble()));
        return priced.size() < 2 || priced.size() < material.options().size() - 1
                ? Optional.empty()
                : least.map(option -> Say.quoted(option.result().option()) + " costs least"
                        + (option.result().holds() ? "." : ", but it does not hold."));
    }

    private String balance() {
        Map<String, Double> askedWh = new TreeMap<>(base.servedWhByUse());
        base.unservedWhByUse().forEach((use, wh) -> askedWh.merge(use, wh, Double::sum));
        double totalWh = base.energy().servedWh() + base.energy().unservedWh();
        return askedWh.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .filter(most -> totalWh > 0)
                .map(most -> Say.number("A day asks for %.1f kWh, ", totalWh / base.tripDays() / 1000)
                        + Say.number("%.1f of them for ", most.getValue() / base.tripDays() / 1000)
                        + most.getKey()
                        + Say.number(
                                "; as it is, its sources bring %.1f kWh.",
                                base.energy().sourcesWh() / base.tripDays() / 1000))
                .orElse("");
    }

    private String when() {
        Trip trip = material.variant(material.base()).trip();
        LocalDate last = trip.start().plusDays(trip.days() - 1L);
        String first = month(trip.start());
        return trip.start().getMonth() == last.getMonth() ? "in " + first : "from " + first + " to " + month(last);
    }

    private static String month(LocalDate date) {
        return date.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private static String name(RunResult run) {
        return run.option().equals(ScenarioFile.BASE_NAME) ? "the van as it is" : Say.quoted(run.option());
    }

    private String with(RunResult run) {
        return Material.isSame(run, base) ? "" : "with " + Say.quoted(run.option()) + " ";
    }

    private static String fate(RunResult run) {
        return run.holds() ? "holds" : Verdict.fate(run);
    }

    private static String nights(RunResult run) {
        return run.nights() == 0
                ? ""
                : ", with a comfortable cabin on "
                        + (run.comfortableNights() == run.nights()
                                ? "all " + run.nights() + " nights"
                                : run.comfortableNights() + " of " + run.nights() + " nights");
    }
}
