package ampdays.report.page;

import ampdays.report.Block;
import ampdays.report.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Headings with the block that they are of, so that a page never ends in a heading. Test: {@code RunTest}.
 *
 * @param isKept whether all of it stands on one page, as long as it is no longer than that
 */
public record Run(List<Block> blocks, boolean isKept) {
    /** Longer tables would leave too much of a page empty. */
    private static final int MOST_ROWS = 24;

    public Run {
        blocks = List.copyOf(blocks);
    }

    /** The blocks of a part in their order; its own heading belongs to the first run. */
    public static List<Run> of(Part part) {
        List<Run> runs = new ArrayList<>();
        List<Block> open = new ArrayList<>();
        for (Block block : part.blocks()) {
            open.add(block);
            if (!(block instanceof Block.Heading)) {
                runs.add(new Run(open, open.size() > 1 ? isShort(block) : isWhole(block)));
                open.clear();
            }
        }
        if (!open.isEmpty()) {
            runs.add(new Run(open, true));
        }
        return runs;
    }

    private static boolean isShort(Block block) {
        return !(block instanceof Block.Sheet sheet && sheet.rows().size() > MOST_ROWS);
    }

    /** Lists without a heading of their own may go on over the page. */
    private static boolean isWhole(Block block) {
        return isShort(block) && !(block instanceof Block.Points || block instanceof Block.Beside);
    }
}
