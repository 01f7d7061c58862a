package org.bearingline.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same drawing gives the same bytes, whatever the language, place and clock of the machine. */
class SameBytesTest {

  private static final List<String> FILES = List.of("drawing.svg", "drawing.dxf", "drawing.png");

  @TempDir Path root;

  private Path written(String name, String... options) throws Exception {
    Path folder = Files.createDirectory(root.resolve(name));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    command.addAll(List.of("-Djava.awt.headless=true", "-cp", classPath));
    command.addAll(List.of(WriteEverything.class.getName(), folder.toString()));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertEquals(0, process.waitFor(), () -> said(folder));
    return folder;
  }

  private static String said(Path folder) {
    try {
      return Files.readString(folder.resolve("said.txt"));
    } catch (java.io.IOException e) {
      return e.toString();
    }
  }

  @Test
  void anotherLanguageTimeZoneAndCharacterSetChangeNothing() throws Exception {
    Path one = written("one", "-Duser.language=en", "-Duser.timezone=UTC", "-Dfile.encoding=UTF-8");
    Path other =
        written(
            "other",
            "-Duser.language=ar",
            "-Duser.country=EG",
            "-Duser.timezone=Pacific/Kiritimati",
            "-Dfile.encoding=ISO-8859-1",
            "-Xint");
    for (String file : FILES) {
      assertArrayEquals(
          Files.readAllBytes(one.resolve(file)), Files.readAllBytes(other.resolve(file)), file);
    }
  }

  @Test
  void noFontOfTheMachineIsLookedFor() throws Exception {
    Path folder = written("fonts", "-Xlog:class+load");
    String loaded = said(folder);
    assertTrue(
        loaded.contains("org.apache.batik.transcoder.image.ImageTranscoder "), "log is there");
    // The Java class that lists and opens the fonts of the machine.
    assertFalse(loaded.contains("sun.font.SunFontManager "), "fonts of the machine were read");
  }
}
