package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What the page is told of a part's drawing: places in the drawing's own millimetres, layers,
 * units.
 */
class DrawnPlacesTest extends WithServer {

  private static JsonNode seen(String name, String drawing, String fields) {
    var answer =
        server.ask(
            "/api/drawn",
            "{\"part\":\"a\",\"state\":{\"job\":{\"units\":\"mm\",\"parts\":[{\"name\":\"a\",\"drawing\":\""
                + name
                + "\""
                + fields
                + "}]},\"files\":{\""
                + name
                + "\":\""
                + drawing.replace("\n", "\\n")
                + "\"}}}");
    assertEquals(200, answer.statusCode(), () -> new String(answer.body()));
    return ShopServer.json(answer);
  }

  private static String svg(String path) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='240mm' height='140mm'"
        + " viewBox='0 0 240 140'><path d='"
        + path
        + "' fill='none' stroke='#000'/></svg>";
  }

  @Test
  void aCrossingIsWhereTheTwoStraightsMeet() {
    // The straights from 20,20 to 200,110 and from 200,20 to 20,110 meet half way.
    JsonNode sight = seen("bow.svg", svg("M20 20L200 110V20L20 110Z"), "");
    assertFalse(sight.path("sound").asBoolean());
    List<JsonNode> faults = new ArrayList<>();
    sight.path("places").forEach(faults::add);
    assertEquals(1, faults.size(), sight.toString());
    assertEquals("fault", faults.get(0).path("kind").asText());
    assertEquals(110, faults.get(0).path("x").asDouble(), 0.01);
    // Up the page is minus; the file's own height is where its lines are counted from.
    assertEquals(65, Math.abs(faults.get(0).path("y").asDouble()), 0.01);
    assertTrue(faults.get(0).path("words").asText().contains("x 110, y 65 of the file"));
    JsonNode view = sight.path("view");
    assertEquals(20, view.path("x").asDouble(), 1e-4);
    assertEquals(180, view.path("width").asDouble(), 1e-4);
    double up = faults.get(0).path("y").asDouble() - view.path("y").asDouble();
    assertEquals(45, up, 0.01, "half way down the box");
  }

  /** A closed rectangle of a DXF on a layer. */
  private static String box(String layer, int x, int width) {
    return "0\nLWPOLYLINE\n8\n"
        + layer
        + "\n90\n4\n70\n1\n10\n"
        + x
        + "\n20\n0\n10\n"
        + (x + width)
        + "\n20\n0\n10\n"
        + (x + width)
        + "\n20\n40\n10\n"
        + x
        + "\n20\n40\n";
  }

  @Test
  void theLayersOfADxfAreToldAlsoWhereTheOneAskedForIsNotThere() {
    String two =
        "0\nSECTION\n2\nENTITIES\n"
            + box("LEG", 0, 100)
            + box("RAIL", 200, 300)
            + box("RAIL", 210, 20)
            + "0\nENDSEC\n0\nEOF\n";
    for (String asked : List.of("", ",\"layer\":\"SHELF\"", ",\"layer\":\"RAIL\"")) {
      JsonNode layers = seen("two.dxf", two, asked + ",\"drawn-in\":\"mm\"").path("layers");
      assertEquals(
          "[{\"name\":\"LEG\",\"shapes\":1},{\"name\":\"RAIL\",\"shapes\":2}]",
          layers.toString(),
          asked);
    }
    JsonNode bare = seen("two.dxf", two, ",\"layer\":\"LEG\"");
    assertEquals("mm", bare.path("units").path(0).path("write").asText());
    assertEquals("100 mm × 40 mm", bare.path("units").path(0).path("words").asText());
    // An inch is 25.4 mm.
    assertEquals("in", bare.path("units").path(2).path("write").asText());
    assertEquals("2540 mm × 1016 mm", bare.path("units").path(2).path("words").asText());
  }

  @Test
  void aSoundDrawingLiesOnItsPart() {
    JsonNode sight = seen("board.svg", svg("M20 30H220V110H20Z"), "");
    assertTrue(sight.path("sound").asBoolean());
    assertEquals(0, sight.path("places").size());
    assertEquals(0, sight.path("view").path("x").asDouble(), 1e-4);
    assertEquals(-80, sight.path("view").path("y").asDouble(), 1e-4);
    assertTrue(sight.path("words").get(0).asText().contains("taken as drawn"));
  }

  @Test
  void whereUnitingWouldMendADrawingItIsOffered() {
    String board = "<rect x='20' y='20' width='150' height='60'/>";
    String disc = "<circle cx='170' cy='80' r='20'/>";
    String hole = "<circle cx='160' cy='76' r='8' fill='none' stroke='#000'/>";
    String over = shapes(board + disc + hole);
    JsonNode sight = seen("over.svg", over, "");
    assertFalse(sight.path("sound").asBoolean());
    assertTrue(sight.path("unites").asBoolean(), sight.toString());
    JsonNode united = seen("over.svg", over, ",\"unite\":\"yes\"");
    assertTrue(united.path("sound").asBoolean(), united.toString());
    assertFalse(united.path("unites").asBoolean());
    // 15 × 6 cm of board and π 2² cm² of disc.
    assertTrue(
        united.path("words").toString().contains("2 shapes of 102.57 cm² in all were united"),
        united.toString());
    // What goes away otherwise is not offered: an end that hangs loose, lines alone.
    String loose = shapes(board + disc + "<path d='M5 5H12V9' fill='none' stroke='#000'/>");
    assertFalse(seen("loose.svg", loose, "").path("unites").asBoolean());
    String lines = shapes("<g fill='none' stroke='#000'>" + board + disc + "</g>");
    assertFalse(seen("lines.svg", lines, "").path("unites").asBoolean());
  }

  private static String shapes(String inside) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='240mm' height='140mm'"
        + " viewBox='0 0 240 140'>"
        + inside
        + "</svg>";
  }
}
