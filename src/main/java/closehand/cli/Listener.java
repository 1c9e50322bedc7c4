package closehand.cli;

import closehand.line.Console;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes down what is said, for a face that shows it in another way; answers with what it was given.
 */
final class Listener implements Console {
  private final List<String> heard = new ArrayList<>();
  private final List<String> answers;
  private int asked;
  private boolean choosing;

  /**
   * A listener that answers what it is asked with these, one after the other, then with nothing.
   */
  Listener(String... answers) {
    this.answers = List.of(answers);
  }

  /** What was said, a paragraph or a line each. */
  List<String> heard() {
    return heard;
  }

  @Override
  public void say(String paragraph) {
    heard.add(paragraph);
    choosing = false;
  }

  /** Choices are answered here, not by the reader; so neither they nor their question are heard. */
  @Override
  public void item(String mark, String text) {
    if (!choosing && !heard.isEmpty()) {
      heard.remove(heard.size() - 1);
    }
    choosing = true;
  }

  @Override
  public void lines(List<String> lines) {
    heard.addAll(lines);
  }

  @Override
  public void gap() {
    heard.add("");
  }

  @Override
  public Optional<String> ask(String prompt) {
    asked++;
    return Optional.of(asked <= answers.size() ? answers.get(asked - 1) : "");
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
