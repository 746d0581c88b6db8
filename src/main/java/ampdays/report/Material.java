package ampdays.report;

import ampdays.results.RunResult;
import ampdays.scenario.Presets;
import ampdays.scenario.ScenarioFile;
import ampdays.scenario.Values;
import ampdays.scenario.Variant;
import ampdays.shop.Shop;
import ampdays.study.Comparison;
import ampdays.study.Comparison.Option;
import ampdays.study.Verdict;
import ampdays.units.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a proposal is made from.
 *
 * @param presets the generic classes, for their usual ranges
 * @param reference the line that says for whom it is; may be empty
 * @param program its name and version
 * @param inputs the files that were read
 * @param studies what was looked into beside the comparison
 */
public record Material(
        ScenarioFile file,
        Comparison comparison,
        Presets presets,
        Optional<Shop> shop,
        String reference,
        Optional<LocalDate> date,
        UnitSystem units,
        String program,
        List<InputFile> inputs,
        Studies studies) {
    public Material {
        inputs = List.copyOf(inputs);
    }

    /** A file that was read, and the digest of its bytes (SHA-256, hexadecimal). */
    public record InputFile(String what, String name, String digest) {}

    List<Option> options() {
        return comparison.options();
    }

    List<RunResult> results() {
        return options().stream().map(Option::result).toList();
    }

    Option base() {
        return options().get(0);
    }

    Option best() {
        return best(comparison);
    }

    /**
     * The option that is recommended: the base design where it holds and no other one sleeps better; else of those that
     * hold the one that serves the sleepers best, or the nearest to it.
     */
    public static Option best(Comparison comparison) {
        Option base = comparison.options().get(0);
        List<RunResult> results =
                comparison.options().stream().map(Option::result).toList();
        RunResult asItIs = base.result();
        if (asItIs.holds()
                && results.stream().noneMatch(r -> r.holds() && r.comfortableNights() > asItIs.comfortableNights())) {
            return base;
        }
        return comparison.options().get(results.indexOf(Verdict.best(results)));
    }

    boolean isBase(Option option) {
        return isSame(option.result(), base().result());
    }

    boolean isBest(Option option) {
        return isSame(option.result(), best().result());
    }

    static boolean isSame(RunResult one, RunResult other) {
        return one.option().equals(other.option());
    }

    Values values(Option option) {
        return file.values(option.result().option()).orElseThrow();
    }

    Variant variant(Option option) {
        return file.scenario().variant(option.result().option()).orElseThrow();
    }
}
