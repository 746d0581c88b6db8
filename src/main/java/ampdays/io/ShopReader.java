package ampdays.io;

import ampdays.io.ScenarioWalk.Entry;
import ampdays.scenario.PricedPart;
import ampdays.shop.Shop;
import ampdays.units.Nearest;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads the file in which a shop says who it is and what it asks. All that is wrong is told together. */
public final class ShopReader {
    private static final List<String> KEYS =
            List.of("name", "contact", "logo", "currency", "prices", "options", "tax", "valid");
    private static final Pattern SUM = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,2})?)(?![\\d.,])\\s*(.*)");
    private static final int LONGEST_TEXT = 2000;
    private static final int MOST_LINES = 12;
    private static final double HIGHEST_PRICE = 1e9;

    private final Path path;
    private final List<InputProblem> problems = new ArrayList<>();
    private final ScenarioWalk walk;

    private ShopReader(Path path) {
        this.path = path;
        this.walk = new ScenarioWalk(path.getFileName().toString(), problems);
    }

    /**
     * Reads a shop file and the logo that it names.
     *
     * @throws InputException with everything that is wrong in it
     * @throws IOException when it cannot be read at all
     */
    public static Shop read(Path path) throws IOException, InputException {
        return new ShopReader(path).read();
    }

    private Shop read() throws IOException, InputException {
        String label = path.getFileName().toString();
        String text;
        try {
            text = Files.readString(path, StandardCharsets.UTF_8);
        } catch (CharacterCodingException e) {
            throw new InputException(
                    List.of(new InputProblem(label, 0, 0, "The file is not UTF-8 text. Save it as UTF-8.")));
        }
        Optional<MappingNode> root = YamlText.map(label, text, problems);
        refuseIfWrong();
        Map<String, Entry> entries = walk.entries(root.orElseThrow());
        entries.forEach((key, entry) -> {
            if (!KEYS.contains(key)) {
                walk.problem(entry.key(), unknown(key, KEYS));
            }
        });
        String name = word(entries, "name");
        if (!entries.containsKey("name")) {
            problems.add(new InputProblem(label, 0, 0, "name is missing. Write a line like: name: Our workshop."));
        }
        String currency = word(entries, "currency");
        boolean priced = entries.containsKey("prices") || entries.containsKey("options");
        if (priced && !entries.containsKey("currency")) {
            problems.add(new InputProblem(
                    label, 0, 0, "currency is missing, but there are prices. Write a line like: currency: USD."));
        }
        Shop shop = new Shop(
                name,
                lines(entries.get("contact")),
                logo(entries.get("logo")),
                currency,
                unitPrices(entries.get("prices"), currency),
                prices(entries.get("options"), "options", currency),
                word(entries, "tax"),
                word(entries, "valid"));
        refuseIfWrong();
        return shop;
    }

    private void refuseIfWrong() throws InputException {
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private static String unknown(String key, List<String> known) {
        return "\"" + key + "\" is not known here."
                + Nearest.of(key, known)
                        .map(w -> " Did you mean " + w + "?")
                        .orElse(" Known: " + String.join(", ", known) + ".");
    }

    private String word(Map<String, Entry> entries, String key) {
        Entry entry = entries.get(key);
        return entry == null ? "" : word(entry.value(), key);
    }

    private String word(Node node, String what) {
        if (!(node instanceof ScalarNode scalar) || YamlText.text(scalar).isBlank()) {
            walk.problem(node, what + " is not a line of text. Write one line.");
            return "";
        }
        String text = YamlText.text(scalar).strip();
        if (text.length() > LONGEST_TEXT) {
            walk.problem(node, what + " has " + text.length() + " letters; at most " + LONGEST_TEXT + " are printed.");
        }
        return text;
    }

    private List<String> lines(Entry entry) {
        List<String> lines = new ArrayList<>();
        if (entry != null && entry.value() instanceof SequenceNode list) {
            list.getValue().forEach(line -> lines.add(word(line, "contact")));
        } else if (entry != null) {
            lines.addAll(word(entry.value(), "contact").lines().toList());
        }
        if (lines.size() > MOST_LINES) {
            walk.problem(
                    entry.value(), "contact has " + lines.size() + " lines; at most " + MOST_LINES + " are printed.");
        }
        return lines;
    }

    private Map<PricedPart, Double> unitPrices(Entry entry, String currency) {
        Map<PricedPart, Double> prices = new EnumMap<>(PricedPart.class);
        if (entry != null && entry.value() instanceof MappingNode map) {
            walk.entries(map).forEach((key, price) -> {
                Optional<PricedPart> item = PricedPart.of(key);
                if (item.isPresent()) {
                    price(price.value(), "prices." + key, currency).ifPresent(p -> prices.put(item.get(), p));
                } else {
                    walk.problem(price.key(), unknown(key, PricedPart.words()));
                }
            });
        } else if (entry != null) {
            walk.problem(entry.value(), "prices is not a list. Write lines like: battery: 650.");
        }
        return prices;
    }

    private Map<String, Double> prices(Entry entry, String what, String currency) {
        Map<String, Double> prices = new LinkedHashMap<>();
        if (entry != null && entry.value() instanceof MappingNode map) {
            walk.entries(map)
                    .forEach((key, price) ->
                            price(price.value(), what + "." + key, currency).ifPresent(p -> prices.put(key, p)));
        } else if (entry != null) {
            walk.problem(entry.value(), what + " is not a list. Write lines like: more solar: 1400.");
        }
        return prices;
    }

    /** A sum, with or without the file's currency behind it. */
    private Optional<Double> price(Node node, String what, String currency) {
        String text = node instanceof ScalarNode scalar ? YamlText.text(scalar).strip() : "";
        Matcher sum = SUM.matcher(text);
        if (!sum.matches()
                || !(sum.group(2).isEmpty() || sum.group(2).equals(currency))
                || Double.parseDouble(sum.group(1)) > HIGHEST_PRICE) {
            walk.problem(
                    node,
                    what + " \"" + text
                            + "\" is not a sum of money. Write a plain number, like 4850, without separators"
                            + (currency.isEmpty()
                                    ? "."
                                    : "; behind it may stand " + currency + ", the currency here."));
            return Optional.empty();
        }
        return Optional.of(Double.parseDouble(sum.group(1)));
    }

    private Optional<Path> logo(Entry entry) throws IOException {
        if (entry == null) {
            return Optional.empty();
        }
        String written = word(entry.value(), "logo");
        Optional<Path> file = within(written);
        if (file.isEmpty()) {
            walk.problem(
                    entry.value(),
                    "logo \"" + written
                            + "\" is no file in the folder of the shop file or below it. Write its path from"
                            + " there.");
            return Optional.empty();
        }
        Optional<String> complaint = LogoCheck.complaint(LogoCheck.read(file.get()));
        complaint.ifPresent(c -> walk.problem(entry.value(), "logo \"" + written + "\" " + c));
        return complaint.isPresent() ? Optional.empty() : file;
    }

    private Optional<Path> within(String written) throws IOException {
        try {
            Path folder = path.toAbsolutePath().getParent().toRealPath();
            Path target = folder.resolve(written);
            return !written.isEmpty()
                            && Files.isRegularFile(target)
                            && target.toRealPath().startsWith(folder)
                    ? Optional.of(target.toRealPath())
                    : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
