package ampdays.report;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part of the document with a heading of its own.
 *
 * @param id unique in the document, of small letters and hyphens
 */
public record Part(String id, String heading, List<Block> blocks) {
    public Part {
        blocks = List.copyOf(blocks);
    }

    static Part of(String id, String heading, Stream<? extends Block> blocks) {
        return new Part(id, heading, List.copyOf(blocks.toList()));
    }
}
