package closehand.bank;

import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks the conditions under which an item of the questionnaire applies, which HL7's own validator
 * mostly lets pass: they may only look back, and must compare a question with what it can answer.
 */
final class EnableWhenCheck {
  private final Map<String, Field> before;
  private final Set<String> questions;
  private final Set<String> groups;
  private final Doubt doubt;
  private final List<Problem> problems;

  /**
   * Starts a check.
   *
   * @param before the questions asked so far, by link id; grows while the check runs
   * @param questions the link ids of all questions
   * @param groups the link ids of all groups
   */
  EnableWhenCheck(
      Map<String, Field> before,
      Set<String> questions,
      Set<String> groups,
      Doubt doubt,
      List<Problem> problems) {
    this.before = before;
    this.questions = questions;
    this.groups = groups;
    this.doubt = doubt;
    this.problems = problems;
  }

  void check(EnableWhen condition) {
    for (EnableWhen.Test test : condition.tests()) {
      Field other = before.get(test.fact());
      if (test.fact().isEmpty() || doubt.about(test.where())) {
        continue;
      }
      if (other == null) {
        unknown(test);
      } else if (test.operator() == Operator.EXISTS) {
        exists(test);
      } else if (!doubt.about(other.where())) {
        fits(other, test);
        if (test.operator() == Operator.NOT_EQUAL) {
          notEqual(other, condition, test);
        }
      }
    }
  }

  private void unknown(EnableWhen.Test test) {
    Where where = test.where().child("question");
    String name = "\"" + test.fact() + "\"";
    if (questions.contains(test.fact())) {
      report(
          where,
          "forward-condition",
          "The condition speaks of " + name + ", which is not asked before this.",
          "A condition may only look back at earlier questions.");
    } else if (groups.contains(test.fact()) || isHelp(test.fact())) {
      report(
          where,
          "condition-target",
          name + " is a group or a help text, which has no answer.",
          "Name a question inside it.");
    } else if (!doubt.lacks(Catalogue.FACTS)) {
      report(
          where,
          "unknown-fact",
          "The condition speaks of " + name + ", which is no question of this bank.",
          Hint.didYouMean(test.fact(), questions));
    }
  }

  private static boolean isHelp(String linkId) {
    return linkId.endsWith(".why")
        || linkId.endsWith(".room")
        || linkId.endsWith(".video")
        || linkId.endsWith(".alone");
  }

  private void exists(EnableWhen.Test test) {
    if (!(test.expected() instanceof Expected.Flag)) {
      report(
          test.where(),
          "wrong-type",
          "\"exists\" is compared with true or false.",
          "Use answerBoolean.");
    }
  }

  private void fits(Field other, EnableWhen.Test test) {
    FactType type = other.type();
    boolean equality = test.operator() == Operator.EQUAL || test.operator() == Operator.NOT_EQUAL;
    if (type instanceof FactType.Amount amount) {
      number(amount, test);
    } else if (type instanceof FactType.YesNo) {
      needs(test, equality && test.expected() instanceof Expected.Flag, "= and answerBoolean");
    } else if (type instanceof FactType.Words || type instanceof FactType.WordList) {
      report(
          test.where().child("question"),
          "wrong-op",
          "\"" + test.fact() + "\" is answered in free words.",
          "Only \"exists\" fits such a question.");
    } else if (equality && test.expected() instanceof Expected.Coded coded) {
      code(other, test, coded);
    } else {
      needs(test, type.choices().isEmpty(), "= and answerCoding");
    }
  }

  private void needs(EnableWhen.Test test, boolean fits, String wanted) {
    if (!fits) {
      report(
          test.where(),
          "wrong-op",
          "\""
              + test.operator().code()
              + "\" with this value does not fit the answers of \""
              + test.fact()
              + "\".",
          "Use " + wanted + ".");
    }
  }

  private void number(FactType.Amount amount, EnableWhen.Test test) {
    boolean wholeOnly = amount.decimals() == 0;
    if (!(test.expected() instanceof Expected.Number number)) {
      needs(test, false, wholeOnly ? "answerInteger" : "answerDecimal");
    } else if (wholeOnly && !number.whole()) {
      report(
          test.where(),
          "wrong-type",
          "\"" + test.fact() + "\" takes whole numbers only.",
          "Use answerInteger.");
    } else if (!wholeOnly && number.whole()) {
      report(
          test.where(),
          "wrong-type",
          "\"" + test.fact() + "\" takes numbers with decimals.",
          "Use answerDecimal.");
    } else if (number.value() < amount.minimum() || number.value() > amount.maximum()) {
      report(
          test.where(),
          "out-of-range",
          "No answer to \"" + test.fact() + "\" can be this number.",
          "Look at its minValue and maxValue.");
    }
  }

  private void code(Field other, EnableWhen.Test test, Expected.Coded coded) {
    List<Option> options = other.type().choices();
    List<String> codes = options.stream().map(Option::code).toList();
    Where where = test.where().child("answerCoding");
    if (options.isEmpty() || coded.code().isEmpty()) {
      return;
    }
    if (!codes.contains(coded.code())) {
      report(
          where.child("code"),
          "unknown-value",
          "\"" + coded.code() + "\" is not an answer of \"" + test.fact() + "\".",
          Hint.didYouMean(coded.code(), codes));
    } else if (options.stream().noneMatch(o -> is(o, coded))) {
      report(
          where,
          "wrong-system",
          "The code's system is not that of the answers of \"" + test.fact() + "\".",
          "Copy the system from the option.");
    }
  }

  private static boolean is(Option option, Expected.Coded coded) {
    return option.code().equals(coded.code()) && option.system().equals(coded.system());
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
          test.where().child("operator"),
          "not-equal",
          "\"!=\" is read differently by different programs.",
          "Use it only with \"exists true\" beside it under \"all\", on a question with one answer.");
    }
  }

  private void report(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
