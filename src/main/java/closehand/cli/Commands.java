package closehand.cli;

import closehand.bank.Problem;
import closehand.report.Glyphs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command line: reads options and hands over to the commands. */
final class Commands {
  private Commands() {}

  /**
   * Runs one command.
   *
   * <p>Starting an interview on the embedded bank is the usual way in, so it does not wait for the
   * option parser.
   */
  static int run(String[] arguments, Surroundings surroundings) throws IOException {
    List<String> words = Arrays.asList(arguments);
    if (words.isEmpty()) {
      return new StartCommand(surroundings).run();
    }
    if (words.equals(List.of("interview")) || words.equals(List.of("interview", "--line"))) {
      return new InterviewCommand(surroundings, new InterviewCommand.Wanted()).run();
    }
    return parse(arguments, surroundings);
  }

  private static int parse(String[] arguments, Surroundings surroundings) throws IOException {
    CommandLine parser = new CommandLine(new Root(surroundings));
    parser.setOut(new java.io.PrintWriter(surroundings.output(), true));
    parser.setErr(new java.io.PrintWriter(surroundings.error(), true));
    parser.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    parser.setUsageHelpWidth(76);
    parser.setCaseInsensitiveEnumValuesAllowed(true);
    parser.setParameterExceptionHandler(Commands::usage);
    IOException[] world = new IOException[1];
    RuntimeException[] ours = new RuntimeException[1];
    parser.setExecutionExceptionHandler(
        (e, line, result) -> {
          if (e instanceof IOException io) {
            world[0] = io;
          } else {
            ours[0] = e instanceof RuntimeException bug ? bug : new IllegalStateException(e);
          }
          return ExitCode.OUR_FAULT;
        });
    int code = parser.execute(arguments);
    if (ours[0] != null) {
      throw ours[0];
    }
    if (world[0] != null) {
      throw world[0];
    }
    return code;
  }

  private static int usage(CommandLine.ParameterException e, String[] arguments) {
    CommandLine line = e.getCommandLine();
    line.getErr().println(Words.clean(String.valueOf(e.getMessage())));
    CommandLine.UnmatchedArgumentException.printSuggestions(e, line.getErr());
    line.getErr()
        .println(
            "Try: closehand "
                + (line.getParent() == null ? "" : line.getCommandName() + " ")
                + "--help");
    return ExitCode.USAGE;
  }

  /** Prints problems to standard error, one a line. */
  static void report(List<Problem> problems, Surroundings surroundings) {
    problems.forEach(p -> surroundings.error().println(Words.clean(p.toString())));
  }

  /** Whether the problem is only that a file is not there. */
  static boolean missing(List<Problem> problems) {
    return problems.stream()
        .anyMatch(p -> p.code().equals("no-such-case") || p.code().equals("unreadable"));
  }

  @Command(
      name = "closehand",
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      description = {
        "A guided interview that finds game controls which fit a disabled player's body.",
        "Without a command it starts an interview or opens a saved case."
      },
      subcommands = {Interview.class, Advise.class, Summary.class, Check.class},
      footer = {
        "",
        "Examples:",
        "  closehand interview",
        "  closehand summary --answers answers.json --for player"
      })
  static final class Root implements java.util.concurrent.Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--line", description = "Line by line, for screen readers and pipes.")
    private boolean line;

    Root(Surroundings surroundings) {
      this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
      return new StartCommand(surroundings).run();
    }
  }

  /** Names the program's version. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Commands.class.getPackage().getImplementationVersion();
      return new String[] {"Closehand " + (version == null ? "under development" : version)};
    }
  }

  /** Options that every command with a bank takes. */
  static final class BankOption {
    @Option(
        names = "--bank",
        paramLabel = "DIR",
        description = "Use the question bank in this folder.")
    private @Nullable Path folder;

    @Option(names = "--ascii", description = "Only plain ASCII characters.")
    private boolean ascii;

    Optional<Path> folder() {
      return Optional.ofNullable(folder);
    }

    Glyphs glyphs(Surroundings surroundings) {
      return ascii || surroundings.plainAscii() ? Glyphs.ASCII : Glyphs.UNICODE;
    }
  }

  /** Where answers come from. */
  static final class AnswersOption {
    @Parameters(
        arity = "0..1",
        paramLabel = "CASE",
        description = "A saved case: its name or file.")
    private @Nullable String caseName;

    @Option(
        names = "--answers",
        paramLabel = "FILE",
        description = "A flat answers file; - reads standard input.")
    private @Nullable String answers;

    @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
    private @Nullable Path home;

    Optional<String> caseName() {
      return Optional.ofNullable(caseName);
    }

    Optional<String> answers() {
      return Optional.ofNullable(answers);
    }

    Optional<Path> home() {
      return Optional.ofNullable(home);
    }
  }

  @Command(
      name = "interview",
      mixinStandardHelpOptions = true,
      description = "Hold an interview, or go on with one.")
  static final class Interview implements java.util.concurrent.Callable<Integer> {
    @CommandLine.ParentCommand private @Nullable Root root;
    @CommandLine.Mixin private BankOption bank = new BankOption();

    @Parameters(
        arity = "0..1",
        paramLabel = "CASE",
        description = "A saved case: its name or file.")
    private @Nullable String caseName;

    @Option(names = "--line", description = "Line by line, for screen readers and pipes.")
    private boolean line;

    @Option(names = "--home", paramLabel = "DIR", description = "Where cases are kept.")
    private @Nullable Path home;

    @Option(
        names = "--asker",
        paramLabel = "WHO",
        description = "player, helper, volunteer or clinician.")
    private @Nullable String asker;

    @Option(
        names = "--route",
        paramLabel = "ROUTE",
        description = "core (the short interview) or full.")
    private @Nullable String route;

    @Option(
        names = "--script",
        paramLabel = "FILE",
        description = "Read one answer a line from this file; - reads standard input.")
    private @Nullable String script;

    @Override
    public Integer call() throws IOException {
      Surroundings surroundings = java.util.Objects.requireNonNull(root).surroundings;
      InterviewCommand.Wanted wanted = new InterviewCommand.Wanted();
      wanted.bank = bank.folder();
      wanted.caseName = Optional.ofNullable(caseName);
      wanted.home = Optional.ofNullable(home);
      wanted.asker = Optional.ofNullable(asker);
      wanted.route = Optional.ofNullable(route);
      wanted.script = Optional.ofNullable(script);
      wanted.ascii = bank.ascii;
      return new InterviewCommand(surroundings, wanted).run();
    }
  }

  @Command(
      name = "advise",
      mixinStandardHelpOptions = true,
      description =
          "What the answers point to: suggestions with reasons, cautions, what is ruled out and what is open.")
  static final class Advise implements java.util.concurrent.Callable<Integer> {
    @CommandLine.ParentCommand private @Nullable Root root;
    @CommandLine.Mixin private BankOption bank = new BankOption();
    @CommandLine.Mixin private AnswersOption source = new AnswersOption();

    @Option(names = "--json", description = "One JSON object for other programs.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
      return new AdviseCommand(java.util.Objects.requireNonNull(root).surroundings, bank, source)
          .run(json);
    }
  }

  @Command(
      name = "summary",
      mixinStandardHelpOptions = true,
      description = "The page that goes home.")
  static final class Summary implements java.util.concurrent.Callable<Integer> {
    @CommandLine.ParentCommand private @Nullable Root root;
    @CommandLine.Mixin private BankOption bank = new BankOption();
    @CommandLine.Mixin private AnswersOption source = new AnswersOption();

    @Option(
        names = "--for",
        paramLabel = "READER",
        description = "player (the usual) or clinician.")
    private String reader = "player";

    @Option(names = "--out", paramLabel = "FILE", description = "Write the page to this file.")
    private @Nullable Path out;

    @Option(
        names = "--date",
        paramLabel = "DATE",
        description = "The date on the page, such as 2026-11-25; today if left out.")
    private @Nullable String date;

    @Override
    public Integer call() throws IOException {
      SummaryCommand command =
          new SummaryCommand(java.util.Objects.requireNonNull(root).surroundings, bank, source);
      return command.run(reader, Optional.ofNullable(out), Optional.ofNullable(date));
    }
  }

  @Command(
      name = "check",
      mixinStandardHelpOptions = true,
      description = "Is a question bank sound?")
  static final class Check implements java.util.concurrent.Callable<Integer> {
    @CommandLine.ParentCommand private @Nullable Root root;

    @Parameters(
        arity = "0..1",
        paramLabel = "BANK",
        description = "The bank's folder; the bank inside the program if left out.")
    private @Nullable Path folder;

    @Override
    public Integer call() throws IOException {
      return new CheckCommand(java.util.Objects.requireNonNull(root).surroundings)
          .run(Optional.ofNullable(folder));
    }
  }
}
