package ampdays.chart.jfree;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The typeface of every picture, taken from a library's jar so that pictures do not depend on the machine.
 *
 * <p>A Java runtime on a machine without fonts refuses to make even a font from a file, because it first asks the
 * system for its list of fonts. So the font and a list that names only this font are written to the folder for
 * temporary files and the runtime is pointed to them, which works as long as nothing in this process has used a font
 * before. Both are removed when the process ends. Only Linux needs the list; the others always have fonts.
 */
final class Typeface {
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FONT_LIST_PROPERTY = "sun.awt.fontconfig";

    private final Font regular;

    private Typeface(Font regular) {
        this.regular = regular;
    }

    static Typeface load() throws IOException {
        try {
            return unpack();
        } catch (IOException e) {
            throw new IOException(
                    "Cannot draw charts: their typeface could not be put into " + System.getProperty("java.io.tmpdir")
                            + ", the folder for temporary files (" + e.getMessage() + ").",
                    e);
        }
    }

    private static Typeface unpack() throws IOException {
        Path folder = Files.createTempDirectory("ampdays-font");
        folder.toFile().deleteOnExit();
        Path font = folder.resolve("LiberationSans-Regular.ttf");
        font.toFile().deleteOnExit();
        try (InputStream in = Typeface.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IOException("the library pdfbox lacks " + RESOURCE);
            }
            Files.copy(in, font);
        }
        if (System.getProperty("os.name").startsWith("Linux") && System.getProperty(FONT_LIST_PROPERTY) == null) {
            Path list = folder.resolve("fontconfig.properties");
            list.toFile().deleteOnExit();
            Files.writeString(list, fontList(font), StandardCharsets.ISO_8859_1);
            System.setProperty(FONT_LIST_PROPERTY, list.toString());
        }
        try {
            return new Typeface(Font.createFont(Font.TRUETYPE_FONT, font.toFile()));
        } catch (FontFormatException e) {
            throw new IOException("the typeface of the library pdfbox is broken", e);
        }
    }

    Font plain(double size) {
        return regular.deriveFont(Font.PLAIN, (float) size);
    }

    Font bold(double size) {
        return regular.deriveFont(Font.BOLD, (float) size);
    }

    /** Every name that the runtime knows for a font of the machine stands for this one. */
    private static String fontList(Path font) {
        StringBuilder list = new StringBuilder("version=1\nsequence.allfonts=default\n");
        for (String name : new String[] {"serif", "sansserif", "monospaced", "dialog", "dialoginput"}) {
            for (String style : new String[] {"plain", "bold", "italic", "bolditalic"}) {
                list.append(name).append('.').append(style).append(".default=LiberationSans\n");
            }
        }
        return list.append("filename.LiberationSans=")
                .append(escaped(font.toString()))
                .append('\n')
                .toString();
    }

    /** Property files take a backslash and what is not Latin as an escape. */
    private static String escaped(String path) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < path.length(); i++) {
            char c = path.charAt(i);
            if (c == '\\') {
                text.append("\\\\");
            } else if (c < 128) {
                text.append(c);
            } else {
                text.append("\\u").append(Integer.toHexString(0x10000 | c).substring(1));
            }
        }
        return text.toString();
    }
}
