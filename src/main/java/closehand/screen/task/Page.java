package closehand.screen.task;

import closehand.screen.view.Block;
import closehand.screen.view.Content;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the screen, with what each item does.
 *
 * @param content what is said
 * @param doings what each item does, in order
 * @param digits the digit of each item, in order
 */
record Page(Content content, List<Doing> doings, List<Integer> digits) {
  Page {
    doings = List.copyOf(doings);
    digits = List.copyOf(digits);
  }

  /** What an item does. */
  sealed interface Doing {
    /** Goes on. */
    record Next() implements Doing {}

    /** Takes, or picks, the choice of this number. */
    record Take(int choice) implements Doing {}

    /** The next of several pages of choices. */
    record More() implements Doing {}

    /** All picks are made. */
    record Picked() implements Doing {}

    /** The typed number is right. */
    record Right() implements Doing {}

    /** The number is typed again. */
    record Again() implements Doing {}

    /** The number is not known. */
    record NotKnown() implements Doing {}

    /** Stop, because of pain. */
    record Pain() implements Doing {}

    /** Stop, for another reason. */
    record Stop() implements Doing {}

    /** Leave the task. */
    record Leave() implements Doing {}

    /** Back from the reasons to stop. */
    record Back() implements Doing {}
  }

  /** What the item of a digit does. */
  Optional<Doing> byDigit(int digit) {
    int at = digits.indexOf(digit);
    return at < 0 ? Optional.empty() : Optional.of(doings.get(at));
  }

  /** Puts a page together. */
  static final class Builder {
    private final String heading;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Doing> doings = new ArrayList<>();
    private final List<Integer> digits = new ArrayList<>();
    private final List<String> status = new ArrayList<>();

    Builder(String heading) {
      this.heading = heading;
    }

    Builder say(List<String> paragraphs) {
      for (int i = 0; i < paragraphs.size(); i++) {
        blocks.add(i == 0 ? Block.strong(paragraphs.get(i)) : Block.plain(paragraphs.get(i)));
        blocks.add(Block.gap());
      }
      return this;
    }

    Builder hint(String text) {
      blocks.add(Block.plain(text.strip()));
      blocks.add(Block.gap());
      return this;
    }

    Builder typed(String label, String typed) {
      blocks.add(Block.plain(label + ": " + (typed.isEmpty() ? "_" : typed)));
      blocks.add(Block.gap());
      return this;
    }

    Builder offer(int digit, String words, boolean picked, Doing doing) {
      doings.add(doing);
      digits.add(digit);
      String mark = digit < 0 ? "" : Integer.toString(digit);
      blocks.add(new Block.Item(mark, words, picked ? "(chosen)" : ""));
      return this;
    }

    Builder gap() {
      blocks.add(Block.gap());
      return this;
    }

    Builder status(String sentence) {
      status.add(sentence);
      return this;
    }

    Page build(Content.Hint... keys) {
      return new Page(
          new Content(heading, blocks, List.of(), status, List.of(keys), /* roomy= */ false),
          doings,
          digits);
    }
  }
}
