package org.bearingline.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * The root command with its children. Reading the options of every command costs more than most
 * commands' work, so where the first word names a command only that one is built.
 */
final class CommandTree {

  private CommandTree() {}

  private static Map<String, Supplier<Object>> commands() {
    Map<String, Supplier<Object>> all = new LinkedHashMap<>();
    all.put("layout", LayoutCommand::new);
    all.put("reach", ReachCommand::new);
    all.put("sheets", SheetsCommand::new);
    all.put("corner-marks", CornerMarksCommand::new);
    all.put("shapes", ShapesCommand::new);
    all.put("kit", KitCommand::new);
    all.put("keep", KeepCommand::new);
    all.put("page", PageCommand::new);
    all.put("completion", CompletionCommand::new);
    return all;
  }

  /**
   * Runs what the arguments ask for and gives its exit status. Where the first word names a
   * command, the root is not built either.
   */
  static int run(String[] args, PrintWriter out, PrintWriter err) {
    Supplier<Object> named = args.length == 0 ? null : commands().get(args[0]);
    if (named == null) {
      return whole().setOut(out).setErr(err).execute(args);
    }
    CommandLine line = configured(new CommandLine(named.get()));
    line.setCommandName("bearingline " + args[0]);
    return line.setOut(out).setErr(err).execute(Arrays.copyOfRange(args, 1, args.length));
  }

  /** Every command, as completion and overall help need it. */
  static CommandLine whole() {
    CommandLine line = new CommandLine(new RootCommand());
    addAll(line, commands());
    return configured(line);
  }

  private static void addAll(CommandLine line, Map<String, Supplier<Object>> commands) {
    commands.forEach((name, maker) -> line.addSubcommand(name, maker.get()));
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
