package org.bearingline.export;

/** Takes the files of a job, one after the other. */
@FunctionalInterface
public interface FileSink {

  /**
   * Takes one file.
   *
   * @param name a plain file name; the same name twice, be it in other capitals, is a Problem
   * @param content the whole file
   */
  void write(String name, byte[] content);
}
