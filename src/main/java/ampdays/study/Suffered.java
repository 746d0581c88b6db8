package ampdays.study;

import ampdays.results.FailureOutcome;

/**
 * A failure that was simulated.
 *
 * @param outcome without what would make it good
 * @param without the trip from its moment on without it, without its minutes
 */
record Suffered(FailureCase place, FailureOutcome outcome, Aftermath without) {}
