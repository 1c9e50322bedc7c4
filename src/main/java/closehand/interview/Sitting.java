package closehand.interview;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What belongs to one sitting only and is forgotten when a case is opened again.
 *
 * @param passed facts that were passed without an answer, or put off
 * @param told facts of which was said that they are left for somebody or something else
 * @param trail facts shown before the current one, the latest last
 * @param justGiven the fact answered last
 * @param checks what is asked again
 * @param measured tasks that were measured in this sitting
 */
record Sitting(
    Set<String> passed,
    Set<String> told,
    List<String> trail,
    Optional<String> justGiven,
    Checks checks,
    List<Measured> measured) {
  /** A sitting that begins. */
  static final Sitting NEW =
      new Sitting(Set.of(), Set.of(), List.of(), Optional.empty(), Checks.NONE, List.of());

  /** How far back "back" goes; a whole interview, with room for jumps. */
  private static final int LONGEST_TRAIL = 1000;

  Sitting {
    passed = Set.copyOf(passed);
    told = Set.copyOf(told);
    trail = List.copyOf(trail);
    measured = List.copyOf(measured);
  }

  /** A field was passed without an answer. */
  Sitting passing(String fact) {
    return new Sitting(with(passed, fact), told, trail, justGiven, checks, measured);
  }

  /** A field was answered. */
  Sitting giving(String fact) {
    Set<String> rest = new HashSet<>(passed);
    rest.remove(fact);
    return new Sitting(rest, told, trail, Optional.of(fact), checks, measured);
  }

  /** It was said that a field is left. */
  Sitting telling(String fact) {
    return new Sitting(passed, with(told, fact), trail, justGiven, checks, measured);
  }

  /** A field was shown and is left behind. */
  Sitting leaving(String fact) {
    List<String> longer = new ArrayList<>(trail);
    if (longer.isEmpty() || !longer.get(longer.size() - 1).equals(fact)) {
      longer.add(fact);
    }
    int tooMany = Math.max(0, longer.size() - LONGEST_TRAIL);
    return trailing(longer.subList(tooMany, longer.size()));
  }

  Sitting trailing(List<String> next) {
    return new Sitting(passed, told, next, justGiven, checks, measured);
  }

  Sitting with(Checks next) {
    return new Sitting(passed, told, trail, justGiven, next, measured);
  }

  /** A task was measured. */
  Sitting measuring(Measured one) {
    List<Measured> more = new ArrayList<>(measured);
    more.add(one);
    return new Sitting(passed, told, trail, justGiven, checks, more);
  }

  /** Whether consent is still to be asked again after a break. */
  boolean consentPending() {
    return checks.stage() == Checks.Stage.AFTER_BREAK
        && checks.queue().contains(WellKnown.CONSENT_STATE);
  }

  private static Set<String> with(Set<String> some, String one) {
    Set<String> more = new HashSet<>(some);
    more.add(one);
    return more;
  }
}
