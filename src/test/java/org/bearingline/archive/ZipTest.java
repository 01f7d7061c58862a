package org.bearingline.archive;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.bearingline.external.ExternalProgram;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ZipTest {

  @TempDir Path folder;

  private static byte[] packed(List<String> names, byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String name : names) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content);
      }
    }
    return bytes.toByteArray();
  }

  private static String refusal(byte[] archive) {
    return assertThrows(Problem.class, () -> Zip.read("a.zip", archive)).spoken();
  }

  @Test
  void anotherProgramUnpacksIt() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("rail.svg", "<svg/>".getBytes());
    files.put("rail-card.pdf", new byte[100_000]);
    Path archive = Files.write(folder.resolve("a.zip"), Zip.write(files));
    String script =
        "import sys, zipfile\n"
            + "z = zipfile.ZipFile(sys.argv[1])\n"
            + "print(z.testzip(), z.namelist(), z.read('rail.svg').decode(),"
            + " z.infolist()[0].date_time)";
    assertEquals(
        "None ['rail.svg', 'rail-card.pdf'] <svg/> (2000, 1, 1, 0, 0, 0)",
        ExternalProgram.pythonWith("zipfile").run("-c", script, archive).strip());
    assertTrue(Zip.isOne(Zip.write(files)));
    Map<String, byte[]> read = Zip.read("a.zip", Zip.write(files));
    assertEquals(files.keySet(), read.keySet());
    assertArrayEquals(files.get("rail.svg"), read.get("rail.svg"));
  }

  @Test
  void foldersInNamesLeadNowhere() throws IOException {
    Map<String, byte[]> read =
        Zip.read("a.zip", packed(List.of("../../etc/kit.yaml", "/abs/job.yaml"), new byte[] {1}));
    assertEquals(List.of("kit.yaml", "job.yaml"), List.copyOf(read.keySet()));
  }

  @Test
  void whatFillsMemoryIsRefused() throws IOException {
    // 50 MB of nothing pack to 50 kB.
    assertTrue(refusal(packed(List.of("a.yaml"), new byte[50_000_000])).contains("far more"));
    List<String> many = IntStream.range(0, 200).mapToObj(i -> i + ".yaml").toList();
    assertTrue(refusal(packed(many, new byte[1])).contains("far more"));
  }

  @Test
  void brokenArchivesAndTwinsAreRefused() throws IOException {
    assertTrue(refusal(packed(List.of("a/k.yaml", "b/k.yaml"), new byte[1])).contains("two files"));
    byte[] whole = packed(List.of("a.yaml"), "some text that is packed".getBytes());
    byte[] half = Arrays.copyOf(whole, whole.length / 3);
    assertTrue(refusal(half).contains("cannot be read"), refusal(half));
  }
}
