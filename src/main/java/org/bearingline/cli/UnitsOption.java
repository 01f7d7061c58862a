package org.bearingline.cli;

import java.util.Optional;
import org.bearingline.length.Units;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import picocli.CommandLine.Option;

/** The units that figures are shown in. */
final class UnitsOption {

  @Option(
      names = "--units",
      paramLabel = "in|mm",
      description = "show figures in inches or millimetres (default: in)")
  String units;

  Optional<Units> chosen() {
    if (units == null) {
      return Optional.empty();
    }
    return Optional.of(
        switch (units) {
          case "in" -> Units.INCH;
          case "mm" -> Units.MM;
          default ->
              throw new Problem(
                  Place.option("--units"), "“" + units + "” is no unit here; write in or mm");
        });
  }
}
