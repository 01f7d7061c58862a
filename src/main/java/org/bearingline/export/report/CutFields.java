package org.bearingline.export.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;

/** Writes the cut list and the packing of a job. */
final class CutFields {

  private final JsonGenerator json;
  private final Fields fields;

  CutFields(JsonGenerator json) {
    this.json = json;
    this.fields = new Fields(json);
  }

  void write(CutReport cuts) throws IOException {
    fields
        .object("cutList", Optional.of(cuts), this::cutList)
        .object("packing", cuts.packing(), this::packing);
  }

  private void cutList(CutReport cuts) throws IOException {
    fields
        .list("blanks", cuts.blanks(), blank -> fields.object(blank, this::blank))
        .number("partArea", cuts.partArea())
        .number("partVolume", cuts.partVolume())
        .number("templateArea", cuts.templateArea());
  }

  private void blank(CutReport.Blank blank) throws IOException {
    fields
        .text("name", blank.name())
        .text("purpose", blank.purpose())
        .whole("quantity", blank.quantity())
        .number("length", blank.length())
        .number("width", blank.width())
        .number("thickness", blank.thickness());
    if (blank.material().isPresent()) {
      fields.text("material", blank.material().get());
    } else {
      json.writeNullField("material");
    }
    fields.text("grain", blank.grain());
  }

  private void packing(CutReport.Packing packing) throws IOException {
    fields
        .whole("boardCount", packing.boardCount())
        .whole("leastBoards", packing.leastBoards())
        .number("boardArea", packing.boardArea())
        .number("leastArea", packing.leastArea());
    json.writeBooleanField("proven", packing.proven());
    fields.list("boards", packing.boards(), board -> fields.object(board, this::board));
  }

  private void board(CutReport.Board board) throws IOException {
    fields
        .text("name", board.name())
        .whole("number", board.number())
        .number("length", board.length())
        .number("width", board.width())
        .list("pieces", board.pieces(), piece -> fields.object(piece, this::piece));
  }

  private void piece(CutReport.Piece piece) throws IOException {
    fields
        .text("name", piece.name())
        .whole("number", piece.number())
        .number("x", piece.at().minX())
        .number("y", piece.at().minY())
        .number("length", piece.at().width())
        .number("width", piece.at().height());
    json.writeBooleanField("turned", piece.turned());
  }
}
