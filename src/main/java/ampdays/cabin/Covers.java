package ampdays.cabin;

import ampdays.units.Require;

/**
 * Covers of the windows.
 *
 * @param used when they are on, while the timetable does not say
 * @param resistanceM2KW thermal resistance they add, m² K/W; 0 without covers
 * @param passShare share of the windows' solar heat that gets past them, 0 to 1; 1 without covers
 */
public record Covers(Use used, double resistanceM2KW, double passShare) {
    /** When covers are on. */
    public enum Use {
        /** While the vehicle stands. */
        PARKED,
        /** While it stands and nobody in it is awake. */
        ASLEEP_AND_AWAY,
        /** Driving too, as behind a curtain that parts the cab off. */
        ALWAYS
    }

    public Covers {
        Require.notNegative("resistance of the covers", resistanceM2KW);
        Require.share("pass of the covers", passShare);
    }
}
