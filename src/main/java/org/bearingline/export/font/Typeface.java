package org.bearingline.export.font;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
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

  /** The letters kern and none, as a font file has them. */
  private static final int KERNED = 0x6b65726e;

  private static final int UNKNOWN = 0x6e6f6e65;

  private final String file;
  private final Object reading = new Object();
  private Letters letters;

  Typeface(String file) {
    this.file = file;
  }

  /** The font, read anew, for a writer that embeds it; the caller closes it. */
  public TrueTypeFont read() {
    try (InputStream in = open()) {
      return new TTFParser().parse(new RandomAccessReadBuffer(unkerned(in.readAllBytes())));
    } catch (IOException e) {
      throw new UncheckedIOException("the shipped font " + file + " cannot be read", e);
    }
  }

  /**
   * The font with its pairs of kerned letters under a name that nobody knows: they are half of the
   * file and would be read before anything else can be, though only browsers use them.
   */
  private static byte[] unkerned(byte[] font) {
    // ISO/IEC 14496-22, 4.5: twelve bytes, then sixteen for each table, its name first.
    ByteBuffer tables = ByteBuffer.wrap(font);
    for (int at = 12; at < 12 + 16 * tables.getShort(4); at += 16) {
      if (tables.getInt(at) == KERNED) {
        tables.putInt(at, UNKNOWN);
      }
    }
    return font;
  }

  InputStream open() {
    return Objects.requireNonNull(Typeface.class.getResourceAsStream(file), file);
  }

  /** Whether the font has a letter for the character. */
  public boolean has(int codePoint) {
    return letters().letter(codePoint).glyph() != 0;
  }

  /** Width in mm of one line of text at an em of {@code size} mm. */
  public double width(String text, double size) {
    Letters of = letters();
    long units = 0;
    for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
      units += of.letter(text.codePointAt(i)).advance();
    }
    return units * size / of.unitsPerEm;
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
      place.translate(of.letter(codePoint).advance(), 0);
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

  /**
   * A character as the font has it.
   *
   * @param glyph its number in the font, 0 for what the font lacks
   * @param advance in the font's units
   */
  private record Letter(int glyph, int advance) {}

  /**
   * The parsed font. FontBox reads from one stream on demand, hence the lock; what was read once is
   * kept.
   */
  private static final class Letters {
    private final TrueTypeFont font;
    private final CmapLookup cmap;
    private final int unitsPerEm;
    private final double capHeight;
    private final Map<Integer, Letter> known = new ConcurrentHashMap<>();
    private final Map<Integer, GeneralPath> outlines = new ConcurrentHashMap<>();

    Letters(Typeface face) {
      font = face.read();
      try {
        cmap = font.getUnicodeCmapLookup();
        unitsPerEm = font.getUnitsPerEm();
        capHeight = font.getOS2Windows().getCapHeight();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    Letter letter(int codePoint) {
      Letter letter = known.get(codePoint);
      if (letter == null) {
        letter = read(codePoint);
        known.put(codePoint, letter);
      }
      return letter;
    }

    private synchronized Letter read(int codePoint) {
      try {
        int glyph = cmap.getGlyphId(codePoint);
        return new Letter(glyph, font.getAdvanceWidth(glyph));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    PathIterator outline(int codePoint, AffineTransform place) {
      return outlines.computeIfAbsent(codePoint, this::trace).getPathIterator(place);
    }

    private synchronized GeneralPath trace(int codePoint) {
      try {
        return font.getGlyph().getGlyph(letter(codePoint).glyph()).getPath();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
