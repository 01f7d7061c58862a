package org.bearingline.job;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bearingline.drawing.sheet.Margins;
import org.bearingline.drawing.sheet.Paper;
import org.bearingline.drawing.sheet.PaperChoice;
import org.bearingline.drawing.sheet.PrintCorrection;
import org.bearingline.kit.Cutter;
import org.bearingline.kit.Follower;
import org.bearingline.kit.SawBlade;
import org.bearingline.length.Units;
import org.bearingline.problem.NearestName;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.bearingline.routing.RoutingSettings;
import org.bearingline.routing.Station;
import org.bearingline.routing.setup.ClampSettings;

/** What holds where the maker says nothing; common practice unless a source is named. */
final class Settings {

  /** Stock of 3/4 in. */
  private static final double THICKNESS = 19.05;

  /** 1/16 in, as the magazines tell for flush trimming. */
  private static final double ALLOWANCE = 25.4 / 16;

  /** 1/4 in. */
  private static final double SAW_BLADE = 25.4 / 4;

  /** 1-1/2 in, between the usual 1 and 2 in. */
  private static final double RUN_OUT = 1.5 * 25.4;

  /** A kerf wider than this, in mm, is no laser's and no small cutter's. */
  private static final double WIDEST_KERF = 10;

  private Settings() {}

  static Units units(Wishes wishes) {
    return wishes.units().orElse(Units.INCH);
  }

  static RoutingSettings routing(Wishes wishes, Cutter cutter, Follower follower) {
    above0("--router-base", wishes.routerBase(), 1);
    return RoutingSettings.usual(cutter, follower)
        .withAllowance(above0("--allowance", wishes.allowance(), ALLOWANCE))
        .withBlade(blade(wishes))
        .withRunOut(notBelow0("--run-out", wishes.runOut(), RUN_OUT))
        .withThickness(thickness(wishes))
        .withUnits(units(wishes))
        .withStation(station(wishes, cutter.diameter(), follower instanceof Follower.Collar));
  }

  /**
   * Where the router is: as the maker says, else in the hand, but at the table for a bit too large
   * for that. A collar is fixed to the base and leads only a router in the hand.
   */
  static Station station(Wishes wishes, double diameter, boolean onCollar) {
    return wishes
        .router()
        .map(text -> station(text, Place.option("--router")))
        .orElse(
            !onCollar && diameter > Tools.LARGEST_UNASKED + 1e-6
                ? Station.TABLE
                : Station.HAND_HELD);
  }

  /** Reads {@code hand} or {@code table}. */
  static Station station(String text, Place place) {
    return switch (text.strip()) {
      case "hand" -> Station.HAND_HELD;
      case "table" -> Station.TABLE;
      default ->
          throw new Problem(
              place,
              "“"
                  + text
                  + "” is no place for a router"
                  + NearestName.hint(List.of("hand", "table"), text)
                  + "; write hand or table");
    };
  }

  static ClampSettings clamps(Wishes wishes) {
    ClampSettings usual = ClampSettings.usual();
    return usual.withBase(above0("--router-base", wishes.routerBase(), usual.baseDiameter()));
  }

  static OptionalDouble deepestPass(Wishes wishes) {
    above0("--deepest-pass", wishes.deepestPass(), 1);
    return wishes.deepestPass();
  }

  static double thickness(Wishes wishes) {
    return above0("--thickness", wishes.thickness(), THICKNESS);
  }

  /** Width of the saw blade, mm. */
  static double sawBlade(Wishes wishes) {
    return above0("--saw-blade", wishes.sawBlade(), SAW_BLADE);
  }

  private static SawBlade blade(Wishes wishes) {
    double width = sawBlade(wishes);
    try {
      return SawBlade.ofWidth(width);
    } catch (Problem refused) {
      throw refused.at(Place.option("--saw-blade"));
    }
  }

  static double kerf(Wishes wishes) {
    double kerf = notBelow0("--kerf", wishes.kerf(), 0);
    if (kerf > WIDEST_KERF) {
      throw new Problem(
          Place.option("--kerf"),
          String.format(
              Locale.ROOT,
              "a kerf of more than %.0f mm is none; give the width of the cut, often 0.2mm",
              WIDEST_KERF));
    }
    return kerf;
  }

  static PaperChoice paper(Wishes wishes) {
    String usual = units(wishes) == Units.MM ? "A4" : "Letter";
    PaperChoice choice =
        PaperChoice.of(
            Paper.parse(wishes.paper().orElse(usual)),
            wishes.printed().map(PrintCorrection::parse).orElse(PrintCorrection.NONE));
    OptionalDouble margin = wishes.margin();
    if (margin.isEmpty()) {
      return choice;
    }
    return choice.withMargins(Margins.all(notBelow0("--margin", margin, 0)));
  }

  private static double above0(String option, OptionalDouble given, double usual) {
    if (given.isPresent() && !(given.getAsDouble() > 0)) {
      throw new Problem(Place.option(option), "give a length above 0");
    }
    return given.orElse(usual);
  }

  private static double notBelow0(String option, OptionalDouble given, double usual) {
    if (given.isPresent() && !(given.getAsDouble() >= 0)) {
      throw new Problem(Place.option(option), "give a length of 0 or more");
    }
    return given.orElse(usual);
  }
}
