package ampdays.sim;

/** Receives every step of a run; the kernel owns the loop. */
interface Recorder {
    /** Records nothing. */
    Recorder NONE = (m, state) -> {};

    /** Called at the end of every step with the bus and the state of the components. */
    void minute(Minute m, RunState state);
}
