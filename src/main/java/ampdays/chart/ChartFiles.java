package ampdays.chart;

import ampdays.results.WholeFile;
import java.io.IOException;
import java.nio.file.Path;

/** Where pictures go: an SVG and a PNG of the same name, each whole or absent. */
public final class ChartFiles {
    private ChartFiles() {}

    public static void writeSvg(Path folder, String baseName, String svg) throws IOException {
        WholeFile.writeText(folder.resolve(baseName + ".svg"), svg);
    }

    public static void writePng(Path folder, String baseName, byte[] png) throws IOException {
        WholeFile.write(folder.resolve(baseName + ".png"), out -> out.write(png));
    }
}
