package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.bearingline.cli.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drawing that is dropped on the page becomes the shape that the command makes of it. */
class DroppedDrawingTest extends WithServer {

  private static final Path DRAWN = Path.of("output-samples", "drawn-bracket");

  @TempDir Path folder;

  @Test
  void itIsKeptAsTheCommandKeepsIt() throws IOException {
    for (String name : List.of("drawing.svg", "drawing.dxf")) {
      StringWriter said = new StringWriter();
      PrintWriter out = new PrintWriter(said);
      Path into = folder.resolve(name);
      String[] command = {"keep", DRAWN.resolve(name).toString(), "--into", into.toString()};
      assertEquals(0, Main.run(command, out, out), said.toString());

      HttpResponse<byte[]> answer =
          server.hand("/api/outline", name, Files.readAllBytes(DRAWN.resolve(name)));
      assertEquals(200, answer.statusCode(), () -> new String(answer.body()));
      JsonNode kept = ShopServer.json(answer);
      assertEquals("drawing.yaml", kept.path("name").asText());
      assertArrayEquals(
          Files.readAllBytes(into.resolve("drawing.yaml")),
          kept.path("text").asText().getBytes(StandardCharsets.UTF_8));
      assertTrue(kept.path("words").size() > 1, kept.toString());
      assertTrue(kept.path("drawing").path("layers").size() > 1, kept.toString());

      // It is a shape that the page can draw at once.
      HttpResponse<byte[]> drawn =
          server.ask(
              "/api/draw",
              "{\"part\":\"a\",\"state\":{\"job\":{\"parts\":[{\"name\":\"a\",\"shape\":\"drawing.yaml\","
                  + "\"bit\":\"1/4in\"}]},\"files\":{\"drawing.yaml\":"
                  + kept.path("text")
                  + "}}}");
      assertEquals(200, drawn.statusCode(), () -> new String(drawn.body()));
    }
  }

  @Test
  void aScanIsKeptAsTheCommandKeepsIt() throws IOException {
    BufferedImage scan = new BufferedImage(1400, 900, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = scan.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, 1400, 900);
    pen.setColor(Color.BLACK);
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.fill(new RoundRectangle2D.Double(200, 200, 1000, 500, 200, 200));
    pen.dispose();
    Path picture = folder.resolve("plate.png");
    ImageIO.write(scan, "png", picture.toFile());
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    Path into = folder.resolve("kept");
    String[] command = {"keep", picture.toString(), "--dpi", "150", "--into", into.toString()};
    assertEquals(0, Main.run(command, out, out), said.toString());
    HttpResponse<byte[]> answer =
        server.hand("/api/outline?dpi=150", "plate.png", Files.readAllBytes(picture));
    assertEquals(200, answer.statusCode(), () -> new String(answer.body()));
    JsonNode kept = ShopServer.json(answer);
    assertEquals(Files.readString(into.resolve("plate.yaml")), kept.path("text").asText());
    // Without its size it is refused, and the sentence says what is wanted.
    HttpResponse<byte[]> unsized =
        server.hand("/api/outline", "plate.png", Files.readAllBytes(picture));
    assertEquals(422, unsized.statusCode());
    assertTrue(new String(unsized.body()).contains("dpi"), new String(unsized.body()));
  }

  private static String svg(String size, String content) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + size + ">" + content + "</svg>";
  }

  private static JsonNode refused(String path, String svg) {
    HttpResponse<byte[]> answer =
        server.hand(path, "mine.svg", svg.getBytes(StandardCharsets.UTF_8));
    assertEquals(422, answer.statusCode(), () -> new String(answer.body()));
    return ShopServer.json(answer);
  }

  @Test
  void aDrawingWithoutUnitsIsRefusedUntilTheyAreTold() {
    String svg = svg("viewBox=\"0 0 300 100\"", "<rect width=\"300\" height=\"100\"/>");
    String sentence = refused("/api/outline", svg).path("problem").path("sentence").asText();
    assertTrue(sentence.contains("units"), sentence);
    HttpResponse<byte[]> told =
        server.hand("/api/outline?drawn-in=mm", "mine.svg", svg.getBytes(StandardCharsets.UTF_8));
    assertEquals(200, told.statusCode(), () -> new String(told.body()));
    JsonNode wrong = refused("/api/outline?width=wide", svg).path("problem");
    assertEquals("/width", wrong.path("field").asText());
    refused("/api/outline?nonsense=1", svg);
  }

  @Test
  void anOpenOutlineIsShownWithItsFault() {
    JsonNode refused =
        refused(
            "/api/outline",
            svg(
                "width=\"300mm\" height=\"100mm\" viewBox=\"0 0 300 100\"",
                "<path d=\"M10 10H290V90H10V40\" fill=\"none\" stroke=\"black\"/>"));
    assertTrue(refused.path("problem").path("sentence").asText().length() > 20);
    assertTrue(refused.path("drawing").path("layers").size() > 0, refused.toString());
  }

  @Test
  void whatIsNoDrawingIsRefused() {
    for (String name : List.of("mine.txt", "mine", "mine.exe")) {
      assertEquals(422, server.hand("/api/outline", name, new byte[] {1, 2, 3}).statusCode(), name);
    }
    assertEquals(422, server.hand("/api/outline", "mine.svg", new byte[0]).statusCode());
    assertEquals(422, server.hand("/api/outline", "mine.dxf", new byte[5000]).statusCode());
    // An entity that would read a file of the maker's.
    String reads =
        "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>"
            + svg(
                "width=\"9mm\" height=\"9mm\"",
                "<title>&x;</title><rect width=\"9\" height=\"9\"/>");
    HttpResponse<byte[]> answer =
        server.hand("/api/outline", "mine.svg", reads.getBytes(StandardCharsets.UTF_8));
    assertTrue(!new String(answer.body()).contains("root:"));
  }
}
