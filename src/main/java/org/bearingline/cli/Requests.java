package org.bearingline.cli;

import java.util.List;
import java.util.Optional;
import org.bearingline.job.Wishes;
import org.bearingline.job.WrittenFile;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;

/** Builds the request that a command's options make. */
final class Requests {

  private Requests() {}

  static Wishes reach(
      SourceOptions source, List<String> bits, FollowerOptions follower, UnitsOption units) {
    return wishes(source, bits, follower, new LayoutOptions(), new PaperOptions(), units);
  }

  static Wishes layout(TemplateOptions options) {
    return wishes(
        options.source,
        options.bits,
        options.follower,
        options.layout,
        options.paper,
        options.units);
  }

  private static Wishes wishes(
      SourceOptions source,
      List<String> bits,
      FollowerOptions follower,
      LayoutOptions layout,
      PaperOptions paper,
      UnitsOption units) {
    if (follower.bearing != null && follower.collar != null) {
      throw new Problem(
          Place.option("--collar"), "a bit follows a bearing or a collar; give one of the two");
    }
    return new Wishes(
        source.measures(),
        bits.stream().map(bit -> OptionText.requiredLength("--bit", bit)).toList(),
        OptionText.length("--bearing", follower.bearing),
        OptionText.length("--collar", follower.collar),
        Optional.ofNullable(source.kit).map(WrittenFile.OnDisk::new),
        OptionText.length("--thickness", layout.thickness),
        OptionText.length("--allowance", layout.allowance),
        OptionText.length("--saw-blade", layout.sawBlade),
        OptionText.length("--run-out", layout.runOut),
        OptionText.length("--deepest-pass", layout.deepestPass),
        Optional.ofNullable(layout.router),
        OptionText.length("--router-base", layout.routerBase),
        OptionText.length("--kerf", layout.kerf),
        Optional.ofNullable(paper.paper),
        OptionText.length("--margin", paper.margin),
        Optional.ofNullable(paper.printed),
        units.chosen(),
        source.drawing.wishes());
  }
}
