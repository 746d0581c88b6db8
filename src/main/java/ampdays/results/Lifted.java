package ampdays.results;

import java.util.Optional;

/**
 * What a better part would bring a design: the trip when, of the limits that a part can lift, the one that ruled
 * charging longest is lifted.
 *
 * @param ruling that limit; empty when no part of the van holds charging back
 * @param rulingHours how long it ruled, h; 0 where none did
 * @param next what rules then; empty when no part does
 * @param nextHours how long that rules then, h; 0 where none does
 * @param then the trip with the ruling limit lifted; the trip as it is where none ruled
 * @param words the same as text
 */
public record Lifted(
        Optional<Limit> ruling,
        double rulingHours,
        Optional<Limit> next,
        double nextHours,
        RunResult then,
        String words) {}
