package closehand.screen;

import closehand.bank.Approach;
import closehand.bank.Caution;
import closehand.bank.Field;
import closehand.bank.GameProfile;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Rule;
import closehand.bank.Section;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Every text of the core bank that a screen can show. */
final class BankTexts {
  private BankTexts() {}

  /** What is asked and offered, with its reasons and how to see it. */
  static Set<String> questions() {
    Set<String> texts = new LinkedHashSet<>();
    for (Section section : CoreDesk.BANK.questionnaire().sections()) {
      texts.add(section.title());
      for (Question question : section.questions()) {
        texts.addAll(
            List.of(question.text(), question.why(), question.inTheRoom(), question.overVideo()));
        question.remoteText().ifPresent(texts::add);
        for (Field field : question.fields()) {
          texts.add(field.label());
          field.remoteLabel().ifPresent(texts::add);
          field.type().choices().stream().map(Option::display).forEach(texts::add);
        }
      }
    }
    texts.removeIf(String::isBlank);
    return texts;
  }

  /** Stops, cautions and notes. */
  static Set<String> cautions() {
    Set<String> texts = new LinkedHashSet<>();
    for (Caution caution : CoreDesk.BANK.cautions()) {
      texts.addAll(List.of(caution.title(), caution.message(), caution.contact(), caution.brief()));
      texts.addAll(caution.actions());
      caution
          .variants()
          .forEach(
              v -> {
                texts.addAll(List.of(v.title(), v.message(), v.contact(), v.brief()));
                texts.addAll(v.actions());
              });
    }
    texts.removeIf(String::isBlank);
    return texts;
  }

  /** Controls, reasons and games. */
  static Set<String> suggestions() {
    Set<String> texts = new LinkedHashSet<>();
    for (Approach approach : CoreDesk.BANK.approaches()) {
      Approach.Words words = approach.words();
      texts.addAll(
          List.of(words.name(), words.brief(), words.summary(), words.offers(), words.effectors()));
      texts.addAll(List.of(words.reach(), words.steadiness(), words.goodAt(), words.badAt()));
      texts.addAll(List.of(words.strain(), words.contraIndications(), words.mounting()));
      texts.addAll(List.of(words.borrow(), words.firstTry()));
    }
    CoreDesk.BANK.rules().stream().map(Rule::reason).forEach(texts::add);
    for (GameProfile game : CoreDesk.BANK.games()) {
      texts.add(game.title());
      texts.add(game.note());
      texts.addAll(game.settings());
      game.actions().stream().map(GameProfile.Action::name).forEach(texts::add);
    }
    texts.removeIf(String::isBlank);
    return texts;
  }

  static Set<String> all() {
    Set<String> texts = questions();
    texts.addAll(cautions());
    texts.addAll(suggestions());
    return texts;
  }

  /** The sentences of a text; a colon and a semicolon end one too, as they do when read aloud. */
  static List<String> sentences(String text) {
    List<String> sentences = new ArrayList<>();
    for (String sentence : text.split("[.!?:;]+(?=\\s|$)")) {
      if (!sentence.isBlank()) {
        sentences.add(sentence.strip());
      }
    }
    return sentences;
  }
}
