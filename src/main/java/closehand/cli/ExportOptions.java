package closehand.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What can be typed after {@code closehand export}. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = "Hand over a case's answers in a form that other programs read.")
final class ExportOptions extends Subcommand {
  @CommandLine.Mixin private final BankOption bank = new BankOption();

  @Parameters(arity = "1", paramLabel = "CASE", description = "A saved case: its name or file.")
  private String caseName = "";

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FORM",
      description = "fhir (an HL7 FHIR R4 QuestionnaireResponse) or answers (a flat file).")
  private String form = "";

  @Option(
      names = "--share",
      paramLabel = "READER",
      description = "player (the usual), clinician or team: only what the player agreed to.")
  private String share = "player";

  @Option(names = "--out", paramLabel = "FILE", description = "Write to this new file.")
  private @Nullable Path out;

  @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
  private @Nullable Path home;

  @Override
  int run(Surroundings surroundings) throws IOException {
    AnswersOption source =
        AnswersOption.of(Optional.of(caseName), Optional.empty(), Optional.ofNullable(home));
    return new ExportCommand(surroundings, bank, source).run(form, share, Optional.ofNullable(out));
  }
}
