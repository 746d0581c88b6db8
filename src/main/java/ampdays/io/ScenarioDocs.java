package ampdays.io;

import ampdays.scenario.FailureKind;
import ampdays.scenario.Fallback;
import ampdays.scenario.Kind;
import ampdays.scenario.Mark;
import ampdays.scenario.Parameter;
import ampdays.scenario.Presets;
import ampdays.scenario.Registry;
import ampdays.scenario.Section;
import ampdays.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The reference page of the scenario file, from the registry. */
public final class ScenarioDocs {
    private static final String INTRO = """
            # The scenario file

            <!-- Generated from the registry of parameters; a test fails when it is stale. -->

            One file describes one talk with a client: the place and the days, the van, and the options to compare.
            `ampdays new FILE` writes a commented beginning, `ampdays check FILE` says what is wrong with a file and
            where, `ampdays run --show FILE` lists every value in force and where it came from.

            ```yaml
            EXAMPLE```

            ## How to write it

            - **A value** is `number unit`, `number unit (mark)` or `number unit (mark: note)`. The mark says where the
              number comes from: MARKS. A bare number where a unit is needed is an error. The decimal sign is a point;
              thousands have no comma.
            - **What is not said** comes from the section's `preset`, then from the default below, and keeps its mark.
            - **A component** (a section marked *optional*) is in the design when its section is in the file. Left out, or
              written as `none`, the design does not have it; `{}` takes all defaults.
            - **Names are yours**: loads, options and kinds of day appear in tables and charts as you write them. A name
              has no dot, because dots make paths such as `battery.capacity`.
            - **A timetable line** is `time vehicle, people` and holds until the next line; the last line of a day holds until
              the first of the next. The vehicle: `drive town`, `drive highway`, `idle`, `fast idle`, `park sun`,
              `park part-shade`, `park shade` (`open` is another word for `sun`); `hook-up` may follow when parked, and a
              shade may follow `idle`. Standing, `heading S` (N, NE … or degrees like `180°`) says where the front points,
              and `covered` or `uncovered` overrides `cabin.covers-used`. The people: `awake`, `asleep`, `aboard`, `away`;
              who drives is aboard. Times rise from line to line.
            - **Kinds of day**: with several timetables, the name of each stands once more under `trip` with its days: numbers
              (`1-5, 8`), dates (`2024-07-08 to 2024-07-10`), weekdays (`Mon-Fri`), or `others`. Every day has one kind.
              Where an option, a knob or `--set` makes the trip shorter than the scenario says, the days after its end are
              left out; a day that a longer trip adds needs a kind as well, such as `others`.
            - **Options** are named sets of changes on the design above them: paths with values, several at once. A whole section
              adds a component or changes what it says: `second-alternator: {preset: large frame, rated: 270 A}`; `none` takes a
              component or a load away: `loads.roof fan: none`. What the design itself says stays unless the option says
              otherwise, also under another preset. A timetable is replaced whole.
            - **Sweeps** are kept under names for `ampdays sweep FILE --named NAME`: paths with a range and its step, or a list, and
              `option: all` or names of options: `bank: {battery.capacity: 200..800 Ah step 100 Ah, option: all}`. With
              `together: yes` all change in step; else every combination is run.
            - **Failures** are kept under names for `ampdays failures FILE`: a named kind, changes by path, or both, from a moment
              until another: `regulator dies: {second-alternator: none, from: day 3 14:00}`, `late heat: {kind: heat wave, from:
              day 9, until: day 12}`. Without `until` it lasts to the end of the trip; a kind without `from` begins by its
              nature. Kinds: KINDS. A file without failures gets one of each kind.
            - **`use: FILE`** takes sections from a shared file in the scenario's folder or below it. What the scenario says
              itself goes first. A shared file has no `options`, `sweeps`, `failures` or `use` of its own.
            - **YAML** needs quotes around text with `: ` in it and, within braces, around text with a comma. Notes in round
              brackets are read without quotes as well, although an editor may complain; `(measured; two readings)` pleases
              both. Spaces indent, never tabs. The first line of the example tells editors where the schema is.

            """;

    private ScenarioDocs() {}

    /**
     * The page.
     *
     * @param example text of the scenario shown at its top
     */
    public static String markdown(String example) {
        StringBuilder page = new StringBuilder();
        page.append(INTRO.replace("MARKS", String.join(", ", Mark.labels()))
                .replace("KINDS", String.join("; ", FailureKind.labels()))
                .replace("EXAMPLE", example));
        page.append("## Sections\n");
        Registry.sections().forEach(section -> section(page, section));
        presets(page, PresetReader.presets());
        units(page);
        return page.toString();
    }

    private static void section(StringBuilder page, Section section) {
        String presence = switch (section.presence()) {
            case REQUIRED -> " (required)";
            case DEFAULTED -> "";
            case COMPONENT -> " (optional)";
        };
        page.append("\n### ")
                .append(section.name().isEmpty() ? "At the top" : section.name())
                .append(section.name().isEmpty() ? "" : presence)
                .append("\n\n")
                .append(section.help())
                .append("\n\n| key | value | if not said | what it is |\n|---|---|---|---|\n");
        for (Parameter parameter : section.parameters()) {
            page.append("| `")
                    .append(key(section, parameter))
                    .append("` | ")
                    .append(kind(parameter.kind()))
                    .append(" | ")
                    .append(fallback(section, parameter))
                    .append(" | ")
                    .append(parameter.help())
                    .append(" |\n");
        }
    }

    private static String key(Section section, Parameter parameter) {
        String below = section.name().isEmpty()
                ? parameter.path()
                : parameter.path().substring(section.name().length() + 1);
        return below.startsWith("*.") ? below.substring(2) : below.replace("*", "NAME");
    }

    static String kind(Kind kind) {
        if (kind instanceof Kind.Measured measured) {
            String titles = measured.dimensions().stream()
                    .map(d -> d.title().replaceFirst("^an? ", ""))
                    .collect(Collectors.joining(" or "));
            return titles + ", " + measured.range().replaceFirst("^from ", "")
                    + (measured.word().isEmpty() ? "" : ", or `" + measured.word() + "`");
        }
        if (kind instanceof Kind.Money money) {
            return "amount of money, 0 to " + Dimension.NUMBER.show(money.high());
        }
        if (kind instanceof Kind.Count count) {
            return "whole number, " + count.low() + " to " + count.high();
        }
        if (kind instanceof Kind.Choice choice) {
            return choice.words().stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
        }
        if (kind instanceof Kind.Date) {
            return "date";
        }
        if (kind instanceof Kind.Zone) {
            return "time zone";
        }
        if (kind instanceof Kind.Timetable) {
            return "list of lines";
        }
        if (kind instanceof Kind.SpeedPoints) {
            return "points like `" + Kind.SpeedPoints.EXAMPLE + "`";
        }
        if (kind instanceof Kind.ChargeLimits) {
            return "temperatures with charge limits";
        }
        if (kind instanceof Kind.ConductorSize) {
            return "conductor size in AWG or mm²";
        }
        if (kind instanceof Kind.PreCool) {
            return "surplus sun, driving, clock times";
        }
        return kind instanceof Kind.When ? "occasion, clock times" : "text";
    }

    private static String fallback(Section section, Parameter parameter) {
        String mark = " (" + parameter.mark().label() + ")";
        if (parameter.fallback() instanceof Fallback.Fixed fixed) {
            return fixed.text() + mark;
        }
        if (parameter.fallback() instanceof Fallback.Derived derived) {
            return derived.rule() + mark;
        }
        if (parameter.fallback() instanceof Fallback.Absent) {
            return "";
        }
        boolean byPreset = PresetReader.presets().of(section.name()).stream()
                .anyMatch(p -> p.written().containsKey(parameter.path()));
        return byPreset ? "from the preset" : "**required**";
    }

    private static void presets(StringBuilder page, Presets presets) {
        page.append("""

                ## Presets

                Generic classes, no product. Replace what you know better. In square brackets: the usual range of the class.
                `ampdays presets KIND NAME` shows one of them with its notes and the lines for a scenario.

                | section | preset | about | values |
                |---|---|---|---|
                """);
        for (String section : presets.bySection().keySet()) {
            for (Presets.Preset preset : presets.of(section)) {
                List<String> values = new ArrayList<>();
                preset.values()
                        .forEach((path, value) -> values.add(path.substring(section.length() + 1) + " " + value.text()
                                + range(preset, path)
                                + value.mark().map(m -> " (" + m.label() + ")").orElse("")));
                page.append("| ")
                        .append(section)
                        .append(" | ")
                        .append(preset.name())
                        .append(" | ")
                        .append(preset.about())
                        .append(" | ")
                        .append(String.join("; ", values))
                        .append(" |\n");
            }
        }
    }

    private static String range(Presets.Preset preset, String path) {
        String range = preset.range(path);
        return range.isEmpty() ? "" : " [" + range + "]";
    }

    private static void units(StringBuilder page) {
        page.append("""

                ## Units

                Spelling counts: `kW`, not `KW`. Also read: `m2` for m², `ohm` for Ω, `C` and `F` for °C and °F,
                `BTU/hr`, `sq ft` and the like.

                | what | units |
                |---|---|
                """);
        for (Dimension dimension : Dimension.values()) {
            if (dimension != Dimension.NUMBER) {
                page.append("| ")
                        .append(dimension.title().replaceFirst("^an? ", ""))
                        .append(" | ")
                        .append(String.join(", ", dimension.symbols()))
                        .append(" |\n");
            }
        }
    }
}
