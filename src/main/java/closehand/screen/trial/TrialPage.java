package closehand.screen.trial;

import closehand.screen.view.Block;
import closehand.screen.view.Content;
import java.util.ArrayList;
import java.util.List;

/**
 * A page put together.
 *
 * @param content what is said
 * @param offers what can be taken, one for each line of the content that can be stood on
 */
record TrialPage(Content content, List<Offer> offers) {
  TrialPage {
    offers = List.copyOf(offers);
  }

  /**
   * A line that can be taken.
   *
   * @param digit the digit that takes it at once, or -1
   */
  record Offer(int digit, Doing doing) {}

  /** Puts a page together, piece by piece. */
  static final class Builder {
    private final String heading;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Offer> offers = new ArrayList<>();

    Builder(String heading) {
      this.heading = heading;
    }

    Builder add(Block block) {
      blocks.add(block);
      return this;
    }

    Builder say(String text) {
      return add(Block.plain(text));
    }

    Builder strong(String text) {
      return add(Block.strong(text));
    }

    Builder gap() {
      return add(Block.gap());
    }

    /** A line to take; no digit where it is below 0. */
    Builder offer(int digit, String words, Doing doing) {
      offers.add(new Offer(digit, doing));
      return add(new Block.Item(digit < 0 ? "" : Integer.toString(digit), words, ""));
    }

    Builder field(String label, String typed) {
      offers.add(new Offer(-1, new Doing.Accept()));
      return add(new Block.Field(label, typed));
    }

    TrialPage build(List<String> status) {
      List<Content.Hint> keys =
          List.of(
              new Content.Hint("?", "help"),
              new Content.Hint("Space", "next"),
              new Content.Hint("Enter", "take"),
              new Content.Hint("Backspace", "back"));
      return new TrialPage(
          new Content(heading, blocks, List.of(), status, keys, /* roomy= */ false), offers);
    }
  }
}
