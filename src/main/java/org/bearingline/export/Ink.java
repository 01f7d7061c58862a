package org.bearingline.export;

import java.util.HexFormat;

/**
 * A colour on white paper.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {

  public Ink {
    if (((red | green | blue) & ~0xff) != 0) {
      throw new IllegalArgumentException("a colour's parts run from 0 to 255");
    }
  }

  /** The colour in the notation of CSS, such as {@code #1a2b3c}. */
  public String hex() {
    return "#" + HexFormat.of().formatHex(new byte[] {(byte) red, (byte) green, (byte) blue});
  }

  /** This colour laid thinly on white: {@code share} 1 is itself, 0 is white. */
  public Ink tint(double share) {
    return new Ink(thinned(red, share), thinned(green, share), thinned(blue, share));
  }

  private static int thinned(int part, double share) {
    return (int) Math.round(255 - share * (255 - part));
  }
}
