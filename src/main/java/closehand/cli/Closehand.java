package closehand.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/**
 * The front door.
 *
 * <p>Whatever goes wrong ends in one plain sentence and an exit code; no stack trace and nothing of
 * anybody's answers is ever printed.
 */
public final class Closehand {
  private Closehand() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] arguments) {
    Outlet outlet = Outlet.ofProcess();
    Surroundings surroundings = Surroundings.ofProcess(outlet);
    int code = run(arguments, surroundings);
    boolean written = !surroundings.output().checkError() || outlet.closedEarly();
    if (!written && code == ExitCode.DONE) {
      surroundings.error().println("The output could not be written.");
      code = ExitCode.INPUT_OUTPUT;
    }
    if (code != ExitCode.DONE) {
      System.exit(code);
    }
  }

  /** Runs one command. */
  static int run(String[] arguments, Surroundings surroundings) {
    PrintStream error = surroundings.error();
    try {
      return Commands.run(arguments, surroundings);
    } catch (NoSuchFileException e) {
      String name = Words.clean(e.getFile());
      error.println(
          Files.isDirectory(Path.of(e.getFile()))
              ? "\"" + name + "\" is a folder; a file is wanted here."
              : "There is no file \"" + name + "\".");
      return ExitCode.NO_INPUT;
    } catch (NotDirectoryException e) {
      error.println("\"" + Words.clean(e.getFile()) + "\" is a file; a folder is wanted here.");
      return ExitCode.NO_INPUT;
    } catch (java.nio.file.InvalidPathException e) {
      error.println("This is no name a file can have here.");
      return ExitCode.NO_INPUT;
    } catch (java.nio.file.AccessDeniedException e) {
      error.println(
          "The file \"" + Words.clean(e.getFile()) + "\" may not be read or written by you.");
      return ExitCode.NO_INPUT;
    } catch (FileSystemException e) {
      error.println(
          "The file \""
              + Words.clean(String.valueOf(e.getFile()))
              + "\" could not be read or written.");
      return ExitCode.INPUT_OUTPUT;
    } catch (IOException e) {
      error.println("Reading or writing broke off.");
      return ExitCode.INPUT_OUTPUT;
    } catch (RuntimeException | Error e) {
      error.println(
          "Something went wrong inside the program ("
              + e.getClass().getSimpleName()
              + " at "
              + Words.place(e)
              + ")."
              + " Saved cases are not touched by this.");
      return ExitCode.OUR_FAULT;
    }
  }
}
