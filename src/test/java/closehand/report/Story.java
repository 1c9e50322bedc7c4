package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import closehand.rules.Standing;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Builds what a page is made from, by hand: answers of an invented player and advice on them. */
final class Story {
  private Answers answers = Answers.NONE;
  private final List<Standing> standings = new ArrayList<>();
  private final List<Warning> stops = new ArrayList<>();
  private final List<Warning> cautions = new ArrayList<>();
  private final List<Warning> notCleared = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, List<Change>> changes = new HashMap<>();
  private final Map<Integer, Advice> byGame = new TreeMap<>();
  private List<String> open = List.of();

  static Story player() {
    return new Story();
  }

  Story says(String fact, Value value) {
    return says(fact, value, Provenance.PLAYER_TOLD);
  }

  Story says(String fact, Value value, Provenance provenance) {
    return records(fact, new Answer.Given(value), provenance);
  }

  Story picks(String fact, String code) {
    return says(fact, new Value.Code(code));
  }

  Story tells(String fact, String words) {
    return says(fact, new Value.Text(words));
  }

  Story counts(String fact, double number) {
    return says(fact, new Value.Number(number));
  }

  Story leavesOut(String fact, Answer.Reason reason) {
    return records(fact, new Answer.Absent(reason), Provenance.PLAYER_TOLD);
  }

  private Story records(String fact, Answer answer, Provenance provenance) {
    answers = answers.with(fact, new Answers.Recorded(answer, provenance));
    return this;
  }

  Story lowered(String code) {
    answers =
        answers.lowering(new Answers.Lowered(code, "A. Clinician", "2026-11-20", "Seen today"));
    return this;
  }

  Story stop(CautionClass stop, Caution caution, Finding... because) {
    stops.add(warning(caution, stop, because));
    return this;
  }

  Story cares(Caution caution, Finding... because) {
    cautions.add(warning(caution, CautionClass.CARE, because));
    return this;
  }

  Story notes(Caution caution) {
    cautions.add(warning(caution, CautionClass.NOTE));
    return this;
  }

  Story notCleared(Caution caution, String... waitsFor) {
    notCleared.add(new Warning(caution, CautionClass.STOP_ALL, List.of(), List.of(waitsFor)));
    return this;
  }

  private Warning warning(Caution caution, CautionClass cautionClass, Finding... because) {
    findings.addAll(List.of(because));
    return new Warning(caution, cautionClass, List.of(because), List.of());
  }

  Story suggests(Approach approach, Finding... inFavour) {
    return stands(approach, List.of(inFavour), List.of());
  }

  Story suggestsDespite(Approach approach, Finding inFavour, Finding against) {
    return stands(approach, List.of(inFavour), List.of(against));
  }

  Story rulesOut(Approach approach, Finding because) {
    findings.add(because);
    standings.add(
        new Standing(
            approach,
            Standing.Status.RULED_OUT,
            0,
            0,
            0,
            List.of(),
            List.of(),
            List.of(because),
            List.of(),
            List.of()));
    return this;
  }

  Story undecided(Approach approach, String... waitsFor) {
    standings.add(
        new Standing(
            approach,
            Standing.Status.UNDECIDED,
            0,
            -1,
            2,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(waitsFor)));
    return this;
  }

  private Story stands(Approach approach, List<Finding> inFavour, List<Finding> against) {
    findings.addAll(inFavour);
    findings.addAll(against);
    int points =
        inFavour.stream().mapToInt(f -> Reasons.points(f.rule(), approach.id())).sum()
            + against.stream().mapToInt(f -> Reasons.points(f.rule(), approach.id())).sum();
    standings.add(
        new Standing(
            approach,
            points >= 2 ? Standing.Status.STRONG : Standing.Status.WORTH_TRYING,
            points,
            points,
            points,
            inFavour,
            against,
            List.of(),
            List.of(),
            List.of()));
    return this;
  }

  Story fires(Finding finding) {
    findings.add(finding);
    return this;
  }

  Story changes(Approach approach, String fact, String whatWouldBe, Standing.Status becomes) {
    changes
        .computeIfAbsent(approach.id(), a -> new ArrayList<>())
        .add(new Change(fact, whatWouldBe, becomes));
    return this;
  }

  Story alone(int slot, Advice advice) {
    byGame.put(slot, advice);
    return this;
  }

  Story open(String... questions) {
    open = List.of(questions);
    return this;
  }

  Advice advice() {
    boolean withheld = stops.stream().anyMatch(s -> s.cautionClass().withholds());
    return new Advice(
        standings,
        stops,
        cautions,
        notCleared,
        List.of(),
        withheld,
        !withheld && !stops.isEmpty(),
        true,
        Set.of(),
        findings);
  }

  PageInput input() {
    return new PageInput(
        SmallBank.bank(),
        answers,
        advice(),
        byGame,
        changes,
        open.isEmpty(),
        open,
        "Heron",
        "2026-11-25");
  }

  /** A rule that fires for this reason and gives points to an approach. */
  static Finding supports(String id, Approach approach, int points, String reason) {
    return finding(
        id, "", reason, List.of(new Rule.Support(approach.id(), points, SmallBank.HERE)));
  }

  /** A rule that fires for this reason. */
  static Finding because(String id, String reason) {
    return finding(id, "", reason, List.of());
  }

  /** An instance of a rule, for a side or a finger, that fires for this reason. */
  static Finding because(String id, String instance, String reason) {
    return finding(id, instance, reason, List.of());
  }

  /** A rule that fires and says something for the page. */
  static Finding advises(String id, String instance, String topic, String say) {
    return finding(
        id,
        instance,
        "You told us so.",
        new Rule.Effects(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(new Rule.Advice(topic, say)),
            List.of()));
  }

  /** A rule that fires and makes a part of the body work harder. */
  static Finding tires(String id, String part, double factor) {
    return finding(
        id,
        "",
        "You told us so.",
        new Rule.Effects(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(new Rule.Effort(List.of(part), List.of("sidePanel"), factor)),
            List.of(),
            List.of()));
  }

  private static Finding finding(
      String id, String instance, String reason, List<Rule.Support> support) {
    return finding(
        id,
        instance,
        reason,
        new Rule.Effects(
            List.of(), support, List.of(), List.of(), List.of(), List.of(), List.of()));
  }

  private static Finding finding(String id, String instance, String reason, Rule.Effects effects) {
    Rule rule =
        new Rule(
            id,
            instance,
            "small",
            "A rule",
            new Condition.All(List.of(), SmallBank.HERE),
            Optional.empty(),
            effects,
            reason,
            Optional.empty(),
            List.of("S1", "common practice"),
            List.of(),
            SmallBank.HERE);
    return new Finding(rule, Outcome.TRUE, List.of("safe.skin"), List.of(), false);
  }
}
