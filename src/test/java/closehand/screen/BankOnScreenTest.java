package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Field;
import closehand.bank.Question;
import closehand.bank.Section;
import closehand.interview.Interview;
import closehand.interview.Prompt;
import closehand.interview.Provenance;
import closehand.report.Clean;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.view.Spot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every text of the core bank, as it stands on a screen. */
class BankOnScreenTest {
  private static final List<ScreenSize> SIZES =
      List.of(new ScreenSize(80, 24), new ScreenSize(40, 12));

  /** Most words of a sentence that is put to somebody. */
  private static final int MOST_WORDS = 20;

  /** Longest word that must stand whole on a screen of 40 columns, in characters. */
  private static final int LONGEST_WORD = 34;

  private static final Pattern FIGURES_OF_SPEECH =
      Pattern.compile(
          "(?i)piece of cake|at the end of the day|rule of thumb|in a nutshell|ballpark|up to speed"
              + "|keep an eye|on the same page|hit the ground|touch base|low-hanging|bite the bullet"
              + "|break a leg|under the weather|back to square|think outside|heads up|no-brainer"
              + "|get the hang|in the long run|rule out of|step up|push through|game changer");

  private static ScreenModel start(ScreenSize size, Glyphs glyphs) {
    Interview interview =
        Interview.begin(
            CoreDesk.BANK.questionnaire(), Interview.Route.FULL, Provenance.By.VOLUNTEER);
    return ScreenModel.start(size, glyphs, Settings.USUAL, List.of())
        .holding(new CoreDesk(), interview, List.of());
  }

  /** The question with this field, as if it came up now. */
  private static ScreenModel asking(
      ScreenModel start, Section section, Question question, Field field) {
    Prompt prompt =
        new Prompt(
            section,
            question,
            field,
            true,
            "Question 100 of about 106, part 16 of 16: " + section.title(),
            question.text(),
            field.label(),
            List.of("In the room: " + question.inTheRoom(), "On a call: " + question.overVideo()),
            Prompt.Again.NO,
            Optional.empty(),
            Optional.empty(),
            List.of());
    QuestionScreen screen = QuestionScreen.of(start.talk().orElseThrow(), prompt);
    return start.piled(List.of(start.fresh(screen)));
  }

  /** All words on a screen, from its top to its end, going on a screenful at a time. */
  private static Set<String> words(ScreenModel model) {
    Set<String> words = new LinkedHashSet<>();
    ScreenModel next = model.at(Spot.START);
    for (int i = 0; i < 80; i++) {
      Frame frame = next.frame();
      for (String row : frame.text()) {
        assertTrue(row.length() <= frame.size().columns());
        words.addAll(List.of(row.strip().split("\\s+")));
      }
      ScreenModel further = next.after(Key.Named.DOWN).model();
      if (further.top().spot().chosen() < next.top().spot().chosen()) {
        break;
      }
      next = further;
    }
    return words;
  }

  private static List<String> shouldStand(String text, Glyphs glyphs) {
    return List.of(Clean.of(text, glyphs).strip().split("\\s+")).stream()
        .filter(w -> w.length() <= LONGEST_WORD)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Glyphs.class)
  void a23EveryQuestionStandsWholeWithItsAnswersAlsoAt40By12(Glyphs glyphs) {
    for (ScreenSize size : SIZES) {
      ScreenModel start = start(size, glyphs);
      for (Section section : CoreDesk.BANK.questionnaire().sections()) {
        for (Question question : section.questions()) {
          for (Field field : question.fields()) {
            ScreenModel model = asking(start, section, question, field);
            Set<String> words = words(model);
            List<String> texts = new ArrayList<>(List.of(question.text(), field.label()));
            model.shown().offers().forEach(o -> texts.add(o.words()));
            for (String text : texts) {
              for (String word : shouldStand(text, glyphs)) {
                assertTrue(words.contains(word), () -> size + ": \"" + word + "\" of " + text);
              }
            }
          }
        }
      }
    }
  }

  @Test
  void a23ThePlainScreenShowsNoQuestionMarkThatIsNotInTheText() {
    for (String text : BankTexts.all()) {
      String plain = Clean.of(text, Glyphs.ASCII);
      assertTrue(plain.chars().allMatch(c -> c >= ' ' && c <= '~'), plain);
      assertEquals(count(text), count(plain), () -> text + "\n" + plain);
    }
  }

  private static long count(String text) {
    return text.chars().filter(c -> c == '?').count();
  }

  @Test
  void a23EveryOtherTextOfTheBankStandsWholeToo() {
    ScreenModel start = start(new ScreenSize(40, 12), Glyphs.ASCII);
    for (String text : BankTexts.all()) {
      Set<String> words = words(start.pushing(ReadingScreen.lines("A text", List.of(text))));
      for (String word : shouldStand(text, Glyphs.ASCII)) {
        assertTrue(words.contains(word), () -> "\"" + word + "\" of " + text);
      }
    }
  }

  @Test
  void a24SentencesOfTheBankAreShortAndPlain() {
    Set<String> texts = BankTexts.questions();
    texts.addAll(BankTexts.cautions());
    assertPlain(texts);
  }

  @Test
  void a24SentencesOfTheScreensAreShortAndPlain() {
    Set<String> texts = new LinkedHashSet<>();
    for (Scenes.Scene scene : Scenes.all()) {
      ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
      Shown shown = model.shown();
      texts.add(shown.heading());
      shown.offers().forEach(o -> texts.add(o.words()));
      shown.blocks().stream()
          .filter(b -> b instanceof closehand.screen.view.Block.Prose)
          .map(b -> ((closehand.screen.view.Block.Prose) b).text())
          .forEach(texts::add);
      texts.add(model.said().sentence());
    }
    assertPlain(texts);
  }

  private static void assertPlain(Set<String> texts) {
    List<String> wrong = new ArrayList<>();
    for (String text : texts) {
      for (String sentence : BankTexts.sentences(text)) {
        int words = sentence.split("\\s+").length;
        if (words > MOST_WORDS || FIGURES_OF_SPEECH.matcher(sentence).find()) {
          wrong.add(words + ": " + sentence);
        }
      }
    }
    assertEquals("", wrong.stream().collect(Collectors.joining("\n")));
  }
}
