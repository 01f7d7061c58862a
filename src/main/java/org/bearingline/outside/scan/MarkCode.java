package org.bearingline.outside.scan;

import boofcv.alg.fiducial.qrcode.PackedBits32;
import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.HammingDictionary;
import java.util.ArrayList;
import java.util.List;

/**
 * The marks' pattern: a black frame round 5 × 5 cells, of the open dictionary ARUCO_MIP_25h7, whose
 * codes differ from each other by 7 cells at least, however turned (Garrido-Jurado et al.,
 * Generation of fiducial marker dictionaries using mixed integer linear programming, Pattern
 * Recognition 51, 2016).
 */
final class MarkCode {

  private MarkCode() {}

  static ConfigHammingMarker dictionary() {
    return ConfigHammingMarker.loadDictionary(HammingDictionary.ARUCO_MIP_25h7);
  }

  /** The cells with their frame, row by row from the top, true where black. */
  static List<List<Boolean>> cells(int code) {
    ConfigHammingMarker dictionary = dictionary();
    PackedBits32 bits = dictionary.encoding.get(code).pattern;
    int inner = dictionary.gridWidth;
    List<List<Boolean>> rows = new ArrayList<>();
    for (int row = -1; row <= inner; row++) {
      List<Boolean> cells = new ArrayList<>();
      for (int column = -1; column <= inner; column++) {
        boolean frame = row < 0 || column < 0 || row == inner || column == inner;
        cells.add(frame || bits.get(row * inner + column) == 0);
      }
      rows.add(List.copyOf(cells));
    }
    return List.copyOf(rows);
  }
}
