package org.bearingline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StyleTest {

  @ParameterizedTest
  @EnumSource(LayerName.class)
  void lineToWorkToIsFineAndUnbroken(LayerName name) {
    LineStyle style = Style.of(name, Role.CUT);
    assertTrue(style.width() <= 0.25);
    assertTrue(style.isSolid());
  }

  @Test
  void noTwoLayersDifferByColourAlone() {
    Map<String, LayerName> seen = new HashMap<>();
    for (LayerName name : LayerName.values()) {
      LineStyle style = Style.of(name, Role.NOTE);
      LayerName other = seen.put(style.width() + " " + style.dashes(), name);
      assertEquals(null, other, () -> name + " is drawn like " + other);
    }
  }

  @ParameterizedTest
  @EnumSource(LayerName.class)
  void thinLinesStandOutFromThePaper(LayerName name) {
    LineStyle style = Style.of(name, Role.NOTE);
    // WCAG 2.2, success criterion 1.4.11: 3 to 1. The wide band of the part's edge may be paler,
    // for
    // the line to work to runs on top of it.
    double least = style.width() >= 0.7 ? 2 : 3;
    assertTrue(contrastWithWhite(style.ink()) >= least, () -> name + " " + style.ink().hex());
  }

  /** WCAG 2.2: (1 + 0.05) / (L + 0.05), L the relative luminance of sRGB (IEC 61966-2-1). */
  private static double contrastWithWhite(Ink ink) {
    double luminance =
        0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int part) {
    double s = part / 255.0;
    return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }

  /**
   * The saw line, the template's line and the part's edge lie side by side and must never be taken
   * for each other: seen through each kind of colour blindness they keep a clear distance. The
   * matrices are those for full severity of Machado, Oliveira and Fernandes, "A
   * Physiologically-based Model for Simulation of Color Vision Deficiency", 2009 (from memory).
   */
  @Test
  void neighboursKeepApartForColourBlindEyes() {
    double[][] red = {
      {0.152286, 1.052583, -0.204868},
      {0.114503, 0.786281, 0.099216},
      {-0.003882, -0.048116, 1.051998}
    };
    double[][] green = {
      {0.367322, 0.860646, -0.227968},
      {0.280085, 0.672501, 0.047413},
      {-0.011820, 0.042940, 0.968881}
    };
    double[][] blue = {
      {1.255528, -0.076749, -0.178779},
      {-0.078411, 0.930809, 0.147602},
      {0.004733, 0.691367, 0.303900}
    };
    LayerName[] neighbours = {LayerName.PART, LayerName.TEMPLATE, LayerName.ROUGH_LINE};
    for (double[][] eyes : new double[][][] {red, green, blue}) {
      for (LayerName one : neighbours) {
        for (LayerName other : neighbours) {
          if (one != other) {
            double apart = distance(seen(eyes, one), seen(eyes, other));
            assertTrue(apart > 0.15, () -> one + " and " + other + " are " + apart + " apart");
          }
        }
      }
    }
  }

  private static double[] seen(double[][] eyes, LayerName name) {
    Ink ink = Style.of(name, Role.NOTE).ink();
    double[] light = {linear(ink.red()), linear(ink.green()), linear(ink.blue())};
    return Arrays.stream(eyes)
        .mapToDouble(row -> row[0] * light[0] + row[1] * light[1] + row[2] * light[2])
        .toArray();
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  @Test
  void enlargingKeepsTheColour() {
    LineStyle style = Style.of(LayerName.ROUGH_LINE, Role.SAW);
    LineStyle twice = style.enlarged(2);
    assertEquals(style.ink(), twice.ink());
    assertEquals(style.width() * 2, twice.width());
    assertNotEquals(style.dashes(), twice.dashes());
  }
}
