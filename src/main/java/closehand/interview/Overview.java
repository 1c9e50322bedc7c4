package closehand.interview;

import closehand.bank.Field;
import closehand.bank.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything answered and everything open, part by part.
 *
 * @param parts the parts of the route in order, as they are numbered at every question, then others
 *     that hold answers
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

  /**
   * One part of the interview.
   *
   * @param answered its questions that have all their answers
   * @param open about how many have not; 0 for both where the route leaves the part out
   * @param rows its fields that have an answer or can be asked
   */
  public record Part(String id, String title, int answered, int open, List<Row> rows) {
    public Part {
      rows = List.copyOf(rows);
    }

    /** How many questions have a field in this state. */
    public int questions(State state) {
      return (int)
          rows.stream()
              .filter(r -> r.state() == state)
              .map(r -> r.question().id())
              .distinct()
              .count();
    }

    /** What became of it in a few words; what is for a clinician only where that is wanted. */
    public String words(boolean clinician) {
      StringBuilder words = new StringBuilder();
      words.append(answered == 1 ? "1 question answered" : answered + " questions answered");
      words.append(", ").append(open).append(" open");
      int theirs = clinician ? questions(State.FOR_CLINICIAN) : 0;
      words.append(theirs > 0 ? ", " + theirs + " of them for a clinician" : "");
      int waiting = questions(State.HELD);
      words.append(waiting > 0 ? ", " + waiting + " of them waiting" : "");
      long aside = rows.stream().filter(r -> r.state() == State.SET_ASIDE).count();
      if (aside > 0) {
        words.append(aside == 1 ? "; 1 answer" : "; " + aside + " answers").append(" set aside");
      }
      return words.toString();
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
    Map<String, String> titles = new LinkedHashMap<>();
    Map<String, List<Row>> rows = new LinkedHashMap<>();
    Progress progress = Progress.of(interview, walk);
    progress.parts().forEach(p -> rows.put(p.id(), new ArrayList<>()));
    for (Outline.Place place : interview.outline().places()) {
      String id = place.section().id();
      titles.put(id, place.section().title());
      row(interview, walk, place)
          .ifPresent(r -> rows.computeIfAbsent(id, i -> new ArrayList<>()).add(r));
    }
    List<Part> parts = new ArrayList<>();
    rows.forEach((id, some) -> parts.add(part(id, titles.getOrDefault(id, ""), progress, some)));
    return new Overview(parts);
  }

  /** The rows of one question alone. */
  static List<Row> of(Interview interview, Question question) {
    Walk walk = new Walk(interview);
    List<Row> rows = new ArrayList<>();
    for (Outline.Place place : interview.outline().placesOf(question)) {
      row(interview, walk, place).ifPresent(rows::add);
    }
    return rows;
  }

  private static Part part(String id, String title, Progress progress, List<Row> rows) {
    int number = progress.number(id);
    if (number == 0) {
      return new Part(id, title, 0, 0, rows);
    }
    Progress.Part part = progress.parts().get(number - 1);
    return new Part(id, title, part.answered(), part.total() - part.answered(), rows);
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
    State state = walk.enablement().applies(place) ? State.ANSWERED : State.SET_ASIDE;
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
