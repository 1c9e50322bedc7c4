package closehand.interview;

import closehand.bank.Question;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far an interview is. Numbers of questions are "about": answers open some and close others.
 *
 * @param answered questions of the route that have all their answers
 * @param questions the ids of all questions that are, or may still be, asked on this route
 * @param parts the ids of the parts of this route
 * @param putOff fields passed or put off
 * @param held fields whose task must wait
 * @param forClinician fields left for a clinician
 */
public record Progress(
    int answered,
    List<String> questions,
    List<String> parts,
    int putOff,
    int held,
    int forClinician) {
  public Progress {
    questions = List.copyOf(questions);
    parts = List.copyOf(parts);
  }

  static Progress of(Interview interview) {
    return of(interview, new Walk(interview));
  }

  static Progress of(Interview interview, Walk walk) {
    Set<String> questions = new LinkedHashSet<>();
    Set<String> parts = new LinkedHashSet<>();
    Set<String> begun = new LinkedHashSet<>();
    Set<String> open = new LinkedHashSet<>();
    for (Outline.Place place : interview.outline().places()) {
      if (walk.inRoute(place)) {
        parts.add(place.section().id());
        if (counts(walk, place)) {
          questions.add(place.question().id());
          (walk.isAnswered(place) ? begun : open).add(place.question().id());
        }
      }
    }
    begun.removeAll(open);
    Map<StillOpen.Why, Integer> why = new EnumMap<>(StillOpen.Why.class);
    for (StillOpen still : walk.open()) {
      why.merge(still.why(), 1, Integer::sum);
    }
    return new Progress(
        begun.size(),
        List.copyOf(questions),
        List.copyOf(parts),
        why.getOrDefault(StillOpen.Why.SKIPPED, 0) + why.getOrDefault(StillOpen.Why.LATER, 0),
        why.getOrDefault(StillOpen.Why.HELD, 0),
        why.getOrDefault(StillOpen.Why.FOR_CLINICIAN, 0));
  }

  /** Whether a field counts: it applies, or, unless it only follows up, it may come to apply. */
  private static boolean counts(Walk walk, Outline.Place place) {
    boolean followUp = place.question().route() == Question.Route.FOLLOW_UP;
    return followUp
        ? walk.enablement().applies(place.fact())
        : walk.enablement().mayApply(place.fact());
  }

  /** About how many questions there are on this route. */
  public int total() {
    return questions.size();
  }

  /** Where a field is: "Question 12 of about 63, part 2 of 15: Safety". */
  String position(Outline.Place place) {
    Question question = place.question();
    Section section = place.section();
    int number = questions.indexOf(question.id()) + 1;
    int part = parts.indexOf(section.id()) + 1;
    return (number > 0
            ? "Question " + number + " of about " + total()
            : "Extra question " + question.id())
        + (part > 0 ? ", part " + part + " of " + parts.size() : "")
        + ": "
        + section.title();
  }

  /** Where a field is when questions come in the order of what they tell: "Question 12: Safety". */
  String positionByTelling(Outline.Place place) {
    return "Question " + (answered + 1) + ": " + place.section().title();
  }

  /** The same in plain sentences. */
  public String words() {
    List<String> sentences = new ArrayList<>();
    sentences.add(answered + " of about " + total() + " questions answered.");
    add(sentences, putOff, "put off for later.");
    add(sentences, held, "must wait because of a hold on tasks.");
    add(sentences, forClinician, "left for a clinician.");
    return String.join(" ", sentences);
  }

  private static void add(List<String> sentences, int count, String what) {
    if (count > 0) {
      sentences.add(count + " " + what);
    }
  }
}
