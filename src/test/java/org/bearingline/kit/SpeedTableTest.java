package org.bearingline.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.bearingline.length.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeedTableTest {

  // Home-reference article "Router bit drill speed" quoting a woodworking programme; its first two
  // rows also in WOOD magazine, "Small-part safety"; upper ends of two trade pages.
  @ParameterizedTest
  @CsvSource({
    "1/4in, 24000",
    "1/2in, 24000",
    "1in, 24000",
    "1-1/8in, 18000",
    "2in, 18000",
    "2-1/4in, 16000",
    "2-1/2in, 16000",
    "3in, 12000",
    "3-1/2in, 12000"
  })
  void ceilingsOfThePublishedTables(String diameter, int ceiling) {
    assertEquals(OptionalInt.of(ceiling), SpeedTable.ceiling(Length.parse(diameter)));
  }

  @Test
  void aboveTheTableNothingIsSaid() {
    assertTrue(SpeedTable.ceiling(Length.parse("4in")).isEmpty());
  }

  /**
   * Rim speed v = π D n stays under about 56 m/s in that table: 1 in 31.9, 2 in 47.9, 2-1/2 in
   * 53.2, 3-1/2 in 55.9 m/s. Worked from the definition, independent of the table's own figures.
   */
  @Test
  void noRowLetsTheRimRunFasterThanTheTableItself() {
    for (SpeedTable.Row row : SpeedTable.rows()) {
      double metresASecond = Math.PI * row.upTo() / 1000 * row.ceiling() / 60;
      assertTrue(metresASecond < 56, row.upTo() + " mm: " + metresASecond);
      assertTrue(row.startAt() <= row.ceiling());
    }
  }
}
