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
 * @param variants other words for one of its classes
 * @param keep actions that no short page may leave out
 * @param brief all that a full page has room for: what it is, what to do, whom to ask; or empty
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
    List<Variant> variants,
    List<String> keep,
    String brief,
    Where where) {
  public Caution {
    classes = List.copyOf(classes);
    actions = List.copyOf(actions);
    variants = List.copyOf(variants);
    keep = List.copyOf(keep);
  }

  /** A caution that says the same in each of its classes. */
  public Caution(
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
    this(
        code,
        classes,
        lowerable,
        bindsClinicians,
        title,
        message,
        actions,
        clinician,
        contact,
        List.of(),
        List.of(),
        "",
        where);
  }

  /** What is said instead where the caution has this class; its brief words may be empty. */
  public record Variant(
      CautionClass cautionClass,
      String title,
      String message,
      List<String> actions,
      String contact,
      String brief) {
    public Variant {
      actions = List.copyOf(actions);
    }
  }

  /** The caution in the words of this class. */
  public Caution as(CautionClass one) {
    for (Variant v : variants) {
      if (v.cautionClass() == one) {
        return new Caution(
            code,
            classes,
            lowerable,
            bindsClinicians,
            v.title(),
            v.message(),
            v.actions(),
            clinician,
            v.contact(),
            variants,
            keep,
            v.brief(),
            where);
      }
    }
    return this;
  }
}
