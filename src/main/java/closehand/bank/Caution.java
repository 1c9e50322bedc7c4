package closehand.bank;

import java.util.List;

/**
 * A caution and its words.
 *
 * @param code such as {@code C-NECK}
 * @param classes every class it can have
 * @param lowerable whether a clinician may lower it, with a reason
 * @param bindsClinicians whether its holds on tasks also bind a clinician who runs them
 * @param title a few words
 * @param message one sentence to the player
 * @param actions what to do, whole sentences
 * @param clinician a sentence for the clinician, or empty
 * @param contact whom to ask, or empty
 * @param where where it stands in the bank
 */
public record Caution(
    String code,
    List<CautionClass> classes,
    boolean lowerable,
    boolean bindsClinicians,
    String title,
    String message,
    List<String> actions,
    String clinician,
    String contact,
    Where where) {
  public Caution {
    classes = List.copyOf(classes);
    actions = List.copyOf(actions);
  }
}
