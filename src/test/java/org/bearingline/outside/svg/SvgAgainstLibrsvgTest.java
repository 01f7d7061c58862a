package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drawings painted by librsvg, and what the reader made of them painted by librsvg as bare
 * polygons: the pictures agree. Drawings of our own use every command and every frame; those in the
 * folder {@code icons} were drawn by others, see the licence there.
 */
class SvgAgainstLibrsvgTest {

  private static final int PIXELS = 800;

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> picturesAgree() throws IOException, URISyntaxException {
    ExternalProgram librsvg = ExternalProgram.named("rsvg-convert");
    Path all = Path.of(Sketches.class.getResource("svg/every-frame.svg").toURI()).getParent();
    List<Path> drawings;
    try (Stream<Path> files = Files.walk(all)) {
      drawings = files.filter(file -> file.toString().endsWith(".svg")).sorted().toList();
    }
    assertTrue(drawings.size() > 2);
    return drawings.stream()
        .map(
            drawing ->
                DynamicTest.dynamicTest(
                    drawing.getFileName().toString(), () -> compare(librsvg, drawing)));
  }

  private void compare(ExternalProgram librsvg, Path drawing) throws IOException {
    byte[] bytes = Files.readAllBytes(drawing);
    Sketch sketch = SvgReader.read(drawing.toString(), bytes, ReadingSettings.USUAL);
    var pictures = new BarePolygons(librsvg, folder, BarePolygons.Paint.OWN, PIXELS);
    var difference = pictures.compare(bytes, sketch);
    assertTrue(difference.painted() > PIXELS, "librsvg painted nothing");
    assertTrue(difference.unlike() <= 3, drawing + ": " + difference);
  }

  @Test
  void whatIsLeftOutAndWhyIsTold() throws IOException {
    byte[] bytes = Sketches.class.getResourceAsStream("svg/every-frame.svg").readAllBytes();
    Sketch sketch = SvgReader.read("frames.svg", bytes, ReadingSettings.USUAL);
    assertEquals(
        List.of(
            "1 clip",
            "1 gradient",
            "2 hidden elements",
            "1 shape without fill and stroke",
            "1 text"),
        sketch.ignored());
    assertTrue(sketch.sized());
  }
}
