package closehand.cli;

import closehand.bank.Problem;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: reads options and hands over to the commands. */
final class Commands {
  private static final String JSON = "--json";

  private Commands() {}

  /**
   * Runs one command.
   *
   * <p>Starting an interview on the embedded bank is the usual way in, and other programs ask for
   * advice many times, so these do not wait for the option parser.
   */
  static int run(String[] arguments, Surroundings surroundings) throws IOException {
    List<String> words = Arrays.asList(arguments);
    if (words.isEmpty()) {
      return new StartCommand(surroundings, new InterviewCommand.Wanted()).run();
    }
    if (words.equals(List.of("interview")) || words.equals(List.of("interview", "--line"))) {
      InterviewCommand.Wanted wanted = new InterviewCommand.Wanted();
      wanted.line = words.size() == 2;
      return new InterviewCommand(surroundings, wanted).run();
    }
    if (words.equals(List.of("rehearse"))) {
      return new Rehearsal(surroundings).run();
    }
    Optional<AnswersOption> answers = plainAdvice(words);
    if (answers.isPresent()) {
      return new AdviseCommand(surroundings, new BankOption(), answers.get())
          .run(words.contains(JSON));
    }
    return parse(arguments, surroundings);
  }

  /** The file after {@code advise --answers}, with {@code --json} or without, and nothing else. */
  private static Optional<AnswersOption> plainAdvice(List<String> words) {
    boolean plain =
        (words.size() == 3 || (words.size() == 4 && words.get(3).equals(JSON)))
            && words.get(0).equals("advise")
            && words.get(1).equals("--answers")
            && !words.get(2).startsWith("--");
    return plain
        ? Optional.of(
            AnswersOption.of(Optional.empty(), Optional.of(words.get(2)), Optional.empty()))
        : Optional.empty();
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
      subcommands = {
        InterviewOptions.class,
        MeasureOptions.class,
        AdviseOptions.class,
        SummaryOptions.class,
        PlanOptions.class,
        PractiseOptions.class,
        TrialOptions.class,
        CompareOptions.class,
        DueOptions.class,
        NormsOptions.class,
        WhyOptions.class,
        ReplayOptions.class,
        CheckOptions.class,
        ExportOptions.class,
        UnlockOptions.class,
        ForgetOptions.class
      },
      footer = {
        "",
        "Examples:",
        "  closehand interview",
        "  closehand summary --answers answers.json --for player"
      })
  static final class Root implements java.util.concurrent.Callable<Integer> {
    private final Surroundings surroundings;

    @CommandLine.Mixin private final ScreenOptions screen = new ScreenOptions();

    Root(Surroundings surroundings) {
      this.surroundings = surroundings;
    }

    Surroundings surroundings() {
      return surroundings;
    }

    ScreenOptions screen() {
      return screen;
    }

    @Override
    public Integer call() throws IOException {
      return new StartCommand(surroundings, screen.wanted()).run();
    }
  }
}
