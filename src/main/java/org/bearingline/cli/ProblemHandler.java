package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.bearingline.problem.Problem;
import picocli.CommandLine;

/**
 * Turns what went wrong into one sentence on standard error and exit status 2. Named methods of a
 * class, not method references: a class-data archive cannot hold a lambda made from an interface as
 * old as these two.
 */
final class ProblemHandler
    implements CommandLine.IExecutionExceptionHandler, CommandLine.IParameterExceptionHandler {

  static final int INPUT_IS_WRONG = 2;

  /** A defect of the program, told apart from the user's mistakes. */
  static final int DEFECT = 70;

  @Override
  public int handleExecutionException(
      Exception failure, CommandLine line, CommandLine.ParseResult parsed) {
    if (failure instanceof Problem problem) {
      return say(line, problem.spoken());
    }
    PrintWriter err = line.getErr();
    err.println("bearingline: a defect in the program, please report it with the command used:");
    failure.printStackTrace(err);
    return DEFECT;
  }

  @Override
  public int handleParseException(CommandLine.ParameterException failure, String[] args) {
    CommandLine line = failure.getCommandLine();
    if (failure.getCause() instanceof Problem problem) {
      return say(line, problem.spoken());
    }
    List<String> near =
        failure instanceof CommandLine.UnmatchedArgumentException unmatched
            ? unmatched.getSuggestions()
            : List.of();
    String hint = near.isEmpty() ? "" : "; did you mean " + String.join(" or ", near) + "?";
    String help = line.getCommandSpec().qualifiedName() + " --help";
    String said = failure.getMessage();
    // Ours begin small after the program's name; the library's own sentences follow suit.
    String small = said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
    return say(line, small + hint + " (see " + help + ")");
  }

  private static int say(CommandLine line, String sentence) {
    line.getErr().println(line.getColorScheme().errorText("bearingline: ").toString() + sentence);
    return INPUT_IS_WRONG;
  }
}
