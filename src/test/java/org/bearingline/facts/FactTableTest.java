package org.bearingline.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;

class FactTableTest {

  private static FactTable table(String text) throws IOException {
    return FactTable.parse("test.tsv", new BufferedReader(new StringReader(text)));
  }

  @Test
  void rowsAreReadByColumnName() throws IOException {
    FactTable table = table("# a note\nwidth\tradius\tsource\n\n1/4in\t15.875\tmanual B\n");
    assertEquals(1, table.rows().size());
    FactRow row = table.rows().get(0);
    assertEquals("1/4in", row.text("width"));
    assertEquals(15.875, row.number("radius"));
    assertEquals("manual B", row.source());
    assertEquals(4, row.line());
  }

  @Test
  void anEmptyCellIsUnknown() throws IOException {
    FactRow row = table("width\tradius\tsource\n1/4in\t\tmanual\n").rows().get(0);
    assertFalse(row.has("radius"));
    assertTrue(row.has("width"));
    assertThrows(IllegalStateException.class, () -> row.number("radius"));
  }

  @Test
  void everyFactNamesItsSource() {
    assertThrows(IllegalStateException.class, () -> table("width\n1/4in\n"));
    assertThrows(IllegalStateException.class, () -> table("width\tsource\n1/4in\t\n"));
  }

  @Test
  void aRowWithTooFewCellsIsADefectThatNamesItsLine() {
    IllegalStateException e =
        assertThrows(IllegalStateException.class, () -> table("width\tradius\tsource\n1/4in\n"));
    assertTrue(e.getMessage().contains("test.tsv:2"), e.getMessage());
  }

  @Test
  void aMissingTableIsADefect() {
    assertThrows(
        IllegalStateException.class, () -> FactTable.read(FactTableTest.class, "absent.tsv"));
  }
}
