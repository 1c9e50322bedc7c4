package closehand.interview;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Section;

/**
 * A field that applies and has no answer yet.
 *
 * @param section the part it belongs to
 * @param question the question it belongs to
 * @param field the field itself
 * @param why why it is open
 * @param because the same in a plain sentence; for a field on hold it names the hold
 */
public record StillOpen(Section section, Question question, Field field, Why why, String because) {

  /** Why a field has no answer. */
  public enum Why {
    /** Its turn has not come. */
    NOT_YET_ASKED,
    /** It was passed without an answer. */
    SKIPPED,
    /** The player asked for it to come later. */
    LATER,
    /** Only a clinician may ask it. */
    FOR_CLINICIAN,
    /** It needs a bodily task that must wait. */
    HELD
  }
}
