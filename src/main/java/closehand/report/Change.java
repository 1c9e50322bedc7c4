package closehand.report;

import closehand.rules.Standing;

/**
 * An answer that would change how an approach stands.
 *
 * @param fact the fact that would be answered differently
 * @param whatWouldBe that answer in words, such as "Loud"
 * @param becomes how the approach would stand then
 */
public record Change(String fact, String whatWouldBe, Standing.Status becomes) {}
