package ampdays.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The list of sources in a proposal against docs/MODEL.md, which is kept beside the equations. */
class ModelSourcesTest {
    @Test
    void everySourceStandsInTheModelDocument() throws IOException {
        String document = Files.readString(Path.of("docs/MODEL.md"));
        assertThat(ModelSources.ALL).allSatisfy(model -> assertThat(document).contains(model.source()));
    }
}
