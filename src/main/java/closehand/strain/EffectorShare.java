package closehand.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of the load of a hand one body part brings.
 *
 * @param effector the body part
 * @param share its share, 0 to 1; the shares of a hand add up to 1
 * @param heaviest the kind of press that brings most of it
 */
public record EffectorShare(String effector, double share, Exertion heaviest) {

  /** The body parts of one hand, the one that brings most first. */
  public static List<EffectorShare> of(List<Exertion> ofOneHand, double hoursPerDay) {
    return of(CompositeStrain.parts(OneMinute.of(ofOneHand)));
  }

  static List<EffectorShare> of(List<CompositeStrain.Part> parts) {
    double all = 0;
    Map<String, Double> byPart = new LinkedHashMap<>();
    Map<String, CompositeStrain.Part> heaviest = new LinkedHashMap<>();
    for (CompositeStrain.Part part : parts) {
      String effector = part.press().effector();
      all += part.adds();
      byPart.merge(effector, part.adds(), Double::sum);
      heaviest.merge(effector, part, (a, b) -> b.adds() > a.adds() ? b : a);
    }
    List<EffectorShare> shares = new ArrayList<>();
    for (Map.Entry<String, Double> one : byPart.entrySet()) {
      CompositeStrain.Part most = heaviest.get(one.getKey());
      if (most != null) {
        shares.add(new EffectorShare(one.getKey(), one.getValue() / all, most.press()));
      }
    }
    shares.sort(
        Comparator.comparingDouble(EffectorShare::share)
            .reversed()
            .thenComparing(EffectorShare::effector));
    return shares;
  }
}
