package closehand.interview;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The current question, ready to be put to somebody.
 *
 * @param section the part it belongs to
 * @param question the question
 * @param field the field to fill now
 * @param firstOfQuestion whether it is the first field of its question that applies, so that the
 *     question itself has to be said
 * @param position where this is, such as "Question 12 of about 63, part 2 of 15: Safety"
 * @param questionText the wording of the question for where the talk is
 * @param fieldText the wording of the field for where the talk is
 * @param howToSee how to see it for yourself: one line, or two while it is not known whether the
 *     talk is in a room or on a call; for a player who asks alone, how to do it alone, or nothing
 * @param again whether and why it is asked again
 * @param earlier the answer it has already, if any
 * @param halfTyped what was typed here before and not given as the answer, if anything
 * @param lineOfFields this field and those after it that one typed line can fill
 */
public record Prompt(
    Section section,
    Question question,
    Field field,
    boolean firstOfQuestion,
    String position,
    String questionText,
    String fieldText,
    List<String> howToSee,
    Again again,
    Optional<Answers.Recorded> earlier,
    Optional<String> halfTyped,
    List<Field> lineOfFields) {
  public Prompt {
    howToSee = List.copyOf(howToSee);
    lineOfFields = List.copyOf(lineOfFields);
  }

  /** Why a question is asked again. */
  public enum Again {
    /** It is not. */
    NO,
    /** A bodily task comes next. */
    BEFORE_TASKS,
    /** A run of bodily tasks is over. */
    AFTER_TASKS,
    /** A saved case was opened again. */
    AFTER_BREAK,
    /** A saved case is looked at again after a while. */
    REVIEW
  }

  static Prompt of(Interview interview, Outline.Place place) {
    Walk walk = new Walk(interview);
    List<Outline.Place> fields = new ArrayList<>(interview.outline().placesOf(place.question()));
    fields.removeIf(p -> !walk.enablement().applies(p));
    Optional<String> mode = mode(interview.answers(), walk.enablement());
    boolean onCall = mode.filter(WellKnown.VIDEO::equals).isPresent();
    boolean alone = interview.asker() == Provenance.By.PLAYER;
    Question question = place.question();
    Field field = place.field();
    return new Prompt(
        place.section(),
        question,
        field,
        fields.indexOf(place) <= 0,
        position(interview, place, walk),
        wording(alone, question.aloneText(), onCall, question.remoteText(), question.text()),
        wording(alone, field.aloneLabel(), onCall, field.remoteLabel(), field.label()),
        alone ? alone(question) : howToSee(question, mode),
        again(interview.sitting().checks(), place.fact()),
        Optional.ofNullable(interview.answers().byFact().get(place.fact())),
        Optional.ofNullable(interview.halfTyped().get(place.fact())),
        line(fields, place, walk));
  }

  /** The words for the setting, or else the usual ones. */
  private static String wording(
      boolean alone,
      Optional<String> forAlone,
      boolean onCall,
      Optional<String> remote,
      String usual) {
    if (alone && forAlone.isPresent()) {
      return forAlone.get();
    }
    return onCall ? remote.orElse(usual) : usual;
  }

  private static String position(Interview interview, Outline.Place place, Walk walk) {
    Progress progress = Progress.of(interview, walk);
    return interview.route() == Interview.Route.BRIEF
        ? progress.positionByTelling(place)
        : progress.position(place);
  }

  private static Optional<String> mode(Answers answers, Enablement enablement) {
    return answers
        .value(WellKnown.SESSION_MODE)
        .filter(v -> enablement.applies(WellKnown.SESSION_MODE))
        .filter(v -> v instanceof Value.Code)
        .map(v -> ((Value.Code) v).code());
  }

  /** Nobody sits beside a player who asks alone, so hints for watching somebody are left out. */
  private static List<String> alone(Question question) {
    return question.alone().isBlank() ? List.of() : List.of(question.alone());
  }

  private static List<String> howToSee(Question question, Optional<String> mode) {
    if (mode.filter(WellKnown.ROOM::equals).isPresent()) {
      return question.inTheRoom().isBlank() ? List.of() : List.of(question.inTheRoom());
    }
    if (mode.filter(WellKnown.VIDEO::equals).isPresent()) {
      return question.overVideo().isBlank() ? List.of() : List.of(question.overVideo());
    }
    List<String> both = new ArrayList<>();
    if (!question.inTheRoom().isBlank()) {
      both.add("In the room: " + question.inTheRoom());
    }
    if (!question.overVideo().isBlank()) {
      both.add("On a call: " + question.overVideo());
    }
    return both;
  }

  private static Again again(Checks checks, String fact) {
    if (!checks.queue().contains(fact)) {
      return Again.NO;
    }
    return switch (checks.stage()) {
      case BEFORE_TASKS -> Again.BEFORE_TASKS;
      case AFTER_TASKS -> Again.AFTER_TASKS;
      case AFTER_BREAK -> fact.equals(WellKnown.CONSENT_STATE) ? Again.AFTER_BREAK : Again.REVIEW;
      case TALK, TASKS -> Again.NO;
    };
  }

  private static List<Field> line(List<Outline.Place> fields, Outline.Place from, Walk walk) {
    List<Field> line = new ArrayList<>();
    for (Outline.Place place : fields) {
      if (place.index() >= from.index()) {
        boolean fits =
            walk.canBeAsked(place)
                && place.field().task().equals(from.field().task())
                && sameKind(place.field().type(), from.field().type());
        if (!fits) {
          return line;
        }
        line.add(place.field());
      }
    }
    return line;
  }

  /** Whether two fields take the same answers; where they stand in the file does not matter. */
  private static boolean sameKind(FactType one, FactType other) {
    return one.getClass().equals(other.getClass())
        && choices(one).equals(choices(other))
        && (!(one instanceof FactType.Amount) || one.equals(other));
  }

  private static List<String> choices(FactType type) {
    return type.choices().stream().map(Option::code).toList();
  }
}
