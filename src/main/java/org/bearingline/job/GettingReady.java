package org.bearingline.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bearingline.drawing.Drawing;
import org.bearingline.drawing.Item;
import org.bearingline.drawing.Layer;
import org.bearingline.drawing.LayerName;
import org.bearingline.drawing.Role;
import org.bearingline.export.png.PngWriter;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.length.Units;
import org.bearingline.outline.Arc;
import org.bearingline.outline.Path;
import org.bearingline.outline.Point;
import org.bearingline.part.Part;
import org.bearingline.routing.LargestCutter;
import org.bearingline.routing.Reach;
import org.bearingline.shape.ShapeLibrary;

/**
 * Gets the slow starters ready on a second core while the first reads the command: the reader of
 * shapes and the painter of pictures take longer to load than to work. Nothing of it reaches an
 * output.
 */
public final class GettingReady {

  /** Rounds after which a shape's drawing takes a few milliseconds. */
  private static final int SHOWN = 12;

  private GettingReady() {}

  /** For a command that reads a shape and tries bits on it. */
  public static void toReach() {
    start(
        () -> {
          Part part =
              ShapeLibrary.builtIn()
                  .find("cloud-lift-rail")
                  .measured(Map.of(), Optional.empty())
                  .part();
          LargestCutter.of(part);
          Cutter cutter = new Cutter(12.7);
          Reach.of(part, cutter, Follower.flush(cutter));
        });
  }

  /**
   * For a page that is to be quick from its first change on: every shape is drawn in the background
   * until the most used code is compiled.
   */
  public static void toShow() {
    start(
        () -> {
          for (int round = 0; round < SHOWN; round++) {
            for (String shape : ShapeLibrary.builtIn().names()) {
              String job = "parts: [{name: ready, shape: %s, bit: 1/4in}]".formatted(shape);
              JobInHand ready = JobInHand.of(Map.of(JobInHand.FILE, job));
              ready.view("ready", 1, OptionalDouble.empty());
              ready.rack("ready");
            }
          }
        });
  }

  /** For a command that paints a picture. */
  public static void toPaint() {
    start(
        () -> {
          Item circle = new Item.Stroke(Path.of(Arc.circle(Point.ORIGIN, 10)));
          Item word = new Item.Text(Point.ORIGIN, "R 1/2 in", 4, 0, Item.Text.Anchor.MIDDLE);
          Layer layer = new Layer(LayerName.TEMPLATE, Role.CUT, "template", List.of(circle, word));
          PngWriter.write(new Drawing("ready", List.of(layer)), Units.INCH, 64);
        });
  }

  private static void start(Runnable work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
              } catch (RuntimeException told) {
                // The command meets the same trouble itself and says it in its place.
              }
            });
    thread.setDaemon(true);
    thread.start();
  }
}
