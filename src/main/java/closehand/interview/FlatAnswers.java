package closehand.interview;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.Field;
import closehand.bank.FlatValue;
import closehand.bank.Hint;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Answers given in the flat form: fact id to value, matched with the questions of a bank.
 *
 * <p>The list of games is already flattened to {@code games.1.*}, {@code games.2.*} and so on, and
 * nested objects to dotted ids, by whoever read the file. Besides the facts of the questionnaire
 * there is one key of its own, {@code cleared}: the codes of cautions that a clinician lowered,
 * here without name, date and reason.
 *
 * <p>A value that does not match its question brings a problem and leaves the question unasked.
 *
 * @param answers what matched, in the order of the questionnaire, as told by the player
 * @param problems what did not
 */
public record FlatAnswers(Answers answers, List<Problem> problems) {
  public static final String CLEARED = "cleared";

  public FlatAnswers {
    problems = List.copyOf(problems);
  }

  /**
   * Matches values with the questions of this bank; the order of {@code values} does not matter.
   */
  public static FlatAnswers of(Bank bank, Map<String, FlatValue> values) {
    List<Problem> problems = new ArrayList<>();
    Map<String, Field> fields = bank.questionnaire().fieldsByFact();
    Map<String, Answers.Recorded> byFact = new LinkedHashMap<>();
    FlatMatcher matcher = new FlatMatcher(problems);
    fields.forEach(
        (fact, field) -> {
          FlatValue value = values.get(fact);
          if (value != null) {
            matcher
                .answer(field, value)
                .ifPresent(a -> byFact.put(fact, new Answers.Recorded(a, Provenance.PLAYER_TOLD)));
          }
        });
    List<Answers.Lowered> lowered = List.of();
    for (Map.Entry<String, FlatValue> entry : new TreeMap<>(values).entrySet()) {
      if (entry.getKey().equals(CLEARED)) {
        lowered = lowered(bank, entry.getValue(), problems);
      } else if (!fields.containsKey(entry.getKey())) {
        problems.add(unknown(entry.getKey(), entry.getValue(), fields));
      }
    }
    return new FlatAnswers(new Answers(byFact, lowered), problems);
  }

  private static Problem unknown(String fact, FlatValue value, Map<String, Field> fields) {
    return Problem.error(
        value.where(),
        "unknown-fact",
        "There is no question " + FactWords.of(fact) + ".",
        Hint.didYouMean(fact, fields.keySet()));
  }

  private static List<Answers.Lowered> lowered(Bank bank, FlatValue value, List<Problem> problems) {
    List<Answers.Lowered> lowered = new ArrayList<>();
    if (!(value instanceof FlatValue.Texts codes)) {
      problems.add(
          Problem.error(
              value.where(),
              "wrong-type",
              "\"" + CLEARED + "\" needs a list of caution codes.",
              "Write it as [\"code\"]."));
      return lowered;
    }
    for (String code : codes.values()) {
      if (bank.caution(code).isPresent()) {
        lowered.add(new Answers.Lowered(code, "", "", ""));
      } else {
        problems.add(unknownCaution(bank, code, codes));
      }
    }
    return lowered;
  }

  private static Problem unknownCaution(Bank bank, String code, FlatValue.Texts codes) {
    List<String> known = bank.cautions().stream().map(Caution::code).toList();
    return Problem.error(
        codes.where(),
        "unknown-caution",
        "There is no caution \"" + code + "\".",
        Hint.didYouMean(code, known));
  }
}
