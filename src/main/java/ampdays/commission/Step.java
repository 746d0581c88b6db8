package ampdays.commission;

import java.util.List;

/**
 * One step of the work.
 *
 * @param how to take it
 * @param caution what may hurt; empty for nothing beyond the cautions of the whole sheet
 */
public record Step(String title, String how, String caution, List<Item> items) {
    public Step {
        items = List.copyOf(items);
    }
}
