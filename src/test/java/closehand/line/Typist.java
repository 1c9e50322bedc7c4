package closehand.line;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answers;
import closehand.interview.Prompt;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A console at which somebody types the answers of a file, one after the other, as the questions
 * come.
 */
final class Typist implements Console {
  private final Answers wanted;
  private Supplier<Optional<Prompt>> current = Optional::empty;
  private final List<String> shown = new ArrayList<>();
  private int asked;

  Typist(Answers wanted) {
    this.wanted = wanted;
  }

  /** Sits down at a face and runs it to its end. */
  LineFace.Ending run(LineFace face) {
    current = () -> face.interview().current();
    return face.run();
  }

  List<String> shown() {
    return shown;
  }

  int asked() {
    return asked;
  }

  @Override
  public Optional<String> ask(String prompt) {
    shown.add(prompt);
    if (prompt.startsWith("Press Enter")) {
      return Optional.of("");
    }
    asked++;
    if (asked > 2000) {
      throw new AssertionError("the interview does not end");
    }
    return Optional.of(current.get().map(p -> typed(p.field())).orElse("q"));
  }

  private String typed(Field field) {
    return wanted.value(field.fact()).map(v -> typed(field.type(), v)).orElse(":l");
  }

  private static String typed(FactType type, Value value) {
    if (value instanceof Value.Flag flag) {
      return flag.value() ? "y" : "n";
    }
    if (value instanceof Value.Number number) {
      return Wording.number(number.value());
    }
    if (value instanceof Value.Code code) {
      return number(type, code.code());
    }
    if (value instanceof Value.Codes codes) {
      return codes.codes().isEmpty()
          ? "none"
          : String.join(" ", codes.codes().stream().map(c -> number(type, c)).toList());
    }
    return value instanceof Value.Text text
        ? "=" + text.words()
        : "=" + String.join(", ", ((Value.Texts) value).words());
  }

  private static String number(FactType type, String code) {
    List<String> codes = type.choices().stream().map(Option::code).toList();
    return Integer.toString(codes.indexOf(code) + 1);
  }

  @Override
  public void say(String paragraph) {
    shown.add(paragraph);
  }

  @Override
  public void item(String mark, String text) {
    shown.add(mark + " " + text);
  }

  @Override
  public void lines(List<String> lines) {
    shown.addAll(lines);
  }

  @Override
  public void gap() {
    shown.add("");
  }

  @Override
  public boolean scripted() {
    return false;
  }

  @Override
  public int lineNumber() {
    return asked;
  }
}
