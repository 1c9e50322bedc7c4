package closehand.interview;

import closehand.bank.Field;
import closehand.bank.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything answered and everything open, part by part.
 *
 * @param parts the parts that have rows, in order
 */
public record Overview(List<Part> parts) {
  public Overview {
    parts = List.copyOf(parts);
  }

  /** What became of a field. */
  public enum State {
    ANSWERED,
    OPEN,
    SET_ASIDE,
    FOR_CLINICIAN,
    HELD
  }

  /** One part of the interview. */
  public record Part(String id, String title, List<Row> rows) {
    public Part {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One field.
   *
   * @param question the question it belongs to
   * @param field the field
   * @param state what became of it
   * @param words the answer in words, or why there is none
   * @param recorded the answer with its provenance, where there is one
   */
  public record Row(
      Question question,
      Field field,
      State state,
      String words,
      Optional<Answers.Recorded> recorded) {}

  static Overview of(Interview interview) {
    Walk walk = new Walk(interview);
    List<Part> parts = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    List<Outline.Place> places = interview.outline().places();
    for (int i = 0; i < places.size(); i++) {
      Outline.Place place = places.get(i);
      row(interview, walk, place).ifPresent(rows::add);
      boolean last =
          i + 1 == places.size() || !places.get(i + 1).section().id().equals(place.section().id());
      if (last && !rows.isEmpty()) {
        parts.add(new Part(place.section().id(), place.section().title(), rows));
        rows.clear();
      }
    }
    return new Overview(parts);
  }

  private static Optional<Row> row(Interview interview, Walk walk, Outline.Place place) {
    Optional<Answers.Recorded> recorded =
        Optional.ofNullable(interview.answers().byFact().get(place.fact()));
    Optional<String> words = recorded.map(r -> Wording.of(place.field(), r.answer()));
    if (walk.isOpen(place)) {
      return walk.inRoute(place) || recorded.isPresent()
          ? Optional.of(open(walk.stillOpen(place), recorded, words))
          : Optional.empty();
    }
    State state = walk.enablement().applies(place.fact()) ? State.ANSWERED : State.SET_ASIDE;
    return words.map(w -> new Row(place.question(), place.field(), state, w, recorded));
  }

  private static Row open(
      StillOpen still, Optional<Answers.Recorded> recorded, Optional<String> words) {
    State state =
        switch (still.why()) {
          case FOR_CLINICIAN -> State.FOR_CLINICIAN;
          case HELD -> State.HELD;
          case NOT_YET_ASKED, SKIPPED, LATER -> State.OPEN;
        };
    boolean later = still.why() == StillOpen.Why.LATER;
    return new Row(
        still.question(),
        still.field(),
        state,
        later ? words.orElse("") : still.because(),
        recorded);
  }
}
