package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.line.Console;
import closehand.line.LineFace;
import closehand.report.Desk;
import closehand.report.Glyphs;
import closehand.screen.CaseBook;
import closehand.screen.NoBook;
import closehand.screen.ScreenFace;
import closehand.screen.Settings;
import closehand.screen.frame.Key;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A22: the transcript of the full screen is what the line face says. */
class TranscriptTest {
  @TempDir private Path folder = Path.of(".");

  private static final String TODAY = "2026-11-25";

  @Test
  void theTranscriptIsWhatTheLineFaceSays() throws IOException {
    Pages pages = new Pages(BankSource.load(Optional.empty()).bank().orElseThrow());
    List<String> typed =
        List.of("1", "2", "y", "y", "1", "3", "k", "?", "h", "b", "3", "s", "p", "o");
    Recorder line = new Recorder(typed);
    Desk desk = new CaseDesk(pages, new Nowhere(), Glyphs.UNICODE, TODAY);
    new LineFace(line, desk, begun(pages.bank())).run();

    Recorder transcript = new Recorder(List.of());
    ScreenFace face =
        new ScreenFace(new NoBook(), Glyphs.UNICODE, Settings.USUAL)
            .followedBy(new Transcript(transcript))
            .with(
                new CaseBook.Opened(
                    Optional.of(new CaseBook.Holding(desk, begun(pages.bank()))), List.of()));
    // 01 is "I don't know"; ? is ? and h of the line face; < stands for Backspace; 07 is more.
    for (char key : "12yy1301?0<380710007200".toCharArray()) {
      face.press(key == '<' ? Key.Named.BACKSPACE : Key.of(key));
    }
    "06".chars().forEach(key -> face.press(Key.of((char) key)));
    assertEquals(String.join("\n", line.said), String.join("\n", transcript.said));
  }

  @Test
  void whatComesBeforeTheQuestionsIsToldToo() {
    Recorder transcript = new Recorder(List.of());
    ScreenFace face =
        new ScreenFace(new NoBook(), Glyphs.UNICODE, Settings.USUAL)
            .followedBy(new Transcript(transcript));
    // The start, the settings with one change and back, who asks, how long, how it is kept.
    for (char key : "x5101".toCharArray()) {
      face.frame(closehand.screen.frame.ScreenSize.USUAL);
      face.press(Key.of(key));
    }
    face.frame(closehand.screen.frame.ScreenSize.USUAL);
    String told = String.join("\n", transcript.said);
    List<String> order =
        List.of(
            "1 Start a new interview",
            "1 Shared view, wide apart and without notes for the interviewer: off",
            "1 Shared view, wide apart and without notes for the interviewer: on",
            "Who asks the questions?");
    int from = 0;
    for (String part : order) {
      assertTrue(told.indexOf(part, from) >= 0, part + "\n" + told);
      from = told.indexOf(part, from);
    }
    assertEquals(told.split("Who asks the questions", -1).length, 2, told);
  }

  @Test
  void theFileHoldsEveryLineAtOnceAndKeepsWhatItHeld() throws IOException {
    Pages pages = new Pages(BankSource.load(Optional.empty()).bank().orElseThrow());
    Path file = folder.resolve("follow.txt");
    Desk desk = new CaseDesk(pages, new Nowhere(), Glyphs.UNICODE, TODAY);
    for (int sitting = 1; sitting <= 2; sitting++) {
      Surroundings here =
          new Surroundings(
              InputStream.nullInputStream(),
              System.out,
              System.out,
              Map.of("COLUMNS", "72"),
              Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC),
              false,
              StandardCharsets.UTF_8);
      new ScreenFace(new NoBook(), Glyphs.UNICODE, Settings.USUAL)
          .followedBy(Transcript.in(file, here, Glyphs.UNICODE))
          .with(
              new CaseBook.Opened(
                  Optional.of(new CaseBook.Holding(desk, begun(pages.bank()))), List.of()));
      String text = Files.readString(file);
      assertEquals(sitting + 1, text.split("Are you happy to start", -1).length, text);
    }
  }

  private static Interview begun(Bank bank) {
    return Interview.begin(bank.questionnaire(), Interview.Route.CORE, Provenance.By.VOLUNTEER);
  }

  /** Takes down everything said; types what it was given. */
  private static final class Recorder implements Console {
    private final List<String> said = new ArrayList<>();
    private final Deque<String> lines;

    Recorder(List<String> lines) {
      this.lines = new ArrayDeque<>(lines);
    }

    @Override
    public void say(String paragraph) {
      said.add(paragraph);
    }

    @Override
    public void item(String mark, String text) {
      said.add(mark + " " + text);
    }

    @Override
    public void lines(List<String> some) {
      said.addAll(some);
    }

    @Override
    public void gap() {
      said.add("");
    }

    @Override
    public Optional<String> ask(String prompt) {
      return prompt.startsWith("Press Enter") ? Optional.of("") : Optional.ofNullable(lines.poll());
    }

    @Override
    public boolean scripted() {
      return false;
    }

    @Override
    public int lineNumber() {
      return 0;
    }
  }

  private static final class Nowhere implements Kept {
    @Override
    public String name() {
      return "calm-fern";
    }

    @Override
    public void save(Interview interview) {}

    @Override
    public String trouble(IOException e) {
      return "";
    }

    @Override
    public void delete() {}
  }
}
