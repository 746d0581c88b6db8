package ampdays.report.page;

import ampdays.report.Block.Picture;
import ampdays.report.Proposal;
import java.util.Map;
import java.util.Optional;

/**
 * What the template is filled with.
 *
 * @param logo the shop's logo as an address that holds its bytes
 * @param style the style sheet
 * @param drawings SVG by the name of the picture; empty for a PDF, which draws its charts itself
 */
public record PageModel(
        Proposal proposal, Optional<String> logo, String style, Map<String, String> drawings, boolean pdf) {
    /** The drawing of a picture. */
    public String drawing(Picture picture) {
        return drawings.get(picture.name());
    }
}
