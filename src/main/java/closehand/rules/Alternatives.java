package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;

/** The other answers to a fact; lists whose number alone counts are changed by number. */
final class Alternatives {
  private Alternatives() {}

  /** Every other answer to a fact that has exactly one value now. */
  static List<Alternative> of(Asked asked, long[] state, Influence influence) {
    return asked.shape() instanceof SeveralShape several
            && asked.field().type() instanceof FactType.SeveralOf
            && influence.onlyCounted(asked)
        ? counts(several, asked.slot(), state)
        : Alternative.to(asked, state);
  }

  /** Other numbers of picks, ascending: picks are taken off from the last, added from the first. */
  private static List<Alternative> counts(SeveralShape several, int slot, long[] state) {
    List<String> picked = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (int i = 0; i < several.width(); i++) {
      Option option = several.options().get(i);
      if (!option.exclusive()) {
        (state[slot + i] == Shape.YES ? picked : left).add(option.code());
      }
    }
    List<Alternative> others = new ArrayList<>();
    for (int count = 0; count <= picked.size() + left.size(); count++) {
      if (count != picked.size()) {
        List<String> then = new ArrayList<>(picked.subList(0, Math.min(count, picked.size())));
        then.addAll(left.subList(0, Math.max(0, count - picked.size())));
        others.add(
            new Alternative(
                new Value.Codes(then), new Change.To.Counted(count, count), count - picked.size()));
      }
    }
    return others;
  }
}
