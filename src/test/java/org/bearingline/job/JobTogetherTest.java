package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A job in hand tells and gives the very files that a layout writes, shared plates and hands too.
 */
class JobTogetherTest {

  private static JobInHand job(String sample) throws IOException {
    return JobInHand.of(
        Map.of(JobInHand.FILE, Files.readString(Path.of("output-samples", sample, "job.yaml"))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"hall-console", "wall-shelf"})
  void whatIsToldIsWhatIsWritten(String sample) throws IOException {
    JobInHand job = job(sample);
    JobView view = job.whole();
    assertNull(view.problem());
    assertEquals(job.files().keySet(), new HashSet<>(view.files()));
  }

  @Test
  void aFileOfASharedPartIsTheOneOfTheLayout() throws IOException {
    JobInHand job = job("hall-console");
    assertTrue(job.file("side-apron-sheets.pdf").isEmpty());
    assertFalse(job.file("family-1.dxf").isEmpty());
    assertArrayEquals(job.files().get("side-apron.dxf"), job.file("side-apron.dxf").orElseThrow());
    assertArrayEquals(
        job("wall-shelf").files().get("bracket-right.dxf"),
        job("wall-shelf").files("bracket").get("bracket-right.dxf"));
  }
}
