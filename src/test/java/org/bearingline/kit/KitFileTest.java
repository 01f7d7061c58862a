package org.bearingline.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KitFileTest {

  private static final String WHOLE =
      """
      name: my shop
      bits:
        - 3/4in
        - {diameter: 1/2in, cutting-length: 1in, shank: 1/4in, bearing: tip}
      bearings: [3/4in, 1/2in]
      collars:
        - {outside: 5/8in, inside: 17/32in}
        - 30mm
      blades:
        - {width: 10mm, radius: 35mm}
        - 1/4in
      """;

  @Test
  void aKitIsReadAndSortedBySize() {
    Kit kit = KitFile.read("kit.yaml", WHOLE);
    assertEquals("my shop", kit.name());
    assertEquals(List.of(12.7, 19.05), kit.bits().stream().map(Bit::diameter).toList());
    Bit half = kit.bits().get(0);
    assertEquals(OptionalDouble.of(25.4), half.cuttingLength());
    assertEquals(Bit.BearingSeat.TIP, half.bearing());
    assertEquals(12.7, kit.bearings().get(0).diameter(), 1e-9);
    assertEquals(13.49375, kit.collars().get(0).insideDiameter().orElseThrow(), 1e-9);
    assertEquals(15.875, kit.blades().get(0).smallestRadius(), 1e-9);
    assertEquals(35, kit.blades().get(1).smallestRadius(), 1e-9);
  }

  @Test
  void bareNumbersNeedUnits() {
    assertEquals(
        8, KitFile.read("kit.yaml", "units: mm\nbits: [8]\n").bits().get(0).diameter(), 1e-12);
    refused("bits: [8]\n", 1, 8, "");
    refused("units: furlong\nbits: [8]\n", 1, 8, "in or mm");
  }

  @Test
  void mistakesNameTheirLineAndColumn() {
    refused("bits: [1/2in, 0mm]\n", 1, 15, "above 0");
    refused("bits:\n  - {diameter: -1/2in}\n", 2, 16, "");
    refused("bits:\n  - {diametre: 1/2in}\n", 2, 6, "did you mean diameter");
    refused("bitts: [1/2in]\n", 1, 1, "did you mean bits");
    refused("bits:\n  - {diameter: 1/2in, bearing: middle}\n", 2, 32, "shank");
    refused("collars:\n  - {outside: 1/2in, inside: 5/8in}\n", 2, 15, "inside diameter");
    refused("blades: [2in]\n", 1, 10, "no smallest radius");
    refused("bearings: [nan mm]\n", 1, 12, "");
    refused("bits:\n  - {diameter: 1/2in, shank: 0mm}\n", 2, 30, "above 0");
  }

  @Test
  void aToolThatStandsTwiceIsRefused() {
    refused("bits: [1/2in, 12.7mm]\n", 1, 15, "second time");
    refused("bearings:\n  - 1/2in\n  - 1/2in\n", 3, 5, "second time");
    refused("blades: [1/4in, 1/4in]\n", 1, 17, "second time");
  }

  @Test
  void whatIsNoYamlIsRefusedWithItsPlace() {
    Problem problem = assertThrows(Problem.class, () -> KitFile.read("kit.yaml", "bits: [1/2in\n"));
    assertTrue(problem.spoken().startsWith("kit.yaml:2:1"), problem.spoken());
  }

  @Test
  void aKitThatCannotBeReadIsNamed(@TempDir Path folder) throws IOException {
    Path absent = folder.resolve("absent.yaml");
    Problem problem = assertThrows(Problem.class, () -> Kit.read(absent));
    assertTrue(problem.spoken().startsWith(absent.toString()), problem.spoken());
    Path binary = Files.write(folder.resolve("kit.yaml"), new byte[] {(byte) 0xff, 0, 1});
    assertThrows(Problem.class, () -> Kit.read(binary));
  }

  @Test
  void theUsualKitHasSomethingOfEachKind() {
    Kit kit = Kit.usual();
    assertTrue(kit.bits().size() >= 5);
    assertTrue(kit.collars().size() >= 5);
    assertTrue(kit.blades().size() >= 2);
    assertEquals(6.35, kit.bits().get(0).diameter(), 1e-9);
  }

  private static void refused(String text, int line, int column, String words) {
    Problem problem = assertThrows(Problem.class, () -> KitFile.read("kit.yaml", text));
    String spoken = problem.spoken();
    assertTrue(spoken.startsWith("kit.yaml:" + line + ":" + column + ":"), spoken);
    assertTrue(spoken.contains(words), spoken);
  }
}
