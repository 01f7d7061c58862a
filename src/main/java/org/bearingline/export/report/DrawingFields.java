package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes what became of a drawing. */
final class DrawingFields {

  private final JsonGenerator json;
  private final Fields fields;

  DrawingFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(DrawingReport drawing) throws IOException {
    fields
        .text("file", drawing.file())
        .number("tolerance", drawing.tolerance())
        .number("largestMove", drawing.largestMove())
        .whole("gapsClosed", drawing.gaps())
        .number("largestGap", drawing.largestGap())
        .whole("lines", drawing.lines())
        .whole("arcs", drawing.arcs())
        .whole("circles", drawing.circles())
        .whole("drilled", drawing.drilled())
        .whole("jointsMadeTangent", drawing.jointsMadeTangent())
        .number("largestJointTurn", drawing.largestJointTurn())
        .number("symmetryMove", drawing.symmetryMove())
        .object("united", drawing.united(), this::united)
        .list("leftOut", drawing.leftOut(), json::writeString)
        .list("notes", drawing.notes(), json::writeString);
  }

  private void united(DrawingReport.United united) throws IOException {
    fields
        .whole("shapes", united.shapes())
        .whole("outlines", united.outlines())
        .whole("openings", united.openings())
        .whole("openingsLeft", united.openingsLeft())
        .number("drawnArea", united.drawnArea())
        .number("area", united.area());
  }
}
