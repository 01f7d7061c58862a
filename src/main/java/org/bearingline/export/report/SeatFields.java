package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.bearingline.outline.Bounds;

/** Writes how a panel sits in its frame. */
final class SeatFields {

  private final JsonGenerator json;
  private final Fields fields;

  SeatFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(PanelReport panel) throws IOException {
    fields
        .object("opening", Optional.of(panel.opening()), this::size)
        .object("made", Optional.of(panel.made()), this::size)
        .number("grooveDepth", panel.grooveDepth())
        .text("species", panel.species());
    json.writeBooleanField("moves", panel.moves());
    fields
        .object(
            "moisture",
            Optional.of(panel),
            p ->
                fields
                    .number("assembled", p.assembled())
                    .number("driest", p.driest())
                    .number("dampest", p.dampest()))
        .number("shrinks", panel.shrinks())
        .number("swells", panel.swells())
        .number("leastSeat", panel.leastSeat())
        .list("seats", panel.seats(), seat -> fields.object(seat, this::seat));
  }

  private void size(Bounds box) throws IOException {
    fields.number("width", box.width()).number("height", box.height());
  }

  private void seat(PanelReport.Seat seat) throws IOException {
    fields
        .text("side", seat.side())
        .object("driest", Optional.of(seat.driest()), this::fit)
        .object("assembled", Optional.of(seat.assembled()), this::fit)
        .object("dampest", Optional.of(seat.dampest()), this::fit);
  }

  private void fit(PanelReport.Fit fit) throws IOException {
    fields.number("held", fit.held()).number("gap", fit.gap());
  }
}
