package ampdays.io;

import ampdays.results.Lifted;
import ampdays.results.Sizing;
import ampdays.results.Sizing.Tried;
import ampdays.results.SweepTable;
import ampdays.results.WholeFile;
import ampdays.scenario.Grid;
import ampdays.scenario.Knob;
import ampdays.scenario.Parts;
import ampdays.scenario.ScenarioFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** What a question of size leaves: its answer, and the values that were run as the table of a sweep over them. */
public final class SizeFiles {
    private final Path folder;
    private final ScenarioFile file;
    private final Knob knob;
    private final SortedSet<String> uses;

    /** @param uses names of loads and coolers that have columns */
    public SizeFiles(Path folder, ScenarioFile file, Knob knob, SortedSet<String> uses) {
        this.folder = folder;
        this.file = file;
        this.knob = knob;
        this.uses = uses;
    }

    /**
     * Writes the files.
     *
     * @param lifted what a better part would bring the design that comes nearest; empty when the goals are reached
     * @param inputs a fingerprint of everything else that the results come from
     * @return the table, as charts need it
     */
    public SweepTable write(String scenario, String title, Sizing sizing, Optional<Lifted> lifted, String inputs)
            throws IOException, InputException {
        Knob run = new Knob(
                knob.path(),
                knob.unit(),
                sizing.tried().stream().map(Tried::value).toList());
        Grid grid = new Grid(List.of(new Knob(Knob.OPTION, "", List.of(sizing.option())), run), false);
        List<SweepFiles.Line> lines = new ArrayList<>();
        SweepTable table;
        try (SweepFiles files = new SweepFiles(folder, file, grid, uses, SweepJson.of(scenario, title, grid, inputs))) {
            for (int row = 0; row < sizing.tried().size(); row++) {
                Tried tried = sizing.tried().get(row);
                List<Integer> places = List.of(0, row);
                Parts parts = Parts.of(grid.values(file, places));
                lines.add(files.line(row, places, parts, tried.result(), tried.problem()));
            }
            files.writeWhole(lines);
            table = files.table();
        }
        WholeFile.writeText(folder.resolve("size.json"), text -> SizeJson.write(text, scenario, title, sizing, lifted));
        return table;
    }
}
