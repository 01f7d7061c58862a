package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.bearingline.external.ExternalFolder;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outside.ReadingSettings;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Icon sets as npm packages bring them ({@code .ci/run} fetches these): painted by librsvg, and
 * what the reader made of them painted by librsvg as bare polygons. One set is of filled shapes,
 * the other of lines with arcs whose flags are packed.
 */
class NpmIconsAgainstLibrsvgTest {

  private static final int PIXELS = 241;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"bootstrap-icons, icons, 30", "feather-icons, dist/icons, 6"})
  void picturesAgree(String set, String where, int step) throws IOException {
    List<Path> icons =
        ExternalFolder.fetched(
                "target/icons/node_modules/" + set + "/" + where, "npm's package " + set)
            .files(".svg");
    ExternalProgram librsvg = ExternalProgram.named("rsvg-convert");
    var pictures = new BarePolygons(librsvg, folder, BarePolygons.Paint.THIN, PIXELS);
    List<Path> some =
        IntStream.range(0, icons.size() / step).mapToObj(i -> icons.get(i * step)).toList();
    assertTrue(some.size() > 40);
    int painted = 0;
    for (Path icon : some) {
      byte[] bytes = Files.readAllBytes(icon);
      var difference =
          pictures.compare(bytes, SvgReader.read(icon.toString(), bytes, ReadingSettings.USUAL));
      assertTrue(difference.unlike() <= 3, icon + ": " + difference);
      painted += difference.painted() > 100 ? 1 : 0;
    }
    // A few are made of straight lines alone.
    assertTrue(painted > 0.8 * some.size());
  }
}
