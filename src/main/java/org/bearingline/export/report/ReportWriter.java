package org.bearingline.export.report;

/** Writes a report as JSON, UTF-8. */
public final class ReportWriter {

  private ReportWriter() {}

  /** The file's bytes. */
  public static byte[] write(Report report) {
    throw new UnsupportedOperationException();
  }
}
