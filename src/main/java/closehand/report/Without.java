package closehand.report;

import closehand.bank.Caution;
import closehand.rules.Warning;
import java.util.function.Predicate;

/** A caution without actions that would say something wrong beside the rest of a page. */
final class Without {
  private Without() {}

  /** The warning without the actions that match; the same one where none does. */
  static Warning actions(Warning warning, Predicate<String> unwanted) {
    Caution caution = warning.caution();
    if (caution.actions().stream().noneMatch(unwanted)) {
      return warning;
    }
    Caution kept =
        new Caution(
            caution.code(),
            caution.classes(),
            caution.lowerable(),
            caution.bindsClinicians(),
            caution.title(),
            caution.message(),
            caution.actions().stream().filter(unwanted.negate()).toList(),
            caution.clinician(),
            caution.contact(),
            caution.variants(),
            caution.keep(),
            caution.brief(),
            caution.where());
    return new Warning(kept, warning.cautionClass(), warning.because(), warning.waitsFor());
  }
}
