package closehand.screen;

import closehand.screen.view.Block;
import closehand.screen.view.Content;
import java.util.ArrayList;
import java.util.List;

/**
 * A screen put together: what is said, and what can be taken, in the same order.
 *
 * @param heading where this is
 * @param blocks the body; its items are the offers
 * @param offers what can be taken, one for each item and field of the body
 * @param aside what may stand beside
 * @param begin the offer the cursor stands on at first
 */
record Shown(String heading, List<Block> blocks, List<Offer> offers, List<Block> aside, int begin) {
  Shown {
    blocks = List.copyOf(blocks);
    offers = List.copyOf(offers);
    aside = List.copyOf(aside);
  }

  Content content(List<String> status, List<Content.Hint> keys, boolean roomy) {
    return new Content(heading, blocks, aside, status, keys, roomy);
  }

  /** Puts a screen together, piece by piece. */
  static final class Builder {
    private final String heading;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Offer> offers = new ArrayList<>();
    private final List<Block> aside = new ArrayList<>();
    private int begin;

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

    Builder gap() {
      return add(Block.gap());
    }

    Builder offer(Offer offer) {
      offers.add(offer);
      String mark = offer.digit() < 0 ? "" : Integer.toString(offer.digit());
      return add(new Block.Item(mark, offer.words(), offer.word()));
    }

    Builder offer(int digit, String words, Act act) {
      return offer(Offer.of(digit, words, act));
    }

    Builder field(String label, String typed) {
      offers.add(Offer.plain(label, new Act.Accept()));
      return add(new Block.Field(label, typed));
    }

    Builder beside(Block block) {
      aside.add(block);
      return this;
    }

    /** The cursor begins at the offer put down last. */
    Builder beginHere() {
      begin = Math.max(0, offers.size() - 1);
      return this;
    }

    int offers() {
      return offers.size();
    }

    Shown build() {
      return new Shown(heading, blocks, offers, aside, begin);
    }
  }
}
