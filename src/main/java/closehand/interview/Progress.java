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
 * @param parts the parts of this route, in order; their numbers add up to those of the whole
 * @param putOff questions of which something was passed or put off
 * @param held questions of which a task must wait
 * @param forClinician questions of which something is left for a clinician
 */
public record Progress(
    int answered,
    List<String> questions,
    List<Part> parts,
    int putOff,
    int held,
    int forClinician) {
  public Progress {
    questions = List.copyOf(questions);
    parts = List.copyOf(parts);
  }

  /**
   * How far one part is.
   *
   * @param id the part
   * @param answered its questions that have all their answers
   * @param total about how many questions it has on this route
   */
  public record Part(String id, int answered, int total) {}

  static Progress of(Interview interview) {
    return of(interview, new Walk(interview));
  }

  static Progress of(Interview interview, Walk walk) {
    Tally tally = new Tally();
    for (Outline.Place place : interview.outline().places()) {
      if (walk.inRoute(place)) {
        tally.part(place.section());
        if (counts(walk, place)) {
          tally.question(place.question(), walk.isAnswered(place));
        }
        if (walk.isOpen(place)) {
          tally.open(place.question(), walk.why(place));
        }
      }
    }
    return tally.progress();
  }

  /** Whether a field counts: it applies, or, unless it only follows up, it may come to apply. */
  private static boolean counts(Walk walk, Outline.Place place) {
    boolean followUp = place.question().route() == Question.Route.FOLLOW_UP;
    return followUp ? walk.enablement().applies(place) : walk.enablement().mayApply(place);
  }

  /**
   * Counts field by field. The fields of a question stand together, and so do the questions of a
   * part, so only the latest of each is looked at.
   */
  private static final class Tally {
    private final List<String> questions = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final Map<StillOpen.Why, Set<String>> open = new EnumMap<>(StillOpen.Why.class);
    private String part = "";
    private int asked;
    private int unanswered;
    private boolean latestAnswered;

    void part(Section section) {
      if (!section.id().equals(part)) {
        end();
        part = section.id();
      }
    }

    private void end() {
      if (!part.isEmpty()) {
        parts.add(new Part(part, asked - unanswered, asked));
      }
      asked = 0;
      unanswered = 0;
    }

    void question(Question question, boolean answered) {
      boolean another = asked == 0 || !questions.get(questions.size() - 1).equals(question.id());
      if (another) {
        questions.add(question.id());
        asked++;
        latestAnswered = true;
      }
      if (latestAnswered && !answered) {
        latestAnswered = false;
        unanswered++;
      }
    }

    void open(Question question, StillOpen.Why why) {
      open.computeIfAbsent(why, w -> new LinkedHashSet<>()).add(question.id());
    }

    Progress progress() {
      end();
      return new Progress(
          parts.stream().mapToInt(Part::answered).sum(),
          questions,
          parts,
          count(StillOpen.Why.SKIPPED, StillOpen.Why.LATER),
          count(StillOpen.Why.HELD),
          count(StillOpen.Why.FOR_CLINICIAN));
    }

    private int count(StillOpen.Why... reasons) {
      Set<String> some = new LinkedHashSet<>();
      for (StillOpen.Why reason : reasons) {
        some.addAll(open.getOrDefault(reason, Set.of()));
      }
      return some.size();
    }
  }

  /** About how many questions there are on this route. */
  public int total() {
    return questions.size();
  }

  /** About how many of them have no answer, or not all of it. */
  public int open() {
    return Math.max(0, total() - answered);
  }

  /** Which part of the route this is, from 1; 0 where the route leaves it out. */
  public int number(String partId) {
    List<String> ids = parts.stream().map(Part::id).toList();
    return ids.indexOf(partId) + 1;
  }

  /** Where a field is: "Question 12 of about 63, part 2 of 15: Safety". */
  String position(Outline.Place place) {
    Question question = place.question();
    Section section = place.section();
    int number = questions.indexOf(question.id()) + 1;
    int part = number(section.id());
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
    sentences.add(
        answered + " of about " + total() + " questions answered, " + open() + " still open.");
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
