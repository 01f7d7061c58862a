package org.bearingline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

  @ParameterizedTest
  @ValueSource(strings = {"layout", "reach", "sheets", "shapes", "kit", "completion"})
  void everyCommandExplainsItselfWithTwoExamples(String command) {
    CommandRun run = CommandRun.of(command, "--help");
    assertEquals(0, run.status());
    String examples = run.out().substring(run.out().indexOf("Examples:"));
    assertEquals(2, examples.lines().filter(line -> line.contains("bearingline ")).count());
    // A longer example would be broken over two lines and could not be copied.
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    assertEquals(3, examples.strip().lines().count(), examples);
  }

  @Test
  void theNameByItselfListsEveryCommand() {
    CommandRun run = CommandRun.of();
    for (String command : new String[] {"layout", "reach", "sheets", "shapes", "kit"}) {
      assertTrue(run.out().contains("  " + command), run.out());
    }
  }

  @Test
  void outputToAFileHasNoColour() {
    assertFalse(CommandRun.of("--help").out().contains("\u001b["));
  }

  @Test
  void theCompletionScriptKnowsOptionsOfEveryCommand() {
    String script = CommandRun.of("completion").out();
    assertTrue(script.contains("--printed") && script.contains("--json"), "options are missing");
  }
}
