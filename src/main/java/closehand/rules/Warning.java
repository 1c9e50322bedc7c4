package closehand.rules;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import java.util.List;

/**
 * A caution that stands, or a stop that is not cleared.
 *
 * @param caution the caution
 * @param cautionClass the strongest class any rule raises it with
 * @param because the rules that raise it (or, not cleared, the open rules that could)
 * @param waitsFor for a stop not cleared, the facts it waits for; empty otherwise
 */
public record Warning(
    Caution caution, CautionClass cautionClass, List<Finding> because, List<String> waitsFor) {
  public Warning {
    because = List.copyOf(because);
    waitsFor = List.copyOf(waitsFor);
  }
}
