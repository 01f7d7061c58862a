package org.bearingline.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlFileTest {

  private static String refusal(String text) {
    return assertThrows(Problem.class, () -> YamlFile.read("a.yaml", text).fields()).spoken();
  }

  @Test
  void fieldsKeepTheirOrderTextAndPlace() {
    YamlNode top = YamlFile.read("a.yaml", "name: rail\nsteps:\n  - 1/2in\n  - \"1 1/2\\\"\"\n");
    assertEquals("[name, steps]", top.fields().keySet().toString());
    YamlNode second = top.field("steps").items().get(1);
    assertEquals("1 1/2\"", second.text());
    assertEquals("a.yaml:4:5", second.place().words());
    assertEquals(1, second.quoteWidth());
  }

  @Test
  void aBrokenFileNamesLineAndColumn() {
    assertTrue(refusal("name: [a, b\nnext: 1\n").startsWith("a.yaml:2:"), refusal("name: [a, b\n"));
  }

  @Test
  void anUnknownFieldIsRefusedAtItsNameWithTheNearest() {
    YamlNode top = YamlFile.read("a.yaml", "name: x\nmesures: {}\n");
    Problem problem =
        assertThrows(Problem.class, () -> top.allowOnly(Set.of("name", "measures", "outline")));
    assertEquals(
        "a.yaml:2:1: “mesures” is not known here; did you mean measures?", problem.spoken());
  }

  @Test
  void aNameTwiceIsRefusedAtTheSecond() {
    assertEquals(
        "a.yaml:2:1: “name” stands here a second time; keep one of them",
        refusal("name: x\nname: y\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   \n", "# only a comment\n"})
  void anEmptyFileIsRefused(String text) {
    assertTrue(refusal(text).contains("empty"), refusal(text));
  }

  @Test
  void aBombOfAliasesIsRefusedQuickly() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String before = "*a" + (i - 1);
      bomb.append("a").append(i).append(": &a").append(i).append(" [");
      bomb.append(String.join(", ", java.util.Collections.nCopies(9, before))).append("]\n");
    }
    assertTrue(refusal(bomb.toString()).startsWith("a.yaml"), "the bomb went through");
  }

  @Test
  void aliasesThatHoldThemselvesAreRefused() {
    assertTrue(refusal("a: &a [*a]\n").startsWith("a.yaml"), "the ring went through");
  }

  @Test
  void deepNestingIsRefused() {
    assertTrue(refusal("a: " + "[".repeat(5000) + "]".repeat(5000)).startsWith("a.yaml"));
  }

  @Test
  void aHugeFileIsRefused() {
    assertTrue(refusal("a: " + "x".repeat(1_100_000)).startsWith("a.yaml"));
  }

  @Test
  void tagsMakeNoObjects() {
    YamlNode top = YamlFile.read("a.yaml", "a: !!java.net.URL [\"x\"]\n");
    assertTrue(top.field("a").isList());
  }
}
