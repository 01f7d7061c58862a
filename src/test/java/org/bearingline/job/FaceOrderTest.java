package org.bearingline.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.export.pdf.Card;
import org.bearingline.length.Units;
import org.bearingline.outline.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Table, plan and arrows of a taper, hand-worked: the upper edge alone is routed. With face A up
 * the router goes round counter-clockwise, along the upper edge to the left; fibres lie level.
 * Where the edge falls to the right the router climbs, from the narrow end to the wide, and tears;
 * so all is routed with face B up, when seen from face A it goes to the right.
 */
class FaceOrderTest {

  private static String taper(String left, String right) {
    return """
        - start: [0in, 0in]
        - line: {right: 24in, edge: sawn}
        - line: {to: [24in, RIGHT], edge: sawn}
        - line: {to: [0in, LEFT]}
        - close: sawn
      """
        .replace("LEFT", left)
        .replace("RIGHT", right);
  }

  private static final String JOB =
      """
      stock: {thickness: 3/4in}
      parts:
        - name: taper
          shape: taper.yaml
          operations:
            - {edge: outline, bit: 1/2in}
      """;

  @TempDir Path folder;

  private WorkedPart falling(String left, String right) throws IOException {
    return new JobBench(folder).withShape("taper", taper(left, right)).worked(JOB);
  }

  private static List<Line> arrows(WorkedPart worked) {
    return Plate.of(worked).get(0).fullSize(Units.INCH).layers().stream()
        .filter(layer -> layer.name() == LayerName.FEED)
        .map(Layer::items)
        .flatMap(List::stream)
        .filter(Item.Arrow.class::isInstance)
        .map(item -> (Line) ((Item.Arrow) item).path().primitives().get(0))
        .toList();
  }

  private static String face(WorkedPart worked) {
    Card.Section table = Cards.table(worked, Units.INCH).orElseThrow();
    return table.rows().get(1).get(table.rows().get(0).indexOf("face"));
  }

  private static String all(WorkedPart worked) {
    return Cards.sections(worked, Plate.of(worked), Units.INCH).toString();
  }

  @Test
  void whatTearsFromFaceAIsTableAndPictureOfFaceB() throws IOException {
    WorkedPart worked = falling("8in", "4in");
    assertEquals("B", face(worked));
    assertTrue(all(worked).contains("Begin with face B up"), all(worked));
    assertTrue(all(worked).contains("Begin outline on the other face"), all(worked));
    assertTrue(
        LayoutWords.lines(worked, List.of()).stream().anyMatch(s -> s.contains("(edge), face B:")));
    List<Line> arrows = arrows(worked);
    assertTrue(!arrows.isEmpty());
    assertTrue(arrows.stream().allMatch(line -> line.end().x() > line.start().x()));
  }

  @Test
  void whatIsCutCleanFromFaceAStaysThere() throws IOException {
    WorkedPart worked = falling("4in", "8in");
    assertEquals("A", face(worked));
    List<Line> arrows = arrows(worked);
    assertTrue(!arrows.isEmpty());
    assertTrue(arrows.stream().allMatch(line -> line.end().x() < line.start().x()));
  }
}
