package closehand.rules.next;

import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.Map;
import java.util.TreeMap;

/** A number over answers: the same for the same, on every machine. */
final class Fingerprint {
  private Fingerprint() {}

  static long of(Answers answers) {
    StringBuilder text = new StringBuilder();
    for (Map.Entry<String, Answers.Recorded> entry : new TreeMap<>(answers.byFact()).entrySet()) {
      text.append('\n').append(entry.getKey()).append('=').append(words(entry.getValue().answer()));
    }
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
    }
    return hash;
  }

  private static String words(Answer answer) {
    if (answer instanceof Answer.Absent absent) {
      return absent.reason().code();
    }
    Value value = ((Answer.Given) answer).value();
    if (value instanceof Value.Code code) {
      return code.code();
    }
    if (value instanceof Value.Codes codes) {
      return String.join(",", codes.codes());
    }
    if (value instanceof Value.Number number) {
      return Double.toString(number.value());
    }
    // Free words never matter to a rule.
    return value instanceof Value.Flag flag ? Boolean.toString(flag.value()) : "";
  }
}
