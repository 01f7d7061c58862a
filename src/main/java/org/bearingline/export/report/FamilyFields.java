package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.bearingline.outline.Bounds;

/** Writes what parts share. */
final class FamilyFields {

  private final JsonGenerator json;
  private final Fields fields;

  FamilyFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(FamilyReport report) throws IOException {
    fields
        .list("families", report.families(), one -> fields.object(one, this::family))
        .list("sharedCurves", report.curves(), one -> fields.object(one, this::curve))
        .list("ownTemplates", report.apart(), json::writeString);
  }

  private void family(FamilyReport.Family family) throws IOException {
    fields.text("name", family.name());
    json.writeBooleanField("made", family.made());
    fields
        .text("host", family.host())
        .list("members", family.members(), one -> fields.object(one, this::member))
        .number("sharedLength", family.sharedLength())
        .object("template", Optional.of(family.plate()), this::size)
        .list("lines", family.lines(), one -> fields.object(one, this::line))
        .list("files", family.files(), json::writeString);
  }

  private void size(Bounds box) throws IOException {
    fields.number("length", box.width()).number("width", box.height());
  }

  private void member(FamilyReport.Member member) throws IOException {
    fields
        .text("part", member.part())
        .number("deviation", member.deviation())
        .list("settings", member.settings(), one -> fields.object(one, this::setting));
  }

  private void setting(FamilyReport.Setting setting) throws IOException {
    fields
        .whole("number", setting.number())
        .text("lay", setting.lay())
        .point("origin", setting.origin())
        .point("along", setting.along());
  }

  private void line(FamilyReport.Line line) throws IOException {
    fields
        .text("part", line.part())
        .text("kind", line.kind())
        .text("label", line.label())
        .point("from", line.from())
        .point("to", line.to());
  }

  private void curve(FamilyReport.Curve curve) throws IOException {
    fields
        .text("name", curve.name())
        .text("host", curve.host())
        .list("places", curve.places(), one -> fields.object(one, this::place))
        .object("template", Optional.of(curve.plate()), this::size)
        .list("lines", curve.lines(), one -> fields.object(one, this::line))
        .list("files", curve.files(), json::writeString);
  }

  private void place(FamilyReport.Place place) throws IOException {
    fields
        .text("part", place.part())
        .text("lay", place.lay())
        .number("fromEnd", place.fromEnd())
        .number("fromBack", place.fromBack());
  }
}
