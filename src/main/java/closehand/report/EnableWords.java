package closehand.report;

import closehand.bank.Bank;
import closehand.bank.EnableWhen;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** When a question is asked, in words: conditions over the answers to earlier questions. */
final class EnableWords {
  private final ConditionWords names;
  private final Glyphs glyphs;
  private final Map<String, Field> fields;

  EnableWords(Bank bank, Glyphs glyphs) {
    this.names = ConditionWords.unmistakable(bank, glyphs);
    this.glyphs = glyphs;
    this.fields = bank.questionnaire().fieldsByFact();
  }

  /** The condition as part of a sentence; equal answers to one question are told together. */
  String of(EnableWhen condition) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (EnableWhen.Test test : condition.tests()) {
      boolean joins = test.operator() == Operator.EQUAL && !condition.all();
      String subject = names.name(test.fact()) + " " + verb(test);
      String key = joins ? subject : subject + parts.size();
      parts.computeIfAbsent(key, k -> new ArrayList<>(List.of(subject))).add(expected(test));
    }
    List<String> words = new ArrayList<>();
    for (List<String> same : parts.values()) {
      List<String> answers = same.subList(1, same.size());
      words.add((same.get(0) + " " + String.join(" or ", answers)).strip());
    }
    return String.join(condition.all() ? ", and " : ", or ", words);
  }

  private String verb(EnableWhen.Test test) {
    boolean several = type(test) instanceof FactType.SeveralOf;
    return switch (test.operator()) {
      case EXISTS ->
          test.expected() instanceof Expected.Flag flag && !flag.value()
              ? "is not answered"
              : "is answered";
      case EQUAL -> several ? "includes" : "is";
      case NOT_EQUAL -> several ? "has an answer other than" : "is answered, and not with";
      case MORE -> "is more than";
      case LESS -> "is less than";
      case AT_LEAST -> "is at least";
      case AT_MOST -> "is at most";
    };
  }

  private FactType type(EnableWhen.Test test) {
    Field field = fields.get(test.fact());
    return field == null ? new FactType.Words(1) : field.type();
  }

  private String expected(EnableWhen.Test test) {
    if (test.operator() == Operator.EXISTS) {
      return "";
    }
    Expected expected = test.expected();
    if (expected instanceof Expected.Flag flag) {
      return flag.value() ? "yes" : "no";
    }
    if (expected instanceof Expected.Number number) {
      return Wording.of(type(test), new Value.Number(number.value()));
    }
    if (expected instanceof Expected.Coded coded) {
      return coded(test, coded);
    }
    return expected instanceof Expected.Text text ? glyphs.quoted(text.value()) : "";
  }

  /** The option's words; with its code system where that is not the option's own. */
  private String coded(EnableWhen.Test test, Expected.Coded coded) {
    Field field = fields.get(test.fact());
    String words = glyphs.quoted(Wording.of(type(test), new Value.Code(coded.code())));
    boolean own =
        field != null
            && field
                .type()
                .option(coded.code())
                .map(Option::system)
                .filter(s -> s.equals(coded.system()))
                .isPresent();
    return own ? words : words + " of " + (coded.system().isEmpty() ? "any" : coded.system());
  }
}
