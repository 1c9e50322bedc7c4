package closehand.measure.practice;

import java.util.Optional;

/**
 * What the limits and stops of a day need to know of pointing.
 *
 * @param at when, as an ISO date and time with zone
 * @param stop why it ended early, where it did
 * @param timedSeconds timed work
 */
public record PointingRecord(String at, Optional<StopReason> stop, int timedSeconds) {}
