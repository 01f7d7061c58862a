package org.bearingline.outside;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.bearingline.Seed;
import org.bearingline.outside.dxf.DxfReader;
import org.bearingline.outside.svg.SvgReader;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;

/**
 * Real drawings with a few places spoilt: whatever comes of it, the readers give a sketch or a
 * sentence within their time.
 */
class ReaderFuzzTest {

  /** A reading takes milliseconds; one that takes this long is stuck, however busy the machine. */
  private static final Duration LIMIT = Duration.ofMinutes(1);

  /** What is likely to hurt a reader, in either language. */
  private static final List<String> HOSTILE =
      List.of(
          "NaN",
          "-1",
          "0",
          "1e12",
          "1e-320",
          "1e999",
          "99999999999999999999",
          "1e38",
          "-0",
          "1e308",
          "2147483648",
          "em",
          "ex",
          "width='1e999mm'",
          "viewBox='0 0 1e-40 1e38'",
          "transform='scale(1e-320)'",
          "\n42\n1e300\n",
          "\n41\n1e200\n",
          "\n70\n1e9\n71\n1e9\n",
          ".",
          "\u0000",
          "\n",
          "\r",
          "\"",
          "<",
          ">",
          "&",
          "&x;",
          "<g>",
          "</g>",
          "]]>",
          "<!--",
          "#",
          "%",
          "M",
          "A",
          "z",
          "use",
          "href='#piece'",
          "transform='scale(0)'",
          "viewBox='0 0 0 0'",
          "matrix(0 0 0 0 0 0)",
          "rotate(1e30)",
          "url(",
          "{",
          "}",
          "\n0\nEOF\n",
          "\n0\nSECTION\n",
          "\n0\nENDSEC\n",
          "\n0\nENDBLK\n",
          "\n0\nINSERT\n2\nOUTER\n10\n0\n20\n0\n",
          "\n42\n1e9\n",
          "\n42\n-1\n",
          "\n71\n25\n",
          "\n40\n0\n",
          "\n40\n-1\n",
          "\n210\n1\n",
          "\n230\n-1\n",
          "\n70\n-1\n",
          "\n70\n2147483647\n",
          "\n41\n0\n",
          "\n10\n1e9\n",
          "SPLINE",
          "ELLIPSE",
          "POLYLINE",
          "VERTEX",
          "SEQEND",
          "LWPOLYLINE",
          "BLOCK");

  /** Numbers, and what looks like one, at the ends of what a float, an int or a drawing holds. */
  private static final List<String> STRANGE =
      List.of(
          "0",
          "-0",
          "-1",
          "1e-320",
          "1e-300",
          "1e-40",
          "1e-12",
          "1e-9",
          "1e-5",
          "0.9999999",
          "1e5",
          "16777217",
          "999999999",
          "1e9",
          "1e12",
          "1e17",
          "1e30",
          "1e38",
          "-1e39",
          "1e300",
          "1e308",
          "1e999",
          "-1e999",
          "1e9.5",
          "1e2147483648",
          "1e-2147483649",
          "2147483647",
          "2147483648",
          "-2147483649",
          "99999999999999999999",
          "NaN",
          "Infinity",
          "-",
          ".",
          "1e",
          "90",
          "360",
          "6.283185307179586");

  private static final List<String> UNITS =
      List.of("", "", "", "%", "em", "ex", "mm", "in", "pt", "px", "deg", "rem", "%%");

  private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)(e[-+]?\\d+)?");

  /**
   * One number replaced.
   *
   * @param at share of all numbers of the file that stand before it
   * @param word in its place
   */
  record Strange(double at, String word) {}

  @Provide
  Arbitrary<List<Strange>> numbers() {
    Arbitrary<String> words =
        Combinators.combine(Arbitraries.of(STRANGE), Arbitraries.of(UNITS))
            .as((number, unit) -> number + unit);
    return Combinators.combine(Arbitraries.doubles().between(0, 1), words)
        .as(Strange::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(4);
  }

  /**
   * One place spoilt.
   *
   * @param at share of the file
   * @param length how many bytes are taken out there
   * @param word what is put there; a share of the file itself where empty
   */
  record Spoil(double at, int length, String word) {}

  @Provide
  Arbitrary<List<Spoil>> spoils() {
    Arbitrary<String> words =
        Arbitraries.oneOf(
            Arbitraries.of(HOSTILE), Arbitraries.just(""), Arbitraries.strings().ofMaxLength(4));
    Arbitrary<Integer> lengths =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(6, Arbitraries.integers().between(0, 6)),
            net.jqwik.api.Tuple.of(1, Arbitraries.integers().between(0, 2_000)));
    return Combinators.combine(Arbitraries.doubles().between(0, 1), lengths, words)
        .as(Spoil::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6);
  }

  @Property(tries = 1500, shrinking = ShrinkingMode.OFF, seed = Seed.FIXED)
  void aSpoiltSvgIsReadOrRefused(
      @ForAll("spoils") List<Spoil> spoils, @ForAll("svgs") String seed) {
    byte[] bytes = spoilt(resource("svg/" + seed), spoils);
    check(() -> SvgReader.read("a.svg", bytes, ReadingSettings.USUAL), bytes);
  }

  @Provide
  Arbitrary<String> svgs() {
    return Arbitraries.of("every-command.svg", "every-frame.svg");
  }

  @Property(tries = 1500, shrinking = ShrinkingMode.OFF, seed = Seed.FIXED)
  void aSpoiltDxfIsReadOrRefused(@ForAll("spoils") List<Spoil> spoils) {
    byte[] bytes = spoilt(SAMPLE_DXF, spoils);
    check(() -> DxfReader.read("a.dxf", bytes, ReadingSettings.USUAL), bytes);
  }

  @Property(tries = 1500, shrinking = ShrinkingMode.OFF, seed = Seed.FIXED)
  void anSvgWithStrangeNumbersIsReadOrRefused(
      @ForAll("numbers") List<Strange> numbers, @ForAll("svgs") String seed) {
    byte[] bytes = estranged(resource("svg/" + seed), numbers);
    check(() -> SvgReader.read("a.svg", bytes, ReadingSettings.USUAL), bytes);
  }

  @Property(tries = 1500, shrinking = ShrinkingMode.OFF, seed = Seed.FIXED)
  void aDxfWithStrangeNumbersIsReadOrRefused(@ForAll("numbers") List<Strange> numbers) {
    byte[] bytes = estranged(SAMPLE_DXF, numbers);
    check(() -> DxfReader.read("a.dxf", bytes, ReadingSettings.USUAL), bytes);
  }

  /** Found by this test: a frame past all numbers gave the page a corner that was nowhere. */
  @Test
  void aFrameOfNoSizeIsRefused() {
    List<Spoil> spoils = List.of(new Spoil(0.1, 5, ""), new Spoil(0.04, 0, "1e999"));
    byte[] bytes = spoilt(resource("svg/every-command.svg"), spoils);
    Problem problem =
        assertThrows(Problem.class, () -> SvgReader.read("a.svg", bytes, ReadingSettings.USUAL));
    assertTrue(problem.spoken().startsWith("a.svg:"), problem.spoken());
  }

  private static byte[] estranged(byte[] whole, List<Strange> strange) {
    String text = new String(whole, StandardCharsets.UTF_8);
    for (Strange one : strange) {
      List<MatchResult> numbers = NUMBER.matcher(text).results().toList();
      MatchResult number = numbers.get((int) (one.at() * (numbers.size() - 1)));
      text = text.substring(0, number.start()) + one.word() + text.substring(number.end());
    }
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private interface Reading {
    Sketch read();
  }

  private static void check(Reading reading, byte[] bytes) {
    assertTimeoutPreemptively(
        LIMIT,
        () -> {
          try {
            assertFalse(reading.read().figures().isEmpty());
          } catch (Problem refused) {
            String said = refused.spoken();
            assertFalse(said.contains("org.bearingline") || said.endsWith("."), said);
            assertTrue(said.lines().count() == 1, said);
          }
        },
        () -> new String(bytes, StandardCharsets.ISO_8859_1));
  }

  private static byte[] spoilt(byte[] whole, List<Spoil> spoils) {
    byte[] bytes = whole;
    for (Spoil spoil : spoils) {
      int from = (int) (spoil.at() * bytes.length);
      int to = Math.min(bytes.length, from + spoil.length());
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(bytes, 0, from);
      if (spoil.word().isEmpty()) {
        out.write(bytes, bytes.length / 2, Math.min(300, bytes.length - bytes.length / 2));
      } else {
        out.writeBytes(spoil.word().getBytes(StandardCharsets.UTF_8));
      }
      out.write(bytes, to, bytes.length - to);
      bytes = out.toByteArray();
    }
    return bytes;
  }

  private static final byte[] SAMPLE_DXF = resource("dxf/every-entity.dxf");

  private static byte[] resource(String name) {
    try (InputStream in = ReaderFuzzTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
