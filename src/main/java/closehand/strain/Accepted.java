package closehand.strain;

import closehand.bank.Effectors;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.List;
import java.util.Optional;

/**
 * A red body part that a clinician accepts, by name and with a reason.
 *
 * @param effector the body part
 * @param by the clinician, as they wish to be named
 * @param reason why
 */
public record Accepted(String effector, String by, String reason) {
  private static final int SHORTEST = 3;

  /**
   * Reads what a clinician accepts.
   *
   * @param problems receives what is missing
   * @return empty unless body part, name and reason are all there
   */
  public static Optional<Accepted> of(
      Where where, String effector, String by, String reason, List<Problem> problems) {
    int before = problems.size();
    if (!Effectors.all().contains(effector)) {
      problems.add(BodyPart.unknown(where));
    }
    if (by.strip().length() < SHORTEST || reason.strip().length() < SHORTEST) {
      problems.add(
          Problem.error(
              where,
              "accepted-by",
              "A load above the red line needs a clinician's name and a reason.",
              "Give both, each in a few words."));
    }
    return problems.size() > before
        ? Optional.empty()
        : Optional.of(new Accepted(effector, by.strip(), reason.strip()));
  }
}
