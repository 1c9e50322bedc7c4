package closehand.line;

import closehand.interview.Entry;
import closehand.interview.NamedList;
import closehand.interview.Prompt;
import closehand.interview.Value;
import java.util.List;
import java.util.Map;

/**
 * Reads a typed line against a question whose words must name entries of a list, or any question.
 */
final class Listed {
  private Listed() {}

  /**
   * What the line gives.
   *
   * @param names code and name of what may be named; empty where any words will do
   */
  static Entry.Line read(Prompt prompt, String text, Map<String, String> names) {
    if (names.isEmpty()) {
      return Entry.readLine(prompt.lineOfFields(), text);
    }
    NamedList.Outcome outcome = new NamedList(names).read(text);
    if (outcome instanceof NamedList.Outcome.Refused refused) {
      return new Entry.Line.NotRead(refused.sentence() + " r shows the list again.");
    }
    List<String> codes = ((NamedList.Outcome.Read) outcome).codes();
    return new Entry.Line.Filled(
        List.of(new Entry.Line.For(prompt.field().fact(), new Value.Texts(codes))));
  }
}
