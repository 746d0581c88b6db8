package ampdays.io;

import java.util.List;

/** A name that a person gave as a key of YAML. */
final class YamlKey {
    private static final List<String> WORDS_OF_YAML =
            List.of("yes", "no", "on", "off", "true", "false", "null", "none");

    private YamlKey() {}

    /** The name, in quotes where YAML needs them. */
    static String of(String name) {
        boolean plain = name.matches("\\p{L}[\\p{L}\\p{N} ./_-]*") && !WORDS_OF_YAML.contains(name);
        return plain ? name : "'" + name.replace("'", "''") + "'";
    }
}
