package closehand.interview;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A questionnaire laid out for walking: every field in the order asked and where it belongs. */
public final class Outline {
  private final Questionnaire questionnaire;
  private final List<Place> places;
  private final Map<String, Place> byFact;
  private final int firstReview;
  private final Gates gates;

  /**
   * One field with what is around it.
   *
   * @param index its place in the order asked, from 0
   * @param section the part it belongs to
   * @param question the question it belongs to
   * @param field the field itself
   */
  public record Place(int index, Section section, Question question, Field field) {
    /** The fact id of the field. */
    public String fact() {
      return field.fact();
    }

    /** Whether it belongs to the trials and reviews after the interview proper. */
    public boolean isReview() {
      return section.id().equals(WellKnown.REVIEW_SECTION);
    }
  }

  private Outline(Questionnaire questionnaire) {
    this.questionnaire = questionnaire;
    this.byFact = new HashMap<>();
    List<Place> inOrder = new ArrayList<>();
    add(questionnaire, false, inOrder);
    this.firstReview = inOrder.size();
    add(questionnaire, true, inOrder);
    this.places = List.copyOf(inOrder);
    this.gates = new Gates(places, byFact);
  }

  private void add(Questionnaire all, boolean reviews, List<Place> inOrder) {
    for (Section section : all.sections()) {
      if (section.id().equals(WellKnown.REVIEW_SECTION) == reviews) {
        for (Question question : section.questions()) {
          for (Field field : question.fields()) {
            Place place = new Place(inOrder.size(), section, question, field);
            if (byFact.putIfAbsent(field.fact(), place) == null) {
              inOrder.add(place);
            }
          }
        }
      }
    }
  }

  /** Lays out a questionnaire; trials and reviews come last wherever the file has them. */
  public static Outline of(Questionnaire questionnaire) {
    return new Outline(questionnaire);
  }

  /** The questionnaire behind it. */
  public Questionnaire questionnaire() {
    return questionnaire;
  }

  /** Every field in the order asked. */
  public List<Place> places() {
    return places;
  }

  /** The conditions under which they apply. */
  Gates gates() {
    return gates;
  }

  /** The index from which on fields belong to trials and reviews. */
  int firstReview() {
    return firstReview;
  }

  /** The field with this fact id. */
  public Optional<Place> place(String fact) {
    return Optional.ofNullable(byFact.get(fact));
  }

  /** The fields of one question, in order. */
  public List<Place> placesOf(Question question) {
    List<Place> found = new ArrayList<>();
    for (Field field : question.fields()) {
      Place place = byFact.get(field.fact());
      if (place != null && place.question().id().equals(question.id())) {
        found.add(place);
      }
    }
    return found;
  }

  /** The question with this id; upper and lower case are the same. */
  public Optional<Question> question(String id) {
    for (Section section : questionnaire.sections()) {
      for (Question question : section.questions()) {
        if (question.id().equalsIgnoreCase(id)) {
          return Optional.of(question);
        }
      }
    }
    return Optional.empty();
  }
}
