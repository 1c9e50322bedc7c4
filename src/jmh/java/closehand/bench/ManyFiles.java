package closehand.bench;

import closehand.bank.Problem;
import closehand.interview.Answers;
import closehand.interview.FlatAnswers;
import closehand.json.AdviceWriter;
import closehand.json.FlatReader;
import closehand.json.JsonReader;
import closehand.rules.RuleBook;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Ten thousand answers files advised in one process, from its start to the last line of JSON. The
 * files are the examples, each with some of its answers left out by chance (seeded).
 */
public final class ManyFiles {
  private static final int FILES = 10_000;

  private ManyFiles() {}

  /**
   * With a folder: makes the files there if it is empty, else advises on every file in it and
   * prints the seconds since the process began.
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    try (Stream<Path> found = Files.list(folder)) {
      List<Path> files = found.sorted().toList();
      if (files.isEmpty()) {
        make(folder);
      } else {
        advise(files);
      }
    }
  }

  private static void advise(List<Path> files) throws IOException {
    RuleBook rules = RuleBook.of(RulesBenchmark.readBank());
    long characters = 0;
    int refused = 0;
    for (Path file : files) {
      List<Problem> problems = new ArrayList<>();
      FlatAnswers flat =
          FlatAnswers.of(
              rules.bank(),
              FlatReader.read(
                  JsonReader.read(file.toString(), Files.readAllBytes(file), problems)
                      .orElseThrow(),
                  problems));
      Answers answers = flat.answers();
      refused += problems.isEmpty() && flat.problems().isEmpty() ? 0 : 1;
      characters += AdviceWriter.write(rules.advise(answers), Map.of()).length();
    }
    long begun = ManagementFactory.getRuntimeMXBean().getStartTime();
    System.out.println(
        files.size()
            + " files, "
            + refused
            + " refused, "
            + characters
            + " characters, "
            + (System.currentTimeMillis() - begun)
            + " ms since the process began");
  }

  private static void make(Path folder) throws IOException {
    List<List<String>> examples = new ArrayList<>();
    try (Stream<Path> found = Files.list(Path.of("examples"))) {
      for (Path one :
          found.map(f -> f.resolve("answers.json")).filter(Files::exists).sorted().toList()) {
        examples.add(Files.readAllLines(one));
      }
    }
    Random chance = new Random(1);
    for (int i = 0; i < FILES; i++) {
      List<String> lines = new ArrayList<>(examples.get(i % examples.size()));
      lines.removeIf(line -> line.matches(" *\"[^\"]+\" *: *[^\\[{]*,") && chance.nextInt(4) == 0);
      Files.write(folder.resolve("player-" + i + ".json"), lines);
    }
  }
}
