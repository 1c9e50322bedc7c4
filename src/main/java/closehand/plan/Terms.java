package closehand.plan;

import closehand.bank.GameProfile;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * What plans are made under besides the answers.
 *
 * @param profiles profiles of games that a file of answers changed, by slot from 1
 * @param changes what the player changed in the games, and wishes that were kept
 * @param tieBreak what is to be small among plans of equal cost
 * @param lifted parts of the body that a clinician accepts above their red lines
 * @param practised what was practised of each game, by slot from 1
 */
record Terms(
    Map<Integer, GameProfile> profiles,
    PlanChanges changes,
    Optional<ToDoubleFunction<Planned>> tieBreak,
    Set<String> lifted,
    Map<Integer, Practised> practised) {
  Terms {
    profiles = Map.copyOf(profiles);
    lifted = Set.copyOf(lifted);
    practised = Map.copyOf(practised);
  }

  static Terms of(Map<Integer, GameProfile> profiles) {
    return new Terms(profiles, PlanChanges.NONE, Optional.empty(), Set.of(), Map.of());
  }

  Terms lifting(Set<String> parts) {
    return new Terms(profiles, changes, tieBreak, parts, practised);
  }

  Terms practised(Map<Integer, Practised> found) {
    return new Terms(profiles, changes, tieBreak, lifted, found);
  }

  Terms breakingTiesBy(ToDoubleFunction<Planned> smaller) {
    return new Terms(profiles, changes, Optional.of(smaller), lifted, practised);
  }

  Terms changing(PlanChanges next) {
    return new Terms(profiles, next, tieBreak, lifted, practised);
  }

  Practised practised(int slot) {
    return practised.getOrDefault(slot, Practised.NOTHING);
  }
}
