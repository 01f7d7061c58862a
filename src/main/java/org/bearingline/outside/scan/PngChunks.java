package org.bearingline.outside.scan;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/**
 * Leaves out of a PNG file what is not needed for its pixels and their size (ISO/IEC 15948:2004,
 * 5.3). Its packed words and colour profiles may unfold to any size.
 */
final class PngChunks {

  private static final Set<String> NEEDED =
      Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "pHYs", "gAMA", "sBIT");

  private static final int SIGNATURE = 8;

  /** Bytes of a chunk beside its data: length, name and checksum. */
  private static final int FRAME = 12;

  private PngChunks() {}

  /**
   * A file's chunks.
   *
   * @param needed the file with those alone that its pixels and their size need
   * @param exif the content of its first chunk eXIf, a TIFF file of its own
   */
  record Parted(byte[] needed, Optional<byte[]> exif) {}

  static Parted parted(byte[] file) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(file.length);
    kept.write(file, 0, SIGNATURE);
    ByteBuffer bytes = ByteBuffer.wrap(file);
    Optional<byte[]> exif = Optional.empty();
    int at = SIGNATURE;
    while (at + FRAME <= file.length) {
      long length = FRAME + Integer.toUnsignedLong(bytes.getInt(at));
      int there = (int) Math.min(length, file.length - at);
      String name = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
      if (NEEDED.contains(name)) {
        kept.write(file, at, there);
      } else if (name.equals("eXIf") && exif.isEmpty() && there == length) {
        exif = Optional.of(Arrays.copyOfRange(file, at + 8, at + there - 4));
      }
      at += there;
    }
    return new Parted(kept.toByteArray(), exif);
  }
}
