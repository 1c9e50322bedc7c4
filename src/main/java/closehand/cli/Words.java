package closehand.cli;

import closehand.report.Clean;
import closehand.report.Glyphs;

/** Small pieces of text for messages. */
final class Words {
  private Words() {}

  /** A name from outside, fit to be shown. */
  static String clean(String name) {
    return Clean.of(name, Glyphs.UNICODE);
  }

  /** Where in the program something went wrong; names only program code, never a value. */
  static String place(Throwable e) {
    for (StackTraceElement element : e.getStackTrace()) {
      if (element.getClassName().startsWith("closehand.")) {
        return element.getClassName().substring("closehand.".length())
            + ":"
            + element.getLineNumber();
      }
    }
    return "an unknown place";
  }
}
