package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Writes a report as JSON in UTF-8, indented by two spaces. Numbers are plain decimals rounded to
 * 1e-9; what is empty is null.
 */
public final class ReportWriter {

  private ReportWriter() {}

  /** The file's bytes. */
  public static byte[] write(Report report) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
      json.writeStartObject();
      new Fields(json).list("parts", report.parts(), part -> new PartFields(json).write(part));
      if (report.families().isPresent()) {
        new FamilyFields(json).write(report.families().get());
      }
      if (report.cuts().isPresent()) {
        new CutFields(json).write(report.cuts().get());
      }
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
