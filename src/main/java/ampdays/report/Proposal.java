package ampdays.report;

import ampdays.report.Block.Picture;
import ampdays.shop.Shop;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a client is handed: one page to decide by, then what it rests on.
 *
 * @param title of the scenario
 * @param reference the line that says for whom it is; may be empty
 * @param date as it is printed; may be empty
 * @param program its name and version
 * @param front the page for the client
 * @param technical what it rests on; empty in the short form
 * @param closing cautions
 */
public record Proposal(
        String title,
        String reference,
        String date,
        String program,
        Optional<Shop> shop,
        Part front,
        List<Part> technical,
        Part closing) {
    public Proposal {
        technical = List.copyOf(technical);
    }

    /** All parts in the order of reading. */
    public List<Part> parts() {
        return Stream.of(Stream.of(front), technical.stream(), Stream.of(closing))
                .flatMap(s -> s)
                .toList();
    }

    public List<Picture> pictures() {
        return parts().stream()
                .flatMap(part -> part.blocks().stream())
                .filter(Picture.class::isInstance)
                .map(Picture.class::cast)
                .toList();
    }

    /** What stands at the head of each page. */
    public String runningHead() {
        return reference.isEmpty() ? title : title + " · " + reference;
    }
}
