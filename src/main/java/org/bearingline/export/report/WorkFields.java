package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Writes what is done to a part. */
final class WorkFields {

  private final JsonGenerator json;
  private final Fields fields;

  WorkFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(Work work) throws IOException {
    fields
        .list("operations", work.operations(), one -> fields.object(one, this::operation))
        .list("templates", work.templates(), one -> fields.object(one, this::template))
        .list("faces", work.faces(), json::writeString)
        .list("meetings", work.meetings(), json::writeString)
        .object("grain", work.grain(), this::grain)
        .object("edgeTemplate", work.plate(), this::plate)
        .object("otherPiece", work.otherPiece(), this::otherPiece);
    if (work.panel().isPresent()) {
      fields.object("panel", work.panel(), new SeatFields(json)::write);
    }
  }

  private void operation(Work.Operation one) throws IOException {
    fields
        .whole("number", one.number())
        .text("name", one.name())
        .text("kind", one.kind())
        .text("face", one.face())
        .list("routedFrom", one.routedFrom(), json::writeString)
        .text("router", one.router())
        .text("faceUp", one.faceUp())
        .text("feed", one.feed())
        .number("template", whole(one.template()))
        .number("depth", one.depth())
        .number("cutterDiameter", one.cutterDiameter())
        .object(
            "follower",
            one.follower(),
            follower ->
                fields.text("kind", follower.kind()).number("diameter", follower.diameter()))
        .list("passes", one.passes(), mm -> json.writeNumber(Fields.plain(mm)))
        .list("spacers", one.spacers(), mm -> json.writeNumber(Fields.plain(mm)))
        .number("speedCeiling", whole(one.speedCeiling()))
        .number("leastTemplateThickness", one.leastTemplate());
  }

  private void template(Work.Template one) throws IOException {
    fields.whole("number", one.number()).list("makes", one.makes(), json::writeString);
    json.writeBooleanField("eitherSideUp", one.eitherSideUp());
    json.writeBooleanField("mirroredPrint", one.mirroredPrint());
  }

  private void grain(Work.Grain grain) throws IOException {
    fields
        .number("degrees", grain.degrees())
        .number("along", grain.along())
        .number("clean", grain.clean())
        .number("tears", grain.tears())
        .number("endGrain", grain.endGrain());
    json.writeBooleanField("turnsWork", grain.turnsWork());
    fields
        .list("backingBlocks", grain.backingBlocks(), fields::point)
        .list("shortGrain", grain.shortGrain(), fields::point);
  }

  private void plate(Work.Plate plate) throws IOException {
    fields
        .text("kind", plate.kind())
        .text("name", plate.name())
        .object(
            "size",
            plate.size(),
            box -> fields.number("length", box.width()).number("width", box.height()))
        .list("centreLine", plate.centreLine(), fields::point)
        .number("pastCentre", plate.pastCentre());
  }

  private void otherPiece(Work.OtherPiece piece) throws IOException {
    fields
        .text("hand", piece.hand())
        .text("name", piece.name())
        .list("mirrorLine", piece.mirror(), fields::point)
        .text("templateSideUp", piece.templateSideUp())
        .object("grain", piece.grain(), this::grain)
        .list("files", piece.files(), json::writeString);
  }

  private static OptionalDouble whole(OptionalInt number) {
    return number.isPresent() ? OptionalDouble.of(number.getAsInt()) : OptionalDouble.empty();
  }
}
