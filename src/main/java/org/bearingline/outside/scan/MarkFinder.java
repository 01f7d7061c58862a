package org.bearingline.outside.scan;

import boofcv.abst.fiducial.SquareHamming_to_FiducialDetector;
import boofcv.alg.filter.misc.AverageDownSampleOps;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.List;
import org.bearingline.outline.Point;

/** Finds the corner marks of a picture and places their corners between the pixels. */
final class MarkFinder {

  /** Marks are searched for in a picture no larger than this, then placed in the full one. */
  private static final int SEARCH_SIDE = 2400;

  private MarkFinder() {}

  /** Every mark of the dictionary that the picture shows, in the order found. */
  static List<SeenMark> find(GreyImage image) {
    GrayU8 grey = new GrayU8();
    grey.data = image.levels();
    grey.width = image.width();
    grey.height = image.height();
    grey.stride = image.width();
    int step =
        Math.max(1, (int) Math.ceil(Math.max(grey.width, grey.height) / (double) SEARCH_SIDE));
    GrayU8 small = grey;
    if (step > 1) {
      small = new GrayU8(grey.width / step, grey.height / step);
      AverageDownSampleOps.down(
          grey.subimage(0, 0, small.width * step, small.height * step), step, small);
    }
    SquareHamming_to_FiducialDetector<GrayU8> detector =
        FactoryFiducial.squareHamming(
            MarkCode.dictionary(), new ConfigFiducialHammingDetector(), GrayU8.class);
    detector.detect(small);
    List<SeenMark> marks = new ArrayList<>();
    for (int i = 0; i < detector.totalFound(); i++) {
      Polygon2D_F64 bounds = detector.getBounds(i, null);
      List<Point> corners = new ArrayList<>();
      for (int turn = 0; turn < bounds.size(); turn++) {
        // The library begins at the lower right corner, we at the upper left one.
        int corner = (turn + 2) % bounds.size();
        // A small pixel's centre is the mean of the centres it was made of.
        double shift = (step - 1) / 2.0;
        corners.add(
            new Point(bounds.get(corner).x * step + shift, bounds.get(corner).y * step + shift));
      }
      long code = detector.getId(i);
      SeenMark rough = new SeenMark(MarkSet.setOf(code), MarkSet.letterOf(code), corners);
      marks.add(MarkEdges.placed(image, rough, step));
    }
    return marks;
  }
}
