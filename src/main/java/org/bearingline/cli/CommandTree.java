package org.bearingline.cli;

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
    all.put("shapes", ShapesCommand::new);
    all.put("kit", KitCommand::new);
    all.put("completion", CompletionCommand::new);
    return all;
  }

  static CommandLine forArguments(String[] args) {
    Map<String, Supplier<Object>> all = commands();
    CommandLine line = new CommandLine(new RootCommand());
    if (args.length > 0 && all.containsKey(args[0])) {
      line.addSubcommand(args[0], all.get(args[0]).get());
    } else {
      addAll(line, all);
    }
    return configured(line);
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
