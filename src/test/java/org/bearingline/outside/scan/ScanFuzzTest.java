package org.bearingline.outside.scan;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.awt.image.BufferedImage;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bearingline.Seed;
import org.bearingline.problem.Problem;

/** Whatever the bytes, there is a sketch or a sentence, and soon. */
class ScanFuzzTest {

  /** What does not end would go on for hours; a loaded machine may take its time. */
  private static final Duration LIMIT = Duration.ofMinutes(3);

  private static final List<byte[]> WHOLE =
      List.of(
          Pictures.file(Pictures.plate(BufferedImage.TYPE_3BYTE_BGR), "png"),
          Pictures.file(Pictures.plate(BufferedImage.TYPE_BYTE_INDEXED), "png"),
          Pictures.file(Pictures.plate(BufferedImage.TYPE_3BYTE_BGR), "jpeg"),
          Pictures.progressiveJpeg(Pictures.plate(BufferedImage.TYPE_3BYTE_BGR)),
          Pictures.file(Pictures.plate(BufferedImage.TYPE_USHORT_GRAY), "tiff"),
          Pictures.tiffOf(
              Pictures.plate(BufferedImage.TYPE_BYTE_GRAY),
              Pictures.plate(BufferedImage.TYPE_BYTE_BINARY)));

  /**
   * Whole files with some bytes changed, the head of the file more often, and perhaps cut short.
   */
  @Provide
  Arbitrary<byte[]> spoiled() {
    Arbitrary<byte[]> file = Arbitraries.of(WHOLE);
    Arbitrary<List<double[]>> changes =
        Combinators.combine(
                Arbitraries.doubles().between(0, 1), Arbitraries.doubles().between(0, 255))
            .as((place, value) -> new double[] {place, value})
            .list()
            .ofMinSize(1)
            .ofMaxSize(12);
    Arbitrary<Double> kept = Arbitraries.doubles().between(0.05, 2);
    return Combinators.combine(file, changes, kept).as(ScanFuzzTest::spoil);
  }

  private static byte[] spoil(byte[] file, List<double[]> changes, double kept) {
    byte[] spoiled =
        java.util.Arrays.copyOf(file, (int) Math.max(12, file.length * Math.min(1, kept)));
    for (double[] change : changes) {
      int at = (int) (spoiled.length * Math.pow(change[0], 4));
      spoiled[Math.min(at, spoiled.length - 1)] = (byte) change[1];
    }
    return spoiled;
  }

  /** The first bytes of a kind of picture and then anything. */
  @Provide
  Arbitrary<byte[]> begun() {
    Arbitrary<Integer> kind = Arbitraries.integers().between(0, WHOLE.size() - 1);
    Arbitrary<Integer> real = Arbitraries.integers().between(8, 200);
    Arbitrary<byte[]> rest = Arbitraries.bytes().array(byte[].class).ofMaxSize(400);
    return Combinators.combine(kind, real, rest)
        .as(
            (which, count, bytes) -> {
              byte[] file = java.util.Arrays.copyOf(WHOLE.get(which), count + bytes.length);
              System.arraycopy(bytes, 0, file, count, bytes.length);
              return file;
            });
  }

  @Property(tries = 400, seed = Seed.FIXED)
  void aSpoiledFileGivesASketchOrASentence(@ForAll("spoiled") byte[] file) {
    check(file);
  }

  @Property(tries = 400, seed = Seed.FIXED)
  void anythingAfterAGoodBeginningGivesASketchOrASentence(@ForAll("begun") byte[] file) {
    check(file);
  }

  private static void check(byte[] file) {
    assertTimeoutPreemptively(
        LIMIT,
        () -> {
          try {
            Scan scan = ScanReader.read("fuzzed", file, ScanSettings.usual().withDpi(254));
            assertFalse(scan.sketch().figures().isEmpty());
          } catch (Problem told) {
            assertFalse(told.spoken().isBlank());
          }
        });
  }
}
