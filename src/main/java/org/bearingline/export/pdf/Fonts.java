package org.bearingline.export.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.bearingline.export.font.Typeface;

/** The shipped font in one document: embedded, and only the letters that are used. */
final class Fonts {

  private final Map<Typeface, PDType0Font> fonts = new EnumMap<>(Typeface.class);
  private final PDDocument document;

  Fonts(PDDocument document) {
    this.document = document;
  }

  PDType0Font font(Typeface face) {
    return fonts.computeIfAbsent(face, this::load);
  }

  private PDType0Font load(Typeface face) {
    try {
      TrueTypeFont font = face.read();
      // Joined letters would be glyphs that a reader of the file cannot search for.
      font.setEnableGsub(false);
      document.registerTrueTypeFontForClosing(font);
      return PDType0Font.load(document, font, true);
    } catch (IOException e) {
      throw new UncheckedIOException("the shipped font cannot be embedded", e);
    }
  }

  /** The text with blanks for control characters and a question mark for letters it has not. */
  String clean(Typeface face, String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> Character.isISOControl(c) || Character.isWhitespace(c) ? ' ' : c)
        .map(c -> face.has(c) ? c : '?')
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }

  /** Width of a line of text in mm, for an em of {@code size} mm. */
  double width(Typeface face, double size, String text) {
    return face.width(clean(face, text), size);
  }
}
