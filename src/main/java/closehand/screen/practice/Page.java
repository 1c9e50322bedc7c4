package closehand.screen.practice;

import closehand.screen.view.Block;
import closehand.screen.view.Content;
import java.util.ArrayList;
import java.util.List;

/**
 * A practice screen put together.
 *
 * @param content what is said
 * @param choices what can be taken, one for each item of the content
 */
record Page(Content content, List<Choice> choices) {
  Page {
    choices = List.copyOf(choices);
  }

  /** Puts a page together, piece by piece. */
  static final class Builder {
    private final String heading;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Choice> choices = new ArrayList<>();
    private final List<String> status = new ArrayList<>();

    Builder(String heading) {
      this.heading = heading;
    }

    Builder say(String text) {
      blocks.add(Block.plain(text));
      return this;
    }

    Builder strong(String text) {
      blocks.add(Block.strong(text));
      return this;
    }

    Builder warn(String text) {
      blocks.add(Block.warning(text));
      return this;
    }

    Builder gap() {
      blocks.add(Block.gap());
      return this;
    }

    Builder paragraphs(List<String> lines) {
      lines.forEach(l -> say(l).gap());
      return this;
    }

    Builder offer(int digit, String words, Choice.Doing doing) {
      choices.add(new Choice(digit, words, doing));
      blocks.add(new Block.Item(Integer.toString(digit), words, ""));
      return this;
    }

    Builder status(String sentence) {
      if (!sentence.isBlank()) {
        status.add(sentence);
      }
      return this;
    }

    /** A page with things to take. */
    Page menu() {
      return build(
          List.of(
              new Content.Hint("Backspace", "stop: pain"),
              new Content.Hint("Space", "next"),
              new Content.Hint("Enter", "take")));
    }

    /** A page on which every key belongs to the player's inputs, but one. */
    Page keysBelongToInputs() {
      return build(List.of(new Content.Hint("Backspace", "stop: pain, or a rest")));
    }

    private Page build(List<Content.Hint> keys) {
      return new Page(
          new Content(heading, blocks, List.of(), status, keys, /* roomy= */ false), choices);
    }
  }
}
