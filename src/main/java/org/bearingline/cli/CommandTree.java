package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;

/**
 * The root command with its children. Reading the options of every command costs more than most
 * commands' work, so where the first word names a command only that one is built.
 */
final class CommandTree {

  /** In the order in which help lists them. */
  private static final List<String> NAMES =
      List.of(
          "layout",
          "reach",
          "sheets",
          "corner-marks",
          "shapes",
          "kit",
          "keep",
          "page",
          "completion");

  private CommandTree() {}

  /** A command by its name; null where none has it. */
  private static Object named(String name) {
    return switch (name) {
      case "layout" -> new LayoutCommand();
      case "reach" -> new ReachCommand();
      case "sheets" -> new SheetsCommand();
      case "corner-marks" -> new CornerMarksCommand();
      case "shapes" -> new ShapesCommand();
      case "kit" -> new KitCommand();
      case "keep" -> new KeepCommand();
      case "page" -> new PageCommand();
      case "completion" -> new CompletionCommand();
      default -> null;
    };
  }

  /**
   * Runs what the arguments ask for and gives its exit status. Where the first word names a
   * command, the root is not built either.
   */
  static int run(String[] args, PrintWriter out, PrintWriter err) {
    Object command = args.length == 0 ? null : named(args[0]);
    if (command == null) {
      return whole().setOut(out).setErr(err).execute(args);
    }
    CommandLine line = configured(new CommandLine(command));
    line.setCommandName("bearingline " + args[0]);
    return line.setOut(out).setErr(err).execute(Arrays.copyOfRange(args, 1, args.length));
  }

  /** Every command, as completion and overall help need it. */
  static CommandLine whole() {
    CommandLine line = new CommandLine(new RootCommand());
    NAMES.forEach(name -> line.addSubcommand(name, named(name)));
    return configured(line);
  }

  private static CommandLine configured(CommandLine line) {
    ProblemHandler handler = new ProblemHandler();
    return line.setExecutionExceptionHandler(handler)
        .setParameterExceptionHandler(handler)
        .setUsageHelpAutoWidth(true)
        .setAbbreviatedOptionsAllowed(false)
        .setCaseInsensitiveEnumValuesAllowed(true);
  }
}
