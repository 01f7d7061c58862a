package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.bearingline.problem.NearestName;
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
    if (failure instanceof CommandLine.MissingParameterException) {
      // A slip in an option's name matters more than that the option is missing.
      Optional<String> unknown = unknownOption(line, args);
      if (unknown.isPresent()) {
        failure = new CommandLine.UnmatchedArgumentException(line, List.of(unknown.get()));
      }
    }
    List<String> near =
        failure instanceof CommandLine.UnmatchedArgumentException unmatched
            ? unmatched.getSuggestions()
            : List.of();
    String hint =
        near.isEmpty() || near.get(0).startsWith("-")
            ? nearOption(line, failure)
            : "; did you mean " + String.join(" or ", near) + "?";
    String help = line.getCommandSpec().qualifiedName() + " --help";
    String said = failure.getMessage();
    // Ours begin small after the program's name; the library's own sentences follow suit.
    String small = said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
    return say(line, small + hint + " (see " + help + ")");
  }

  private static String nearOption(CommandLine line, CommandLine.ParameterException failure) {
    if (!(failure instanceof CommandLine.UnmatchedArgumentException unmatched)) {
      return "";
    }
    String given = unmatched.getUnmatched().get(0).split("=", 2)[0];
    return given.startsWith("--")
        ? NearestName.hint(line.getCommandSpec().optionsMap().keySet(), given)
        : "";
  }

  private static Optional<String> unknownOption(CommandLine line, String[] args) {
    Set<String> known = line.getCommandSpec().optionsMap().keySet();
    return Arrays.stream(args)
        .filter(arg -> arg.startsWith("--") && arg.length() > 2)
        .filter(arg -> !known.contains(arg.split("=", 2)[0]))
        .findFirst();
  }

  private static int say(CommandLine line, String sentence) {
    line.getErr().println(line.getColorScheme().errorText("bearingline: ").toString() + sentence);
    return INPUT_IS_WRONG;
  }
}
