package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.outline.Bounds;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings as programs save them come out at their true size. What a unit is, and how a box is
 * fitted into its frame, is said by SVG 1.1, sections 4.2 and 7.7 to 7.10: 96 px, 72 pt and 6 pc
 * are an inch.
 */
class SvgSizesTest {

  private static Sketch read(String text, OptionalDouble unit) {
    return SvgReader.read(
        "drawing.svg",
        text.getBytes(StandardCharsets.UTF_8),
        new ReadingSettings(Optional.empty(), unit));
  }

  private static Sketch read(String text) {
    return read(text, OptionalDouble.empty());
  }

  /** A rectangle in a frame: its width and height are the last two. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "width='210mm' height='297mm' viewBox='0 0 210 297' | width='100' height='50' | 100 | 50",
        "width='210mm' height='297mm' viewBox='-10 -20 210 297' | x='-10' y='-20' width='210' height='297' | 210 | 297",
        "width='8.5in' height='11in' viewBox='0 0 816 1056' | width='96' height='48' | 25.4 | 12.7",
        "width='720pt' height='360pt' viewBox='0 0 720 360' | width='72' height='36' | 25.4 | 12.7",
        "width='6pc' height='1in' | width='1in' height='48' | 25.4 | 12.7",
        "width='72pt' height='72pt' | width='96' height='72pt' | 25.4 | 25.4",
        "width='100MM' height=' 50mm ' viewBox='0,0,1e2 5E+1' | width='1.e1' height='.5e+1' | 10 | 5",
        "width='100mm' height='50mm' viewBox='0 0 1000 500' | width='50%' height='50%' | 50 | 25",
        "width='100mm' viewBox='0 0 1000 500' | width='1000' height='500' | 100 | 50",
        "width='100%' height='50mm' viewBox='0 0 1000 500' | width='1000' height='500' | 100 | 50",
        "width='100mm' height='100mm' viewBox='0 0 100 50' | width='100' height='50' | 100 | 50",
        "width='200mm' height='50mm' viewBox='0 0 100 50' preserveAspectRatio='none' | width='100' height='50' | 200 | 50",
        "width='200mm' height='50mm' viewBox='0 0 100 50' preserveAspectRatio='xMinYMin slice' | width='100' height='50' | 200 | 100",
      })
  void realUnitsGiveMillimetres(String frame, String rectangle, double width, double height) {
    Sketch sketch =
        read(
            "<svg xmlns='http://www.w3.org/2000/svg' "
                + frame
                + "><rect "
                + rectangle
                + "/></svg>");
    assertTrue(sketch.sized());
    Bounds box = Sketches.bounds(sketch);
    assertEquals(width, box.width(), 1e-5);
    assertEquals(height, box.height(), 1e-5);
  }

  /** What a screen decides is no size: the drawing keeps its own units and asks. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "width='96px' height='48px' viewBox='0 0 96 48' | 96",
        "width='192' height='96' viewBox='0 0 96 48' | 192",
        "width='100%' height='100%' viewBox='0 0 96 48' | 96",
        "viewBox='0 0 96 48' | 96",
        "style='width:96mm' viewBox='0 0 96 48' | 96",
      })
  void unitsOfAScreenGiveNoSize(String frame, double width) {
    String text =
        "<svg xmlns='http://www.w3.org/2000/svg' "
            + frame
            + "><rect width='96' height='48'/></svg>";
    Sketch sketch = read(text);
    assertFalse(sketch.sized());
    assertEquals(width, Sketches.bounds(sketch).width(), 1e-5);
    // Who says what a unit of the drawing is means those of its box.
    Sketch told = read(text, OptionalDouble.of(25.4 / 96));
    assertTrue(told.sized());
    assertEquals(25.4, Sketches.bounds(told).width(), 1e-5);
  }

  /** Namespaces of others, layers in layers with transforms, styles and left-overs of editing. */
  @Test
  void aDrawingInLayersIsRead() {
    Sketch sketch =
        read(
            """
            <?xml version="1.0" encoding="UTF-8" standalone="no"?>
            <!-- saved by a drawing program -->
            <svg:svg width="210mm" height="297mm" viewBox="0 0 210 297" version="1.1" id="svg5"
                xmlns="http://example.com/other" xmlns:svg="http://www.w3.org/2000/svg"
                xmlns:ed="http://example.com/editor" ed:version="1.2" ed:width="7in">
              <ed:view ed:units="px" showgrid="false"><ed:grid type="xygrid"/></ed:view>
              <svg:metadata><path d="M0 0H500V500Z"/></svg:metadata>
              <svg:g ed:label="Layer 1" ed:kind="layer" id="a" transform="translate(10,20)">
                <svg:g ed:label="inner" transform="matrix(0 1 -1 0 0 0)">
                  <svg:path id="p" ed:nodes="cccc" ed:d="m 0,0 h 999"
                    style="fill:none;stroke:#000;stroke-width:0.264583px;-ed-font:'Sans, Bold'"
                    d="m 20,-80 h 60 c 5.5,0 10,4.5 10,10 v 40 z"/>
                </svg:g>
              </svg:g>
              <svg:g ed:kind="layer" style="display:none"><svg:rect width="500" height="5"/></svg:g>
            </svg:svg>
            """);
    assertTrue(sketch.sized());
    Bounds box = Sketches.bounds(sketch);
    // (x, y) is moved to (10 - y, 20 + x): x from 20 to 90, y from -80 to -30; y upwards here.
    assertEquals(40, box.minX(), 1e-5);
    assertEquals(90, box.maxX(), 1e-5);
    assertEquals(-110, box.minY(), 1e-5);
    assertEquals(-40, box.maxY(), 1e-5);
    assertEquals(List.of("1 hidden element"), sketch.ignored());
    // The line on which its start tag ends.
    assertEquals("path #p, line 12", sketch.figures().get(0).source());
  }

  /**
   * Flags of arcs need nothing between them, numbers no blank where their sign or point parts them.
   */
  @Test
  void packedNumbersAreRead() {
    String packed = "M10 10a10 10 0 0120 0 10 10 0 01-20 0zM50,10A5,5,0,1150,20z";
    String apart = "M 10 10 A 10 10 0 0 1 30 10 A 10 10 0 0 1 10 10 Z M 50 10 A 5 5 0 1 1 50 20 Z";
    assertEquals(
        Sketches.pieces(read(path(apart))).toString(),
        Sketches.pieces(read(path(packed))).toString());
    Bounds box = Sketches.bounds(read(path("M60-1.5e0.5.5-1-2.5E-1z")));
    assertEquals(-1, box.minX(), 1e-6);
    assertEquals(60, box.maxX(), 1e-6);
    assertEquals(-0.5, box.minY(), 1e-6);
    assertEquals(1.5, box.maxY(), 1e-6);
  }

  private static String path(String data) {
    return "<svg xmlns='http://www.w3.org/2000/svg'><path d='" + data + "'/></svg>";
  }
}
