package closehand.cli;

import closehand.bank.Bank;
import closehand.bank.GameProfile;
import closehand.interview.Answers;
import closehand.interview.CaseRecord;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.StillOpen;
import closehand.json.CaseDocument;
import closehand.json.TrialReader;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.trial.SideBySide;
import closehand.measure.trial.Trial;
import closehand.plan.EqualStandings;
import closehand.plan.PlanAsk;
import closehand.plan.Planning;
import closehand.plan.Practised;
import closehand.report.Change;
import closehand.report.ComparisonText;
import closehand.report.LoadText;
import closehand.report.PageInput;
import closehand.report.Since;
import closehand.report.SinceReview;
import closehand.report.TellingChanges;
import closehand.report.TriedLines;
import closehand.report.practice.Measures;
import closehand.rules.Advice;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.WhatIf;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Brings answers, advice and what would change it together for the pages. */
final class Pages {
  private final Bank bank;
  private final Ahead<RuleBook> rules;

  /** Begins to make the rules out; whoever asks for advice waits for them. */
  Pages(Bank bank) {
    this.bank = bank;
    this.rules = Ahead.begin("rules", () -> RuleBook.of(bank));
  }

  Bank bank() {
    return bank;
  }

  RuleBook rules() {
    return rules.get();
  }

  /** What the rules make of the answers, all games together. */
  Advice advise(Answers answers) {
    return rules().advise(answers);
  }

  /** The same for each game alone; empty unless there are several. */
  Map<Integer, Advice> byGame(Answers answers) {
    List<Integer> games = rules().games(answers);
    Map<Integer, Advice> byGame = new TreeMap<>();
    if (games.size() > 1) {
      games.forEach(g -> byGame.put(g, rules().advise(answers, g)));
    }
    return byGame;
  }

  /**
   * What plans are made with; empty while suggestions are withheld. Red parts that a clinician
   * accepted are allowed, and between plans of equal cost the one with lighter hands wins.
   */
  static Optional<Planning> planning(PageInput input, Map<Integer, GameProfile> profiles) {
    return Planning.of(input.bank(), input.answers(), input.together(), input.byGame(), profiles)
        .map(p -> p.lifting(input.limits().acceptedParts()))
        .map(p -> p.breakingTiesBy(planned -> LoadText.heavierHand(input, planned)));
  }

  /** The same for a case, with what was practised of each game. */
  static Optional<Planning> planning(PageInput input, Case one) {
    return planning(input, one.profiles())
        .map(
            p ->
                one.document()
                    .map(d -> practised(p.changing(d.changes()), d.practised()))
                    .orElse(p));
  }

  /** The same for a case that is being worked on. */
  static Optional<Planning> planning(PageInput input, Kept kept) {
    return planning(input, Map.of())
        .map(p -> practised(p.changing(kept.changes()), kept.practised()));
  }

  /**
   * A page's input on which plans tell apart what the rules give equal points. A plan is looked for
   * in each, so this takes its moment.
   */
  static PageInput ranked(PageInput input, Optional<Planning> planning) {
    return planning
        .map(p -> input.ranked(EqualStandings.of(p, input.together(), PlanWork.ALONE)))
        .orElse(input);
  }

  /** A page's input with what the plans of all games ask of the body; this takes its moment. */
  static PageInput loaded(PageInput input, Optional<Planning> planning) {
    return planning
        .map(p -> List.copyOf(p.session(PlanAsk.USUAL, () -> PlanWork.PLAN).values()))
        .filter(plans -> !plans.isEmpty())
        .map(plans -> input.with(LoadText.day(input, plans)))
        .orElse(input);
  }

  /** Everything a page needs, for a case that is being worked on. */
  PageInput input(Interview interview, Kept kept, String isoDate) {
    return input(interview, kept.name(), isoDate).with(kept.limits());
  }

  /** The same planning with what these runs found and what was taken after them. */
  static Planning practised(Planning planning, List<PracticeRecord> runs) {
    Map<Integer, Practised> practised = new TreeMap<>();
    for (int slot : planning.slots()) {
      Map<String, String> taken = PracticeRecord.taken(runs, slot - 1);
      if (!taken.isEmpty()) {
        List<PlanAsk.Wish> wishes = new ArrayList<>();
        taken.forEach((action, input) -> wishes.add(new PlanAsk.Wish(action, input)));
        practised.put(
            slot,
            new Practised(
                Measures.of(
                    PracticeRecord.findings(runs, slot - 1), planning.supply(slot, PlanAsk.USUAL)),
                wishes));
      }
    }
    return planning.practised(practised);
  }

  /** Everything a page needs, for a case. */
  PageInput input(Case one, String isoDate) {
    return one.interview()
        .map(interview -> input(interview, one.name(), isoDate))
        .orElseGet(() -> input(one.answers(), one.name(), isoDate))
        .with(one.document().map(d -> since(d, isoDate)).orElse(Since.NOTHING))
        .with(one.limits());
  }

  /** What a page says about the time since an earlier one. */
  Since since(CaseDocument document, String isoDate) {
    CaseRecord record = document.record();
    List<Trial> trials = TrialReader.read(document.trials(), new ArrayList<>());
    String since = record.lastReview().map(at -> at.substring(0, Moment.DAY_LENGTH)).orElse("");
    List<String> tried = new ArrayList<>(TriedLines.of(trials, since));
    SideBySide.ofLastTwo(trials).map(ComparisonText::sentence).ifPresent(tried::add);
    return SinceReview.of(bank.questionnaire(), record, isoDate).tried(tried);
  }

  private PageInput input(Answers answers, String caseName, String isoDate) {
    Interview interview =
        Interview.reopen(
            bank.questionnaire(),
            answers,
            Interview.Route.CORE,
            Provenance.By.VOLUNTEER,
            Optional.empty());
    return input(interview, caseName, isoDate);
  }

  /** Everything a page needs, for an interview as it stands. */
  PageInput input(Interview interview, String caseName, String isoDate) {
    Answers answers = interview.answers();
    Ahead<Map<String, List<closehand.rules.Change>>> whatIf =
        Ahead.begin("what if", () -> WhatIf.of(rules(), answers).suggested());
    Advice advice = advise(answers);
    Set<String> open = new LinkedHashSet<>();
    for (StillOpen one : interview.open()) {
      open.add(one.question().id());
    }
    return new PageInput(
        bank,
        interview.effective(),
        advice,
        byGame(answers),
        changes(whatIf.get(), advice),
        open.isEmpty(),
        List.copyOf(open),
        caseName,
        isoDate);
  }

  private Map<String, List<Change>> changes(
      Map<String, List<closehand.rules.Change>> all, Advice advice) {
    Map<String, List<Change>> changes = new LinkedHashMap<>();
    for (Standing standing : advice.suggestions()) {
      String id = standing.approach().id();
      List<Change> words =
          all.getOrDefault(id, List.of()).stream()
              .map(c -> Change.of(bank.questionnaire(), c))
              .toList();
      changes.put(id, TellingChanges.of(bank.questionnaire(), standing, words));
    }
    return changes;
  }
}
