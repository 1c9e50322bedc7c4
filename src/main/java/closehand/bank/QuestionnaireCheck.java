package closehand.bank;

import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks what HL7's own validator lets pass: conditions that cannot work, doubled options, texts
 * that are too long.
 */
final class QuestionnaireCheck {
  /** Longest question text, in characters; longer ones cannot be taken in when heard. */
  private static final int LONGEST_TEXT = 240;

  private final Questionnaire questionnaire;
  private final List<Problem> problems;
  private final Map<String, Field> before = new LinkedHashMap<>();
  private final Set<String> all = new HashSet<>();

  QuestionnaireCheck(Questionnaire questionnaire, List<Problem> problems) {
    this.questionnaire = questionnaire;
    this.problems = problems;
    this.all.addAll(questionnaire.fieldsByFact().keySet());
  }

  void check() {
    Set<String> ids = new HashSet<>();
    for (Question question : questionnaire.questions()) {
      if (!ids.add(question.id())) {
        report(
            question.where(),
            "duplicate-id",
            "The question id \"" + question.id() + "\" is used twice.",
            "");
      }
      if (question.text().length() > LONGEST_TEXT) {
        report(
            question.where(),
            "too-long",
            "The question is longer than " + LONGEST_TEXT + " characters.",
            "Say it shorter.");
      }
      question.fields().forEach(this::field);
    }
  }

  private void field(Field field) {
    if (before.containsKey(field.fact())) {
      report(
          field.where(), "duplicate-id", "The link id \"" + field.fact() + "\" is used twice.", "");
    }
    if (field.fact().equals(FactKinds.CLEARED)) {
      report(
          field.where(),
          "duplicate-id",
          "\"" + FactKinds.CLEARED + "\" is a name of the program's own.",
          "");
    }
    options(field);
    for (EnableWhen condition : field.conditions()) {
      for (EnableWhen.Test test : condition.tests()) {
        test(field, condition, test);
      }
    }
    before.putIfAbsent(field.fact(), field);
  }

  private void options(Field field) {
    List<Option> options = field.type().choices();
    boolean choice =
        field.type() instanceof FactType.OneOf || field.type() instanceof FactType.SeveralOf;
    if (choice && options.isEmpty()) {
      report(field.where(), "empty-list", "There is nothing to choose from.", "Add answerOption.");
    }
    Set<String> codes = new HashSet<>();
    for (Option option : options) {
      if (!codes.add(option.code())) {
        report(
            option.where(),
            "duplicate-option",
            "The answer \"" + option.code() + "\" stands here twice.",
            "");
      }
      if (option.exclusive() && !(field.type() instanceof FactType.SeveralOf)) {
        report(
            option.where(),
            "wrong-type",
            "Only an answer among several can exclude the others.",
            "");
      }
    }
    long scaled = options.stream().filter(o -> o.ordinal().isPresent()).count();
    if (scaled != 0 && scaled != options.size()) {
      report(
          field.where(),
          "missing",
          "Some answers have a place on a scale and some have none.",
          "Give all or none an ordinalValue.");
    }
  }

  private void test(Field field, EnableWhen condition, EnableWhen.Test test) {
    Field other = before.get(test.fact());
    if (other == null) {
      String mend =
          test.fact().equals(field.fact()) || all.contains(test.fact())
              ? "A condition may only look back at earlier questions."
              : Hint.didYouMean(test.fact(), all);
      report(
          test.where(),
          all.contains(test.fact()) ? "forward-condition" : "unknown-fact",
          "The condition speaks of \"" + test.fact() + "\", which is not an earlier question.",
          mend);
      return;
    }
    if (test.operator() == Operator.EXISTS) {
      if (!(test.expected() instanceof Expected.Flag)) {
        report(
            test.where(),
            "wrong-type",
            "\"exists\" is compared with true or false.",
            "Use answerBoolean.");
      }
      return;
    }
    fits(other, test);
    if (test.operator() == Operator.NOT_EQUAL) {
      notEqual(other, condition, test);
    }
  }

  private void fits(Field other, EnableWhen.Test test) {
    FactType type = other.type();
    boolean equality = test.operator() == Operator.EQUAL || test.operator() == Operator.NOT_EQUAL;
    boolean fits =
        type instanceof FactType.YesNo && test.expected() instanceof Expected.Flag && equality
            || type instanceof FactType.Amount && test.expected() instanceof Expected.Number
            || !type.choices().isEmpty() && test.expected() instanceof Expected.Coded && equality;
    if (!fits) {
      report(
          test.where(),
          "wrong-op",
          "\""
              + test.operator().code()
              + "\" with this value does not fit the answers of \""
              + test.fact()
              + "\".",
          "Yes or no and choices take =; numbers take = > < >= <= with a number.");
    } else if (test.expected() instanceof Expected.Coded coded) {
      code(other, test, coded);
    } else if (test.expected() instanceof Expected.Number number
        && type instanceof FactType.Amount amount) {
      if (number.value() < amount.minimum() || number.value() > amount.maximum()) {
        report(
            test.where(),
            "out-of-range",
            "No answer to \"" + test.fact() + "\" can be this number.",
            "");
      }
      if (amount.decimals() == 0 && number.value() != Math.rint(number.value())) {
        report(
            test.where(),
            "wrong-type",
            "\"" + test.fact() + "\" takes whole numbers only.",
            "Use answerInteger.");
      }
    }
  }

  private void code(Field other, EnableWhen.Test test, Expected.Coded coded) {
    List<String> codes = other.type().choices().stream().map(Option::code).toList();
    boolean known =
        other.type().choices().stream()
            .anyMatch(
                o ->
                    o.code().equals(coded.code())
                        && (coded.system().isEmpty() || coded.system().equals(o.system())));
    if (coded.system().isEmpty()) {
      report(test.where(), "missing", "The code has no system.", "Add the system of the option.");
    }
    if (!known) {
      report(
          test.where(),
          "unknown-value",
          "\"" + coded.code() + "\" is not an answer of \"" + test.fact() + "\".",
          Hint.didYouMean(coded.code(), codes));
    }
  }

  private void notEqual(Field other, EnableWhen condition, EnableWhen.Test test) {
    boolean paired =
        condition.all()
            && condition.tests().stream()
                .anyMatch(
                    t ->
                        t.fact().equals(test.fact())
                            && t.operator() == Operator.EXISTS
                            && t.expected().equals(new Expected.Flag(true)));
    if (!paired || other.type() instanceof FactType.SeveralOf) {
      report(
          test.where(),
          "not-equal",
          "\"!=\" is read differently by different programs.",
          "Use it only with \"exists true\" beside it under \"all\", on a question with one answer.");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
