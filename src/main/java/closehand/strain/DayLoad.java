package closehand.strain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What all games of a day ask of each hand, with the day's hours divided evenly among them.
 *
 * @param games the plans, in the order of the games
 * @param hands the cumulative strain index of each hand that has a job
 */
public record DayLoad(List<PlanLoad> games, Map<BodyPart.Hand, Load> hands) {
  public DayLoad {
    games = List.copyOf(games);
    hands = java.util.Collections.unmodifiableMap(new EnumMap<>(hands));
  }

  /** Adds up games of one person; they share the same time of play. */
  public static DayLoad of(List<PlanLoad> games) {
    Map<BodyPart.Hand, Load> hands = new EnumMap<>(BodyPart.Hand.class);
    for (BodyPart.Hand hand : BodyPart.Hand.values()) {
      List<CumulativeStrain.GameTime> day = new ArrayList<>();
      for (PlanLoad game : games) {
        List<Exertion> presses = game.presses(hand);
        if (!presses.isEmpty()) {
          double hours = game.time().hoursPerDay() / games.size();
          day.add(new CumulativeStrain.GameTime(presses, hours));
        }
      }
      if (!day.isEmpty()) {
        hands.put(hand, CumulativeStrain.of(day));
      }
    }
    return new DayLoad(games, hands);
  }

  /** Whether a hand lies in the upper band over the day, or in any game. */
  public boolean isHeavy() {
    return hands.values().stream()
            .flatMap(l -> l.figure().stream())
            .anyMatch(f -> f.band() == Band.UPPER)
        || games.stream()
            .flatMap(g -> g.hands().stream())
            .flatMap(h -> h.composite().figure().stream())
            .anyMatch(f -> f.band() == Band.UPPER);
  }
}
