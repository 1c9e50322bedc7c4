package closehand.bank;

import java.util.List;
import java.util.Optional;

/**
 * One question of the interview, with one or more fields to fill.
 *
 * @param id the question id, such as {@code DIG-03}
 * @param section the id of the section it belongs to
 * @param text the question, spoken to the player
 * @param shortName a few words for lists and pages, such as "Press force"
 * @param remoteText the wording over a video call, where it differs
 * @param aloneText the wording for a player who asks alone, where it differs
 * @param why why it is asked
 * @param inTheRoom how to see it for yourself in the same room
 * @param overVideo how to see it for yourself on a call
 * @param alone how to do it without anybody beside or on a call; empty where nothing is said of it
 * @param helpConditions when other programs show the help texts; this one picks by the setting
 * @param route on which route through the interview it is asked
 * @param askedBy who may ask or answer
 * @param safetyWeight 0 none, 1 shapes the plan, 2 may raise a caution, 3 gate that may stop
 * @param fields what there is to fill, in order; at least one
 * @param where where it stands in the bank
 */
public record Question(
    String id,
    String section,
    String text,
    Optional<String> shortName,
    Optional<String> remoteText,
    Optional<String> aloneText,
    String why,
    String inTheRoom,
    String overVideo,
    String alone,
    List<EnableWhen> helpConditions,
    Route route,
    AskedBy askedBy,
    int safetyWeight,
    List<Field> fields,
    Where where) {
  public Question {
    helpConditions = List.copyOf(helpConditions);
    fields = List.copyOf(fields);
  }

  /** On which route through the interview a question is asked. */
  public enum Route {
    /** The short route: always. */
    CORE("core"),
    /** The short route too, whenever an earlier answer opens it. */
    FOLLOW_UP("follow-up"),
    /** Only when the whole interview is wanted. */
    FULL("full");

    private final String code;

    Route(String code) {
      this.code = code;
    }

    /** The word used in bank files. */
    public String code() {
      return code;
    }
  }

  /** Who may ask or answer a question. */
  public enum AskedBy {
    /** The player may fill it in alone. */
    PLAYER("player"),
    /** A volunteer may ask and write down. */
    VOLUNTEER("volunteer"),
    /** A volunteer may ask; any answer but the all-clear goes to a clinician. */
    VOLUNTEER_REFER("volunteer-refer"),
    /** Only a clinician. */
    CLINICIAN("clinician");

    private final String code;

    AskedBy(String code) {
      this.code = code;
    }

    /** The word used in bank files. */
    public String code() {
      return code;
    }
  }
}
