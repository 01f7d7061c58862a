package org.bearingline.shape;

/** Reads shape files. */
public final class ShapeReader {

  private ShapeReader() {}

  /**
   * Reads and checks a shape file; every mistake is a Problem with its line and column.
   *
   * @param fileName as shown in messages
   * @param text what the file holds
   */
  public static CheckedShape read(String fileName, String text) {
    return ShapeCheck.check(WrittenShape.read(fileName, text));
  }
}
