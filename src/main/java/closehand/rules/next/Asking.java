package closehand.rules.next;

import closehand.bank.Question;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.WellKnown;
import closehand.rules.Advice;
import closehand.rules.Completions;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses the next question: consent first, then open warning signs in their order, then what tells
 * most about the leading suggestion for its burden, one topic finished before the next, then open
 * cautions. What was declined, put off or passed is never proposed.
 */
public final class Asking {
  /** Questions that tell less than this, in bits, are not worth asking for the lead's sake. */
  public static final double LEAST_BITS = 0.01;

  private final RuleBook book;
  private final Answers answers;
  private final Advice advice;
  private final List<Candidate> candidates;
  private final long seed;

  private Asking(RuleBook book, Interview interview, long seed) {
    this.book = book;
    this.answers = interview.answers();
    this.advice = book.advise(answers);
    this.candidates = Candidate.of(interview);
    this.seed = seed;
  }

  /** The proposal for an interview as it stands; the same for the same answers and bank. */
  public static Proposal next(RuleBook book, Interview interview) {
    return next(book, interview, Fingerprint.of(interview.answers()));
  }

  /** The same with a seed of the caller's for what is drawn by chance. */
  static Proposal next(RuleBook book, Interview interview, long seed) {
    return new Asking(book, interview, seed).propose();
  }

  private Proposal propose() {
    return opening()
        .or(this::openStop)
        .or(this::telling)
        .or(this::openCare)
        .orElseGet(this::enough);
  }

  private Optional<Proposal> opening() {
    String first =
        book.bank()
            .questionnaire()
            .questionOf(WellKnown.CONSENT_STATE)
            .map(Question::section)
            .orElse("");
    return candidates.stream()
        .filter(c -> c.question().section().equals(first) && c.core())
        .findFirst()
        .map(c -> new Proposal(Optional.of(c.question()), new Proposal.Because.Opening()));
  }

  private Optional<Proposal> openStop() {
    Set<String> facts = new HashSet<>();
    advice.notCleared().forEach(w -> facts.addAll(w.waitsFor()));
    for (Candidate candidate : candidates) {
      if (candidate.asksAny(facts)) {
        List<String> codes = new ArrayList<>();
        for (Warning warning : advice.notCleared()) {
          if (candidate.asksAny(warning.waitsFor())) {
            codes.add(warning.caution().code());
          }
        }
        return Optional.of(
            new Proposal(Optional.of(candidate.question()), new Proposal.Because.OpenStop(codes)));
      }
    }
    return Optional.empty();
  }

  private Optional<Proposal> telling() {
    if (advice.firm()) {
      return Optional.empty();
    }
    Map<Candidate, Double> told = told();
    Optional<String> topic = topic().filter(t -> told.keySet().stream().anyMatch(c -> c.in(t)));
    return told.keySet().stream()
        .filter(c -> topic.isEmpty() || c.in(topic.get()))
        .reduce((a, b) -> worth(b, told) > worth(a, told) ? b : a)
        .map(c -> proposal(c, told.getOrDefault(c, 0.0)));
  }

  /**
   * What each question tells about what leads, in bits, where that is enough to ask it. Of a
   * question with several fields the bits of each field by itself are added. That is an estimate of
   * what they tell together: too much where two fields tell the same, too little where only both
   * together tell. It decides in which order questions come, never what is advised.
   */
  private Map<Candidate, Double> told() {
    Map<String, Double> bits = Completions.of(book, answers, seed).bits();
    Map<Candidate, Double> told = new LinkedHashMap<>();
    for (Candidate candidate : candidates) {
      double sum = candidate.facts().stream().mapToDouble(f -> bits.getOrDefault(f, 0.0)).sum();
      if (sum >= LEAST_BITS) {
        told.put(candidate, sum);
      }
    }
    return told;
  }

  /** The ids of all questions that tell enough, the one worth most first, whatever the topic. */
  static List<String> order(RuleBook book, Interview interview, long seed) {
    Map<Candidate, Double> told = new Asking(book, interview, seed).told();
    return told.keySet().stream()
        .sorted(Comparator.comparingDouble(c -> -worth(c, told)))
        .map(c -> c.question().id())
        .toList();
  }

  /**
   * Bits for the burden, in whole doublings: what is nearly the same goes by the questionnaire, and
   * how the ways were drawn does not decide it.
   */
  private static double worth(Candidate candidate, Map<Candidate, Double> told) {
    double worth = told.getOrDefault(candidate, 0.0) / candidate.burden();
    return Math.rint(StrictMath.log(worth) / StrictMath.log(2));
  }

  /** The part of the interview that was answered last. */
  private Optional<String> topic() {
    String last = "";
    for (String fact : answers.byFact().keySet()) {
      last = fact;
    }
    return book.bank().questionnaire().questionOf(last).map(Question::section);
  }

  private Proposal proposal(Candidate candidate, double bits) {
    List<String> bringsIn = new ArrayList<>();
    List<String> moves = new ArrayList<>();
    for (Standing standing : advice.standings()) {
      if (candidate.asksAny(standing.waitsFor())) {
        (standing.status().suggested() ? moves : bringsIn).add(standing.approach().id());
      }
    }
    return new Proposal(
        Optional.of(candidate.question()), new Proposal.Because.Telling(bits, bringsIn, moves));
  }

  private Optional<Proposal> openCare() {
    Map<String, Set<String>> waits = new LinkedHashMap<>();
    for (Finding finding : advice.findings()) {
      if (finding.outcome() == Outcome.OPEN) {
        finding
            .rule()
            .effects()
            .cautions()
            .forEach(
                c ->
                    waits
                        .computeIfAbsent(c.code(), k -> new HashSet<>())
                        .addAll(finding.waitsFor()));
      }
    }
    for (Candidate candidate : candidates) {
      Set<String> codes = new LinkedHashSet<>();
      waits.forEach(
          (code, facts) -> {
            if (candidate.asksAny(facts)) {
              codes.add(code);
            }
          });
      if (candidate.core() && !codes.isEmpty()) {
        return Optional.of(
            new Proposal(
                Optional.of(candidate.question()),
                new Proposal.Because.OpenCare(List.copyOf(codes))));
      }
    }
    return Optional.empty();
  }

  private Proposal enough() {
    int left = (int) candidates.stream().filter(Candidate::core).count();
    return new Proposal(Optional.empty(), new Proposal.Because.Enough(stand(), left));
  }

  private Proposal.Stand stand() {
    if (advice.withheld()) {
      return Proposal.Stand.WITHHELD;
    }
    boolean leads = book.verdict(answers).leader().isPresent();
    return advice.firm()
        ? leads ? Proposal.Stand.LEADS_FIRMLY : Proposal.Stand.NOTHING_CAN_LEAD
        : leads ? Proposal.Stand.LEADS : Proposal.Stand.NOTHING_LEADS;
  }
}
