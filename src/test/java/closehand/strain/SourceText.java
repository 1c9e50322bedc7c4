package closehand.strain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The texts written between quotation marks in Java files, joined where the program joins them. */
final class SourceText {
  private SourceText() {}

  /** All texts of the Java files of a package whose name begins with one of these. */
  static List<String> of(String folder, String... beginnings) throws IOException {
    List<String> texts = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("src/main/java/closehand", folder))) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (Stream.of(beginnings).anyMatch(name::startsWith) && name.endsWith(".java")) {
          texts.addAll(texts(Files.readString(file)));
        }
      }
    }
    return texts;
  }

  /** The texts in one file; two with only a plus between them are one. */
  static List<String> texts(String java) {
    List<String> texts = new ArrayList<>();
    StringBuilder between = new StringBuilder();
    int at = 0;
    while (at < java.length()) {
      if (java.startsWith("//", at)) {
        at = end(java, "\n", at);
      } else if (java.startsWith("/*", at)) {
        at = end(java, "*/", at);
      } else if (java.startsWith("'\"'", at) || java.startsWith("'\\", at)) {
        at = java.indexOf('\'', at + 2) + 1;
      } else if (java.charAt(at) == '"') {
        int close = closing(java, at);
        String text = java.substring(at + 1, close);
        boolean joined = !texts.isEmpty() && between.toString().strip().equals("+");
        if (joined) {
          text = texts.remove(texts.size() - 1) + text;
        }
        texts.add(text);
        between.setLength(0);
        at = close + 1;
      } else {
        between.append(java.charAt(at++));
      }
    }
    return texts;
  }

  private static int end(String java, String mark, int from) {
    int found = java.indexOf(mark, from + 2);
    return found < 0 ? java.length() : found + mark.length();
  }

  private static int closing(String java, int open) {
    int at = open + 1;
    while (java.charAt(at) != '"') {
      at += java.charAt(at) == '\\' ? 2 : 1;
    }
    return at;
  }
}
