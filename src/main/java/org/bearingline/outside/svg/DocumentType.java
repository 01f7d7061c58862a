package org.bearingline.outside.svg;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bearingline.outside.Quoted;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.xml.sax.InputSource;
import org.xml.sax.ext.DefaultHandler2;

/**
 * What a drawing may say of its document type. One of the W3C may be named and is not read. Words
 * that the file itself declares may stand for short plain text, as drawing programs write the names
 * of their namespaces. Whatever else is declared is refused, and no entity, file or address is ever
 * opened.
 */
final class DocumentType extends DefaultHandler2 {

  private static final String W3C = "-//W3C//DTD SVG ";

  /** References that XML itself knows need no declaration. */
  private static final Pattern NAMED_ENTITY =
      Pattern.compile("&(?!(amp|lt|gt|quot|apos);)([A-Za-z_:][\\w.:-]{0,60})");

  /** What a declared word may stand for: letters alone, so that none makes another grow. */
  private static final Pattern PLAIN = Pattern.compile("[^&%<]{0,1000}");

  private static final int MOST_WORDS = 100;

  private final Supplier<Place> place;
  private final byte[] bytes;
  private final Set<String> words = new HashSet<>();
  private boolean isKnownType;

  /**
   * @param place where the reader is
   * @param bytes the whole file
   */
  DocumentType(Supplier<Place> place, byte[] bytes) {
    this.place = place;
    this.bytes = bytes;
  }

  @Override
  public void startDTD(String name, String publicId, String systemId) {
    isKnownType = publicId != null && publicId.startsWith(W3C);
    if (!isKnownType && (publicId != null || systemId != null)) {
      throw new Problem(
          place.get(),
          "the file asks for a document type outside itself (DOCTYPE), which is never read; save"
              + " the drawing as plain SVG without it");
    }
  }

  @Override
  public void endDTD() {
    if (isKnownType) {
      refuseStrangeEntities();
    }
  }

  /** In an attribute an entity that nobody declared would vanish unseen, and lines with it. */
  private void refuseStrangeEntities() {
    // UTF-16 has a zero byte beside every letter of a reference.
    String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("\0", "");
    Matcher named = NAMED_ENTITY.matcher(text);
    while (named.find()) {
      if (!words.contains(named.group(2))) {
        throw new Problem(
            place.get(),
            "the file uses a word of its document type (DOCTYPE), “"
                + Quoted.of(named.group())
                + "”, which is never read; save the drawing as plain SVG");
      }
    }
  }

  private Problem declared() {
    return new Problem(
        place.get(),
        "the document type (DOCTYPE) declares something of its own, which is never read; save the"
            + " drawing as plain SVG without it");
  }

  @Override
  public void elementDecl(String name, String model) {
    throw declared();
  }

  @Override
  public void attributeDecl(String of, String name, String type, String mode, String value) {
    throw declared();
  }

  @Override
  public void internalEntityDecl(String name, String value) {
    if (name.startsWith("%") || !PLAIN.matcher(value).matches() || words.size() >= MOST_WORDS) {
      throw declared();
    }
    words.add(name);
  }

  @Override
  public void externalEntityDecl(String name, String publicId, String systemId) {
    throw declared();
  }

  @Override
  public void notationDecl(String name, String publicId, String systemId) {
    throw declared();
  }

  @Override
  public void unparsedEntityDecl(String name, String publicId, String systemId, String notation) {
    throw declared();
  }

  @Override
  public void skippedEntity(String name) {
    throw new Problem(
        place.get(), "“&" + name + ";” stands for nothing here; save the drawing as plain SVG");
  }

  @Override
  public InputSource resolveEntity(String name, String publicId, String baseUri, String systemId) {
    throw declared();
  }
}
