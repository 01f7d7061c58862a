package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.bearingline.cli.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page hands out is, byte for byte, what the commands write. */
class SameFilesTest extends WithServer {

  private static final Path SAMPLES = Path.of("output-samples");

  @TempDir Path folder;

  static List<Path> jobs() throws IOException {
    try (Stream<Path> all = Files.list(SAMPLES)) {
      return all.map(one -> one.resolve("job.yaml")).filter(Files::exists).sorted().toList();
    }
  }

  private Map<String, byte[]> layout(Path job, String name) throws IOException {
    Path into = folder.resolve(name);
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    int status =
        Main.run(new String[] {"layout", job.toString(), "--into", into.toString()}, out, out);
    assertEquals(0, status, said.toString());
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(into)) {
      for (Path file : all.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  private static Map<String, byte[]> unpacked(byte[] archive) {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), zip.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static byte[] ok(HttpResponse<byte[]> response) {
    assertEquals(200, response.statusCode(), () -> new String(response.body()));
    return response.body();
  }

  private static void assertSame(Map<String, byte[]> expected, Map<String, byte[]> actual) {
    assertEquals(expected.keySet(), actual.keySet());
    expected.forEach((name, bytes) -> assertArrayEquals(bytes, actual.get(name), name));
  }

  /** The state that the page has after a file was opened. */
  private static String opened(Path file) throws IOException {
    JsonNode opened =
        ShopServer.json(
            server.hand("/api/open", file.getFileName().toString(), Files.readAllBytes(file)));
    assertTrue(opened.path("state").path("job").isObject(), opened.toString());
    ObjectNode state = (ObjectNode) opened.path("state");
    ObjectNode files = state.putObject("files");
    for (JsonNode name : opened.path("missing")) {
      files.put(name.asText(), Files.readString(file.resolveSibling(name.asText())));
    }
    return state.toString();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aJobOpenedOnThePageMakesTheFilesOfTheCommand(Path job) throws IOException {
    Map<String, byte[]> expected = layout(job, "command");
    String state = opened(job);
    byte[] archive = ok(server.ask("/api/zip", "{\"state\":" + state + "}"));
    assertSame(expected, unpacked(archive));

    JsonNode whole = ShopServer.json(server.ask("/api/job", "{\"state\":" + state + "}"));
    assertTrue(whole.path("problem").isNull(), whole.toString());
    List<String> told = new ArrayList<>();
    whole.path("files").forEach(name -> told.add(name.asText()));
    assertEquals(expected.keySet(), new TreeSet<>(told));

    for (String name : expected.keySet()) {
      byte[] one =
          ok(server.ask("/api/file", "{\"name\":\"" + name + "\",\"state\":" + state + "}"));
      assertArrayEquals(expected.get(name), one, name);
    }

    // And what the page saves makes them again, without the page.
    byte[] saved = ok(server.ask("/api/save.zip", "{\"state\":" + state + "}"));
    Path again = Files.createDirectories(folder.resolve("saved"));
    for (Map.Entry<String, byte[]> file : unpacked(saved).entrySet()) {
      Files.write(again.resolve(file.getKey()), file.getValue());
    }
    JsonNode text = ShopServer.json(server.ask("/api/save", "{\"state\":" + state + "}"));
    Path savedJob = again.resolve(text.path("name").asText());
    assertSame(expected, layout(savedJob, "again"));
    assertEquals(Files.readString(savedJob), text.path("text").asText());
  }

  @Test
  void aPartOfTheLibraryMakesTheFilesOfTheCommand() throws IOException {
    Path into = folder.resolve("one");
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    String[] command = {
      "layout",
      "cloud-lift-rail",
      "--set",
      "rise=1in",
      "--bit",
      "3/4in",
      "--units",
      "mm",
      "--paper",
      "A3",
      "--margin",
      "5mm",
      "--printed",
      "99.4,99.8",
      "--into",
      into.toString()
    };
    assertEquals(0, Main.run(command, out, out), said.toString());
    String state =
        "{\"job\":{\"job\":\"x\",\"units\":\"mm\",\"paper\":\"A3\",\"margin\":\"5mm\","
            + "\"printed\":\"99.4,99.8\",\"parts\":[{\"name\":\"cloud-lift-rail\",\"shape\":"
            + "\"cloud-lift-rail\",\"bit\":\"3/4in\",\"measures\":{\"rise\":\"1in\"}}]}}";
    Map<String, byte[]> files =
        unpacked(
            ok(server.ask("/api/zip", "{\"part\":\"cloud-lift-rail\",\"state\":" + state + "}")));
    assertEquals(5, files.size());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      assertArrayEquals(
          Files.readAllBytes(into.resolve(file.getKey())), file.getValue(), file.getKey());
    }
  }

  @Test
  void aKitAndAShapeComeWithTheJob() throws IOException {
    String shape = Files.readString(Path.of("shapes", "oval-top.yaml")).replace("oval-top", "mine");
    Files.writeString(folder.resolve("mine.yaml"), shape);
    String kit = "name: my shop\nbits: [{diameter: 3/8in, cutting-length: 1in}, 1/4in]\n";
    Files.writeString(folder.resolve("my-kit.yaml"), kit);
    Path job =
        Files.writeString(
            folder.resolve("top.yaml"),
            "job: Top\nkit: my-kit.yaml\nparts:\n  - {name: top, shape: mine.yaml}\n");
    JsonNode opened =
        ShopServer.json(server.hand("/api/open", "top.yaml", Files.readAllBytes(job)));
    assertEquals("[\"my-kit.yaml\",\"mine.yaml\"]", opened.path("missing").toString());
    ObjectNode state = (ObjectNode) opened.path("state");
    state.putObject("files").put("mine.yaml", shape).put("my-kit.yaml", kit);
    byte[] archive = ok(server.ask("/api/zip", "{\"state\":" + state + "}"));
    assertSame(layout(job, "command"), unpacked(archive));

    // Packed with what it names, opened again, it is the same state.
    byte[] saved = ok(server.ask("/api/save.zip", "{\"state\":" + state + "}"));
    JsonNode again = ShopServer.json(server.hand("/api/open", "top.zip", saved));
    assertEquals(state, again.path("state"));
    assertEquals(0, again.path("missing").size());

    // A kit of fields does what its text does.
    JsonNode fields =
        ShopServer.json(
            server.hand("/api/open", "my-kit.yaml", kit.getBytes(StandardCharsets.UTF_8)));
    assertEquals("my shop", fields.path("kit").path("name").asText());
    state.putObject("files").put("mine.yaml", shape).set("my-kit.yaml", fields.path("kit"));
    assertSame(
        layout(job, "command"), unpacked(ok(server.ask("/api/zip", "{\"state\":" + state + "}"))));
  }

  @Test
  void theArchiveHoldsItsContentAndNoClock() throws InterruptedException {
    String state =
        "{\"state\":{\"job\":{\"job\":\"x\",\"parts\":[{\"name\":\"a\",\"shape\":\"straight-rail\"}]}}}";
    byte[] first = ok(server.ask("/api/zip", state));
    Thread.sleep(2100); // A zip's date counts two seconds.
    TimeZone zone = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertArrayEquals(first, ok(server.ask("/api/zip", state)));
    } finally {
      TimeZone.setDefault(zone);
    }
  }
}
