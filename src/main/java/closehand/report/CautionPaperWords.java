package closehand.report;

import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import java.util.ArrayList;
import java.util.List;

/** The cautions of a bank in words. */
final class CautionPaperWords {
  private CautionPaperWords() {}

  static PaperPart of(Bank bank) {
    PaperPart part =
        new PaperPart("cautions", "Cautions", "Where several stand, they are told in this order.");
    bank.cautions().forEach(c -> part.add(c.code(), lines(c)));
    return part;
  }

  private static List<String> lines(Caution caution) {
    List<String> lines = new ArrayList<>();
    String classes =
        String.join(" or ", caution.classes().stream().map(CautionClass::code).toList());
    lines.add(
        Phrases.sentence(caution.title())
            + " ("
            + classes
            + (caution.lowerable() ? "; a clinician may lower it" : "; cannot be lowered")
            + (caution.bindsClinicians()
                ? "; tasks it holds wait for clinicians too"
                : "; a clinician may run the tasks it holds")
            + ")");
    lines.add(
        said(caution.message(), caution.actions(), caution.contact())
            + (caution.clinician().isEmpty()
                ? ""
                : " For clinicians: " + Phrases.sentence(caution.clinician())));
    if (!caution.brief().isEmpty()) {
      lines.add("In few words: " + caution.brief());
    }
    if (!caution.keep().isEmpty()) {
      lines.add("No short page leaves out: " + String.join(" ", caution.keep()));
    }
    for (Caution.Variant variant : caution.variants()) {
      lines.add(
          "As "
              + variant.cautionClass().code()
              + ": "
              + Phrases.sentence(variant.title())
              + " "
              + said(variant.message(), variant.actions(), variant.contact())
              + (variant.brief().isEmpty() ? "" : " In few words: " + variant.brief()));
    }
    return lines;
  }

  private static String said(String message, List<String> actions, String contact) {
    return message
        + (actions.isEmpty() ? "" : " To do: " + String.join(" ", actions))
        + (contact.isEmpty() ? "" : " Whom to ask: " + Phrases.sentence(contact));
  }
}
