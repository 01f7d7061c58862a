package org.bearingline.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Comments of an older text stay with what they stand at, and the fields are those asked for. */
class KeptCommentsTest {

  private static final String BEFORE =
      """
      # For the hall, to stand under the mirror.
      job: Hall table

      units: in   # all of it
      stock:
        # Two boards are left from the door.
        thickness: 3/4in
      parts:
        # The front one shows.
        - name: front-rail
          shape: cloud-lift-rail
          measures: {rise: 5/8in, length: 38-1/2in}
          bit: 1/2in  # the sharp one
        # Rests on the legs.
        - name: back-rail
          shape: straight-rail
      # That is all.
      """;

  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(String text) {
    return (Map<String, Object>) YamlFile.read("a.yaml", text).tree();
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> parts(Map<String, Object> job) {
    return (List<Map<String, Object>>) job.get("parts");
  }

  private static String written(Map<String, Object> job) {
    String text = KeptComments.write(job, BEFORE).orElseThrow();
    assertEquals(job, fields(text), text);
    return text;
  }

  @Test
  void nothingChangedKeepsEveryComment() {
    String text = written(fields(BEFORE));
    for (String comment : BEFORE.split("\n")) {
      int at = comment.indexOf('#');
      assertTrue(at < 0 || text.contains(comment.substring(at).strip()), text);
    }
    assertTrue(text.contains("bit: 1/2in # the sharp one"), text);
    assertTrue(text.indexOf("# Rests on the legs.") < text.indexOf("name: back-rail"), text);
    assertTrue(text.indexOf("# The front one shows.") < text.indexOf("name: front-rail"), text);
  }

  @Test
  void aChangedFieldKeepsItsCommentAndANewOneComesBesideIt() {
    Map<String, Object> job = fields(BEFORE);
    parts(job).get(0).put("bit", "3/8in");
    parts(job).get(0).put("quantity", "2");
    job.put("paper", "A4");
    String text = written(job);
    assertTrue(text.contains("bit: 3/8in # the sharp one"), text);
    assertTrue(text.contains("# For the hall, to stand under the mirror."), text);
    assertTrue(text.contains("# Two boards are left from the door."), text);
  }

  @Test
  void aPartThatGoesTakesItsCommentsAndTheOthersKeepTheirs() {
    Map<String, Object> job = fields(BEFORE);
    job.put("parts", List.of(parts(job).get(1)));
    String text = written(job);
    assertFalse(text.contains("the sharp one"), text);
    assertTrue(text.contains("units: in # all of it"), text);
    assertTrue(text.contains("# For the hall"), text);
  }

  @Test
  void partsThatComeAndAreNamedAnewLeaveTheOthersAsTheyWere() {
    Map<String, Object> job = fields(BEFORE);
    List<Map<String, Object>> parts = new ArrayList<>(parts(job));
    parts.add(1, new LinkedHashMap<>(Map.of("name", "top", "shape", "oval-top")));
    job.put("parts", parts);
    assertTrue(written(job).contains("bit: 1/2in # the sharp one"));
    Map<String, Object> renamed = fields(BEFORE);
    parts(renamed).get(0).put("name", "apron");
    assertTrue(written(renamed).contains("bit: 1/2in # the sharp one"));
  }

  @Test
  void whatCannotBeReadGivesNoText() {
    assertTrue(KeptComments.write(Map.of("a", "b"), "a: [").isEmpty());
    assertTrue(KeptComments.write(Map.of("a", "b"), "").isEmpty());
  }

  /** Every job and shape file of the project, with each of its fields left out in turn. */
  @Test
  void filesOfTheProjectKeepTheirFields() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("output-samples"))) {
      files = all.filter(file -> file.getFileName().toString().equals("job.yaml")).toList();
    }
    assertFalse(files.isEmpty());
    for (Path file : files) {
      String before = Files.readString(file);
      Map<String, Object> whole = fields(before);
      assertEquals(whole, fields(KeptComments.write(whole, before).orElseThrow()), file.toString());
      for (String field : List.copyOf(whole.keySet())) {
        Map<String, Object> less = new LinkedHashMap<>(whole);
        less.remove(field);
        KeptComments.write(less, before).ifPresent(text -> assertEquals(less, fields(text)));
      }
    }
  }
}
