package ampdays.sim;

import static org.assertj.core.api.Assertions.assertThat;

import ampdays.io.SummaryJson;
import ampdays.results.RunResult;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Same inputs, same bytes. Source: definition of a deterministic program. */
class SameBytesTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void twoRunsAreEqual(long seed) throws IOException {
        RunResult one = RandomVan.any(seed).run(RandomVan.weather(seed));
        RunResult other = RandomVan.any(seed).run(RandomVan.weather(seed));
        assertThat(other).isEqualTo(one);
        assertThat(json(other)).isEqualTo(json(one));
    }

    /** A plan is not used up by a run, and one run leaves nothing behind for the next. */
    @ParameterizedTest
    @ValueSource(longs = {6, 7})
    void aPlanMayBeRunAgain(long seed) throws IOException {
        RunPlan plan = RandomVan.any(seed).plan(RandomVan.weather(seed));
        RunResult first = Simulator.run(plan);
        RandomVan.any(seed + 1).run(RandomVan.weather(seed));
        assertThat(json(Simulator.run(plan))).isEqualTo(json(first));
    }

    private static String json(RunResult result) throws IOException {
        StringWriter writer = new StringWriter();
        SummaryJson.write(writer, "scenario.yaml", "test", List.of(result), Map.of());
        return writer.toString();
    }
}
