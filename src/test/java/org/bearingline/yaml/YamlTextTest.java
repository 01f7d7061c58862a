package org.bearingline.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bearingline.Seed;
import org.bearingline.problem.Place;
import org.junit.jupiter.api.Test;

class YamlTextTest {

  /** What a maker may write, and every sign that means something to YAML. */
  @Provide
  Arbitrary<String> words() {
    return Arbitraries.strings()
        .withChars("ab1 /-:#{}[],&*!|>'\"%@`~?=<\\\t\n.°″½é")
        .withCharRange('\u4e00', '\u4e10')
        .ofMinLength(1)
        .ofMaxLength(12);
  }

  @Property(tries = 500, seed = Seed.FIXED)
  void whatIsWrittenIsReadBackTheSame(
      @ForAll("words") String one, @ForAll("words") String two, @ForAll("words") String name) {
    Map<String, Object> inner = new LinkedHashMap<>();
    inner.put(name, one);
    inner.put("list", List.of(one, two));
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("parts", List.of(inner, Map.of("deep", List.of(Map.of(name, two)))));
    tree.put("last", two);
    assertEquals(tree, YamlFile.read("x", YamlText.write(tree)).tree());
  }

  @Test
  void wordsThatReadersTakeForNothingStayWords() {
    for (String word : List.of("", "null", "~", "true", "1", "- a", " a ", "a\nb")) {
      Map<String, Object> tree = Map.of("a", word);
      YamlNode read = YamlFile.read("x", YamlText.write(tree));
      assertEquals(word, read.fields().get("a").text(), YamlText.write(tree));
    }
  }

  @Test
  void itReadsLikeAFileWrittenByHand() {
    Map<String, Object> part = new LinkedHashMap<>();
    part.put("name", "rail");
    part.put("measures", Map.of("rise", "5/8in"));
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("job", "Hall table in white oak");
    job.put("paper", "Letter");
    job.put("parts", List.of(part));
    assertEquals(
        """
        job: Hall table in white oak
        paper: Letter
        parts:
          - name: rail
            measures: {rise: 5/8in}
        """,
        YamlText.write(job));
  }

  @Test
  void aPlaceLeadsToItsField() {
    YamlNode top =
        YamlFile.read(
            "job.yaml",
            """
            job: a
            parts:
              - name: rail
                measures: {rise: 5/8in, a/b~c: 1}
              - name: leg
            """);
    FieldPaths paths = FieldPaths.of(top);
    assertEquals("/job", paths.at(new Place.Spot("job.yaml", 1, 6)).orElseThrow());
    assertEquals("/parts/0/name", paths.at(new Place.Spot("job.yaml", 3, 11)).orElseThrow());
    assertEquals(
        "/parts/0/measures/rise", paths.at(new Place.Spot("job.yaml", 4, 22)).orElseThrow());
    // In the middle of a value, and its name.
    assertEquals(
        "/parts/0/measures/rise", paths.at(new Place.Spot("job.yaml", 4, 24)).orElseThrow());
    assertEquals(
        "/parts/0/measures/rise", paths.at(new Place.Spot("job.yaml", 4, 16)).orElseThrow());
    // RFC 6901, section 3: ~ is written ~0 and / is written ~1.
    assertEquals(
        "/parts/0/measures/a~1b~0c", paths.at(new Place.Spot("job.yaml", 4, 36)).orElseThrow());
    assertEquals("/parts/1", paths.at(new Place.Spot("job.yaml", 5, 5)).orElseThrow());
  }
}
