package closehand.report;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.interview.Answers;
import closehand.plan.EqualStandings;
import closehand.rules.Advice;
import closehand.rules.Warning;
import closehand.strain.DayLoad;
import closehand.strain.OwnLimits;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everything a page is made from.
 *
 * @param bank the bank the interview was held with
 * @param answers the answers that apply
 * @param together the advice for all wanted games at once
 * @param byGame the advice for each game alone, by its place from 1; may be empty
 * @param changes what would change each approach, by its id, most telling first; may be empty
 * @param finished whether nothing more is to be asked
 * @param openQuestions ids of the questions still open, or facts of theirs, in the order asked
 * @param caseName the player's pseudonym; may be empty
 * @param isoDate the day of the page, such as {@code 2026-11-25}
 * @param since what there is to say about the time since an earlier page
 * @param equal what the rules give equal points, in its order by plans; none where nobody looked
 * @param limits what was said about the body that no question asks
 * @param load what the plans of all games ask of the body over a day; empty where nobody looked
 */
public record PageInput(
    Bank bank,
    Answers answers,
    Advice together,
    Map<Integer, Advice> byGame,
    Map<String, List<Change>> changes,
    boolean finished,
    List<String> openQuestions,
    String caseName,
    String isoDate,
    Since since,
    EqualStandings equal,
    OwnLimits limits,
    Optional<DayLoad> load) {
  public PageInput {
    byGame = java.util.Collections.unmodifiableMap(new TreeMap<>(byGame));
    changes = Map.copyOf(changes);
    openQuestions = List.copyOf(openQuestions);
  }

  /** Everything a first page is made from. */
  public PageInput(
      Bank bank,
      Answers answers,
      Advice together,
      Map<Integer, Advice> byGame,
      Map<String, List<Change>> changes,
      boolean finished,
      List<String> openQuestions,
      String caseName,
      String isoDate) {
    this(
        bank,
        answers,
        together,
        byGame,
        changes,
        finished,
        openQuestions,
        caseName,
        isoDate,
        Since.NOTHING,
        EqualStandings.NONE,
        OwnLimits.NONE,
        Optional.empty());
  }

  /** The same with something to say about the time since an earlier page. */
  public PageInput with(Since earlier) {
    return new PageInput(
        bank,
        answers,
        together,
        byGame,
        changes,
        finished,
        openQuestions,
        caseName,
        isoDate,
        earlier,
        equal,
        limits,
        load);
  }

  /** The same with what was said about the body that no question asks. */
  public PageInput with(OwnLimits said) {
    return new PageInput(
        bank,
        answers,
        together,
        byGame,
        changes,
        finished,
        openQuestions,
        caseName,
        isoDate,
        since,
        equal,
        said,
        load);
  }

  /** The same with what the plans of all games ask of the body over a day. */
  public PageInput with(DayLoad asked) {
    return new PageInput(
        bank,
        answers,
        together,
        byGame,
        changes,
        finished,
        openQuestions,
        caseName,
        isoDate,
        since,
        equal,
        limits,
        Optional.of(asked));
  }

  /** The same with what stands equal by the rules in its order by plans. */
  public PageInput ranked(EqualStandings found) {
    return new PageInput(
        bank,
        answers,
        found.in(together),
        byGame,
        changes,
        finished,
        openQuestions,
        caseName,
        isoDate,
        since,
        found,
        limits,
        load);
  }

  /** The answers with their questions. */
  Facts facts() {
    return new Facts(bank.questionnaire(), answers);
  }

  /** What would change this approach; empty where nothing is known. */
  List<Change> changesOf(String approach) {
    return changes.getOrDefault(approach, List.of());
  }

  /** The stops that stand and end everything; empty in most interviews. */
  List<Warning> ending() {
    return together.stops().stream()
        .filter(s -> s.cautionClass() == CautionClass.STOP_ALL)
        .toList();
  }

  /** Whether a caution with this code stands. */
  boolean warns(String code) {
    return together.cautions().stream().anyMatch(w -> w.caution().code().equals(code));
  }
}
