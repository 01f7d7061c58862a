package org.bearingline.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a maker may set, and what is said when it does not do. */
class SettingsTest {

  private static final CheckedShape SHAPE =
      ShapeReader.read(
          "x.yaml",
          """
          name: x
          about: x
          measures:
            length: {default: 24in, from: 8in, to: 96in, about: length}
            width: {default: 100mm, from: 2in, to: 12in, about: width}
            slope: {default: 5deg, from: 0deg, to: 30deg, about: slope}
            pegs: {default: 3, from: 1, to: 12, kind: count, about: pegs}
            share: {default: 0.5, from: 0.25, to: 0.75, kind: number, about: share}
            taper: {default: straight, choices: [straight, curved], about: taper}
          outline:
            - start: [0, 0]
            - line: {right: length, edge: sawn}
            - line: {up: width}
            - line: {left: length}
            - close: sawn
          """);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lenght | 30in   | lenght: the shape x has no such measure; did you mean length?",
        "height | 7in    | height: the shape x has no such measure; its measures are length, width, slope, pegs, share, taper",
        "length | 7in    | length: 7in is outside the range of this measure, 8in to 96in",
        "length | 96.001in | length: 96.001in is outside the range of this measure, 8in to 96in",
        "slope  | 31deg  | slope: 31deg is outside the range of this measure, 0deg to 30deg",
        "slope  | steep  | slope: “steep” is not an angle, such as 30deg",
        "pegs   | 2.5    | pegs: “2.5” is not a whole number",
        "pegs   | 13     | pegs: 13 is outside the range of this measure, 1 to 12",
        "pegs   | NaN    | pegs: “NaN” is not a whole number",
        "share  | 1e12   | share: “1e12” is not a plain number",
        "taper  | curve  | taper: “curve” is not one of straight, curved; did you mean curved?",
      })
  void refusedWithTheMeasure(String measure, String setting, String told) {
    Problem problem =
        assertThrows(
            Problem.class, () -> SHAPE.measured(Map.of(measure, setting), Optional.empty()));
    assertEquals(told, problem.spoken());
  }

  @Test
  void aFailedConditionBlamesAMeasureThatWasSetAndThatItReads() {
    CheckedShape wide =
        ShapeReader.read(
            "y.yaml",
            """
            name: y
            about: y
            measures:
              a: {default: 3in, from: 1in, to: 9in, about: a}
              b: {default: 2in, from: 1in, to: 9in, about: b}
              c: {default: 2in, from: 1in, to: 9in, about: c}
            derived:
              sum: b + 0.5in
            conditions:
              - must: a >= sum
                else: the rail is too narrow; widen it
            outline: [start: [0, 0]]
            """);
    for (Map<String, String> set : List.of(Map.of("b", "5in"), Map.of("b", "5in", "c", "3in"))) {
      Problem problem = assertThrows(Problem.class, () -> wide.measured(set, Optional.empty()));
      assertEquals("b: the rail is too narrow; widen it", problem.spoken());
    }
  }

  @ParameterizedTest
  @CsvSource({"24", "NaN", "-3in", "infinity", "1e12in", "3/0in", "''"})
  void noLength(String setting) {
    Problem problem =
        assertThrows(
            Problem.class, () -> SHAPE.measured(Map.of("length", setting), Optional.empty()));
    assertEquals("length", problem.place().words());
  }

  @Test
  void bareNumbersTakeTheUnitsOfTheRequest() {
    assertEquals(
        762,
        SHAPE.measured(Map.of("length", "30"), Optional.of(Units.INCH)).values().get("length"));
    assertEquals(
        762, SHAPE.measured(Map.of("length", "762"), Optional.of(Units.MM)).values().get("length"));
  }

  @Test
  void valuesAndSettingsForTheCard() {
    MeasuredShape measured = SHAPE.measured(Map.of("taper", "curved"), Optional.empty());
    assertEquals(
        Map.of("length", 609.6, "width", 100.0, "slope", 5.0, "pegs", 3.0, "share", 0.5),
        measured.values());
    assertEquals(
        Map.of(
            "length", "24in", "width", "100mm", "slope", "5deg", "pegs", "3", "share", "0.5",
            "taper", "curved"),
        measured.settings());
  }

  @Test
  void limitsAreReachedFromOtherUnits() {
    assertEquals(
        8 * 25.4,
        SHAPE.measured(Map.of("length", "203.2mm"), Optional.empty()).values().get("length"),
        1e-9);
  }
}
