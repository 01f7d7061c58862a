package org.bearingline.export.font;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.bearingline.outline.Point;

/**
 * A weight of the shipped font. Sizes are of the em. Letters are set by their own widths, without
 * kerning, the same way in every format. A character the font lacks shows as its empty box.
 */
public enum Typeface {
  REGULAR("OpenSans-Regular.ttf"),
  SEMIBOLD("OpenSans-Semibold.ttf");

  private final String file;
  private final Object reading = new Object();
  private Letters letters;

  Typeface(String file) {
    this.file = file;
  }

  /** The font file, for a writer that embeds it; the caller closes it. */
  public InputStream open() {
    return Objects.requireNonNull(Typeface.class.getResourceAsStream(file), file);
  }

  /** Whether the font has a letter for the character. */
  public boolean has(int codePoint) {
    return letters().cmap.getGlyphId(codePoint) != 0;
  }

  /** Width in mm of one line of text at an em of {@code size} mm. */
  public double width(String text, double size) {
    Letters of = letters();
    return text.codePoints().mapToLong(of::advance).sum() * size / of.unitsPerEm;
  }

  /** Height in mm of the capitals at an em of {@code size} mm. */
  public double capHeight(double size) {
    Letters of = letters();
    return of.capHeight * size / of.unitsPerEm;
  }

  /**
   * Draws the outlines of one line of text.
   *
   * @param text the words
   * @param size the em in mm
   * @param start left end of the base line
   * @param degrees counter-clockwise turn about {@code start}
   * @param pen receives the outlines
   */
  public void draw(String text, double size, Point start, double degrees, Pen pen) {
    Letters of = letters();
    double scale = size / of.unitsPerEm;
    AffineTransform place = AffineTransform.getTranslateInstance(start.x(), start.y());
    place.rotate(Math.toRadians(degrees));
    place.scale(scale, scale);
    for (int codePoint : text.codePoints().toArray()) {
      trace(of.outline(codePoint, place), pen);
      place.translate(of.advance(codePoint), 0);
    }
  }

  private static void trace(PathIterator outline, Pen pen) {
    double[] c = new double[6];
    for (; !outline.isDone(); outline.next()) {
      switch (outline.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> pen.moveTo(c[0], c[1]);
        case PathIterator.SEG_LINETO -> pen.lineTo(c[0], c[1]);
        case PathIterator.SEG_QUADTO -> pen.quadTo(c[0], c[1], c[2], c[3]);
        case PathIterator.SEG_CLOSE -> pen.close();
        default -> throw new IllegalStateException("TrueType outlines are quadratic");
      }
    }
  }

  private Letters letters() {
    synchronized (reading) {
      if (letters == null) {
        letters = new Letters(this);
      }
      return letters;
    }
  }

  /** The parsed font. FontBox reads glyphs from one stream on demand, hence the lock. */
  private static final class Letters {
    private final TrueTypeFont font;
    private final CmapLookup cmap;
    private final int unitsPerEm;
    private final double capHeight;

    Letters(Typeface face) {
      try (InputStream in = face.open()) {
        font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(in));
        cmap = font.getUnicodeCmapLookup();
        unitsPerEm = font.getUnitsPerEm();
        capHeight = font.getOS2Windows().getCapHeight();
      } catch (IOException e) {
        throw new UncheckedIOException("the shipped font " + face.file + " cannot be read", e);
      }
    }

    long advance(int codePoint) {
      try {
        synchronized (this) {
          return font.getAdvanceWidth(cmap.getGlyphId(codePoint));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    PathIterator outline(int codePoint, AffineTransform place) {
      try {
        synchronized (this) {
          GlyphData glyph = font.getGlyph().getGlyph(cmap.getGlyphId(codePoint));
          return glyph.getPath().getPathIterator(place);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
