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

  /** Stock of 3/4 in, or 20 mm. */
  private static final Usual THICKNESS = new Usual(19.05, 20);

  /** 1/16 in, as the magazines tell for flush trimming, or 1.5 mm. */
  private static final Usual ALLOWANCE = new Usual(25.4 / 16, 1.5);

  /** 1/4 in. */
  private static final double SAW_BLADE = 25.4 / 4;

  /** 1-1/2 in, between the usual 1 and 2 in, or 40 mm; as much is left behind sawn edges. */
  private static final Usual RUN_OUT = new Usual(1.5 * 25.4, 40);

  /** More wood than this, mm, is for the saw (1 in). */
  private static final double WIDEST_ALLOWANCE = 25.4;

  /** More than this, mm, is a plate that nobody makes (12 in). */
  private static final double LONGEST_RUN_OUT = 12 * 25.4;

  /** No router stands on a smaller or larger base, mm (2 in, 16 in). */
  private static final double SMALLEST_BASE = 2 * 25.4;

  private static final double LARGEST_BASE = 16 * 25.4;

  /** A kerf wider than this, in mm, is no laser's and no small cutter's. */
  private static final double WIDEST_KERF = 10;

  private Settings() {}

  /** A usual length, mm, round in the units the maker thinks in. */
  private record Usual(double forInches, double forMillimetres) {
    double in(Units units) {
      return units == Units.MM ? forMillimetres : forInches;
    }
  }

  static Units units(Wishes wishes) {
    return wishes.units().orElse(Units.INCH);
  }

  static RoutingSettings routing(Wishes wishes, Cutter cutter, Follower follower) {
    Units units = units(wishes);
    base(wishes, SMALLEST_BASE);
    return RoutingSettings.usual(cutter, follower)
        .withAllowance(allowance(wishes))
        .withBlade(blade(wishes))
        .withRunOut(runOut(wishes))
        .withMargin(RUN_OUT.in(units))
        .withThickness(thickness(wishes))
        .withUnits(units)
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
    ClampSettings usual = ClampSettings.usual(units(wishes));
    return usual.withBase(base(wishes, usual.baseDiameter()));
  }

  private static double base(Wishes wishes, double usual) {
    double base = above0("--router-base", wishes.routerBase(), usual);
    if (base < SMALLEST_BASE || base > LARGEST_BASE) {
      throw new Problem(
          Place.option("--router-base"),
          "a router's base is "
              + Words.both(SMALLEST_BASE)
              + " to "
              + Words.both(LARGEST_BASE)
              + " wide; measure it across");
    }
    return base;
  }

  private static double allowance(Wishes wishes) {
    double allowance = above0("--allowance", wishes.allowance(), ALLOWANCE.in(units(wishes)));
    if (allowance > WIDEST_ALLOWANCE) {
      throw new Problem(
          Place.option("--allowance"),
          "more than "
              + Words.both(WIDEST_ALLOWANCE)
              + " of waste is too much for a router; saw nearer to the line, usually to within"
              + " 1/16in or 1.5mm");
    }
    return allowance;
  }

  private static double runOut(Wishes wishes) {
    double runOut = notBelow0("--run-out", wishes.runOut(), RUN_OUT.in(units(wishes)));
    if (runOut > LONGEST_RUN_OUT) {
      throw new Problem(
          Place.option("--run-out"),
          "a template that goes on by more than "
              + Words.both(LONGEST_RUN_OUT)
              + " is larger than it need be; 1-1/2in or 40mm is usual");
    }
    return runOut;
  }

  static OptionalDouble deepestPass(Wishes wishes) {
    above0("--deepest-pass", wishes.deepestPass(), 1);
    return wishes.deepestPass();
  }

  static double thickness(Wishes wishes) {
    return above0("--thickness", wishes.thickness(), THICKNESS.in(units(wishes)));
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
