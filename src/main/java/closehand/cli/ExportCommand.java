package closehand.cli;

import closehand.bank.Questionnaire;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.SavedCase;
import closehand.interview.Sharing;
import closehand.json.FlatWriter;
import closehand.json.ResponseWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** Hands over a case's answers, as far as the player agreed. */
final class ExportCommand {
  private final Surroundings surroundings;
  private final BankOption bank;
  private final AnswersOption source;

  ExportCommand(Surroundings surroundings, BankOption bank, AnswersOption source) {
    this.surroundings = surroundings;
    this.bank = bank;
    this.source = source;
  }

  int run(String form, String share, Optional<Path> out) throws IOException {
    Optional<Sharing> reader = Sharing.of(share);
    if (reader.isEmpty() || !(form.equals("fhir") || form.equals("answers"))) {
      surroundings
          .error()
          .println("--to is fhir or answers; --share is player, clinician or team.");
      return ExitCode.USAGE;
    }
    CaseLoading loading = new CaseLoading(surroundings, bank.folder(), source);
    Optional<Case> found = loading.load();
    if (found.isEmpty()) {
      return loading.exitCode();
    }
    if (!reader.get().agreed(found.get().answers())) {
      return NotAgreed.say(reader.get(), found.get().name(), surroundings);
    }
    String text = text(form, reader.get(), found.get(), loading);
    if (out.isPresent()) {
      return NewFile.write(out.get(), text.getBytes(StandardCharsets.UTF_8), surroundings);
    }
    surroundings.output().print(text);
    surroundings.output().flush();
    return ExitCode.DONE;
  }

  private static String text(String form, Sharing reader, Case one, CaseLoading loading) {
    Questionnaire questionnaire = loading.pages().bank().questionnaire();
    Interview interview = one.interview().orElseThrow();
    SavedCase saved = one.saved().orElseThrow();
    Answers visible = reader.visible(questionnaire, interview.effective());
    return form.equals("answers")
        ? FlatWriter.write(visible)
        : ResponseWriter.write(
            questionnaire,
            visible,
            new ResponseWriter.Header(
                saved.name(), saved.asker().code(), saved.saved(), /* stopped= */ false));
  }
}
