package ampdays.cooling;

/** Published sets of biquadratic curves of capacity and input against temperatures. */
public enum CoolingCurves {
    /** Set A, a window unit. */
    WINDOW,
    /** Set B, a packaged unit. */
    PACKAGED
}
