package org.bearingline.archive;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.GregorianCalendar;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Zip archives of a few files. */
public final class Zip {

  /** Far more files than a job names. */
  private static final int MOST_FILES = 100;

  /** Bytes of all files unpacked: what is larger was packed to fill memory. */
  private static final int LARGEST = 8_000_000;

  private Zip() {}

  /** The archive's bytes: the same files in the same order give the same bytes. */
  public static byte[] write(Map<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        // A date of the archive's own calendar, which knows no time zone: the same everywhere.
        entry.setTime(new GregorianCalendar(2000, 0, 1).getTimeInMillis());
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Whether the bytes begin like an archive. */
  public static boolean isOne(byte[] bytes) {
    return bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3 && bytes[3] == 4;
  }

  /**
   * The archive's files by their names without folders; nothing is written to the disk.
   *
   * @param name of the archive, for messages
   * @throws Problem where it cannot be read, holds too much, or two files have one name
   */
  public static Map<String, byte[]> read(String name, byte[] bytes) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    int left = LARGEST;
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.isDirectory()) {
          continue;
        }
        byte[] content = zip.readNBytes(left + 1);
        left -= content.length;
        if (left < 0 || files.size() == MOST_FILES) {
          throw new Problem(
              Place.file(name), "the archive holds far more than a job; open its job file alone");
        }
        String plain = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
        if (files.putIfAbsent(plain, content) != null) {
          throw new Problem(
              Place.file(name),
              "the archive holds two files named " + plain + "; give them different names");
        }
      }
    } catch (IOException | IllegalArgumentException unreadable) {
      throw new Problem(Place.file(name), "this archive cannot be read; pack it again", unreadable);
    }
    return files;
  }
}
