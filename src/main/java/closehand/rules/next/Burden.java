package closehand.rules.next;

import closehand.bank.FactType;
import closehand.bank.Field;
import java.util.List;

/**
 * What a question asks of the player, beside a plain question with one answer to pick, which is 1.
 * Practice estimates without a published source.
 */
final class Burden {
  private static final double FIRST_FIELD = 1;
  private static final double FURTHER_FIELD = 0.4;
  private static final double LIST = 0.3;
  private static final double NUMBER = 0.5;
  private static final double WORDS = 2;
  private static final double TASK = 3;

  private Burden() {}

  /** The burden of the fields of a question that are still open; at least one. */
  static double of(List<Field> open) {
    double burden = FIRST_FIELD + FURTHER_FIELD * (open.size() - 1);
    for (Field field : open) {
      burden += kind(field.type()) / open.size();
    }
    return open.stream().anyMatch(f -> f.task().isPresent()) ? burden + TASK : burden;
  }

  private static double kind(FactType type) {
    if (type instanceof FactType.Amount) {
      return NUMBER;
    }
    if (type instanceof FactType.SeveralOf) {
      return LIST;
    }
    return type instanceof FactType.Words || type instanceof FactType.WordList ? WORDS : 0;
  }
}
