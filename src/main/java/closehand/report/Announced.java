package closehand.report;

import closehand.bank.Field;
import closehand.interview.Prompt;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which stops and cautions have been said. Each is said once while it stands: a stop as soon as its
 * question is answered in full, other cautions together when the next part begins.
 *
 * @param said keys of what was said and still stands
 * @param part the part of the interview that was current
 */
public record Announced(Set<String> said, Optional<String> part) {
  /** Nothing has been said yet. */
  public static final Announced NOTHING = new Announced(Set.of(), Optional.empty());

  /** Copies the set. */
  public Announced {
    said = Set.copyOf(said);
  }

  /**
   * What is to be said now.
   *
   * @param stops stops, strongest first
   * @param cares other cautions
   * @param ends whether a stop stands that ends the session, said now or before
   * @param then what will have been said
   */
  public record Due(
      List<Consultation.Notice> stops,
      List<Consultation.Notice> cares,
      boolean ends,
      Announced then) {
    /** Copies the lists. */
    public Due {
      stops = List.copyOf(stops);
      cares = List.copyOf(cares);
    }
  }

  /**
   * What is to be said when this question comes up, or at the end when there is none. While a stop
   * ends the session, nothing else is said beside it.
   */
  public Due due(Consultation consultation, Optional<Prompt> prompt) {
    Optional<String> now = prompt.map(p -> p.section().id());
    Set<String> next = new HashSet<>(said);
    Set<String> standing = new HashSet<>();
    List<Consultation.Notice> stops = new ArrayList<>();
    List<Consultation.Notice> cares = new ArrayList<>();
    boolean ends = consultation.ends();
    for (Consultation.Notice notice : consultation.notices()) {
      standing.add(key(notice));
      if (ends && !notice.endsSession()) {
        continue;
      }
      if (notice.stops() ? !unfinished(notice, prompt) : !now.equals(part)) {
        if (next.add(key(notice))) {
          (notice.stops() ? stops : cares).add(notice);
        }
      }
    }
    next.retainAll(standing);
    return new Due(stops, cares, ends, new Announced(next, ends ? part : now));
  }

  /** Whether the question at hand still asks about the same thing, such as where it hurts. */
  private static boolean unfinished(Consultation.Notice notice, Optional<Prompt> prompt) {
    return !notice.endsSession()
        && prompt
            .filter(
                p ->
                    p.question().fields().stream()
                        .map(Field::fact)
                        .anyMatch(notice.facts()::contains))
            .isPresent();
  }

  private static String key(Consultation.Notice notice) {
    return notice.code() + (notice.stops() ? " stop" : "");
  }
}
