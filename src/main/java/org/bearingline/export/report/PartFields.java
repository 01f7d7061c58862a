package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the figures of one part. */
final class PartFields {

  private final JsonGenerator json;
  private final Fields fields;

  PartFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(Report.Part part) throws IOException {
    fields.object(part, this::fieldsOf);
  }

  private void fieldsOf(Report.Part part) throws IOException {
    fields
        .text("name", part.name())
        .whole("quantity", part.quantity())
        .object(
            "bounds",
            Optional.of(part.bounds()),
            box -> fields.number("width", box.width()).number("height", box.height()))
        .number("area", part.area())
        .number("smallestInsideRadius", part.smallestInsideRadius())
        .number("narrowestNeck", part.narrowestNeck())
        .number("largestCutterDiameter", part.largestCutterDiameter())
        .number("cutterDiameter", part.cutterDiameter())
        .object(
            "follower",
            part.follower(),
            follower ->
                fields.text("kind", follower.kind()).number("diameter", follower.diameter()))
        .number("templateOffset", part.templateOffset())
        .list("leftovers", part.leftovers(), left -> fields.object(left, this::leftover))
        .list("overcuts", part.overcuts(), over -> fields.object(over, this::overcut))
        .list(
            "bitsThatLeaveNothing",
            part.bits(),
            bit -> fields.object(bit, b -> fields.number("diameter", b.diameter())))
        .object("roughLine", part.roughLine(), this::roughLine)
        .object("feed", part.feed(), this::feed)
        .list("passes", part.passes(), depth -> json.writeNumber(Fields.plain(depth)))
        .object("proof", part.proof(), proof -> fields.number("maxDeviation", proof.maxDeviation()))
        .list("notes", part.notes(), json::writeString)
        .list("files", part.files(), json::writeString);
    if (part.drawing().isPresent()) {
      fields.object("drawing", part.drawing(), new DrawingFields(json)::write);
    }
    if (part.work().isPresent()) {
      new WorkFields(json).write(part.work().get());
    }
  }

  private void leftover(Report.Leftover leftover) throws IOException {
    fields
        .whole("number", leftover.number())
        .point("at", leftover.at())
        .number("area", leftover.area())
        .number("depth", leftover.depth())
        .number("insideRadius", leftover.insideRadius())
        .text("kind", leftover.kind());
  }

  private void overcut(Report.Overcut overcut) throws IOException {
    fields
        .point("at", overcut.at())
        .number("area", overcut.area())
        .number("depth", overcut.depth());
  }

  private void roughLine(Report.RoughLine line) throws IOException {
    fields
        .number("allowance", line.allowance())
        .number("bladeRadius", line.bladeRadius())
        .number("length", line.length())
        .number("wasteArea", line.wasteArea())
        .list("bridged", line.bridged(), fields::point);
  }

  private void feed(Report.Feed feed) throws IOException {
    OptionalDouble speed =
        feed.spindleSpeed().isPresent()
            ? OptionalDouble.of(feed.spindleSpeed().getAsInt())
            : OptionalDouble.empty();
    fields
        .text("router", feed.router())
        .text("direction", feed.direction())
        .number("spindleSpeed", speed);
  }
}
