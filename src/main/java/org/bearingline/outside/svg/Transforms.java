package org.bearingline.outside.svg;

import org.apache.batik.parser.DefaultTransformListHandler;
import org.apache.batik.parser.TransformListParser;
import org.bearingline.outside.Affine;
import org.bearingline.outside.DrawingLimits;

/** Reads the attribute {@code transform}. */
final class Transforms extends DefaultTransformListHandler {

  private Affine whole = Affine.IDENTITY;

  private Transforms() {}

  /** The map from inside the element to outside; the identity where it has no transform. */
  static Affine of(SvgElement element) {
    String text = element.attribute("transform").orElse("");
    if (text.isEmpty() || text.equals("none")) {
      return Affine.IDENTITY;
    }
    Transforms handler = new Transforms();
    TransformListParser parser = new TransformListParser();
    parser.setTransformListHandler(handler);
    Parsing.run(parser, element, "transform", text);
    return DrawingLimits.near(handler.whole, element.place());
  }

  private void then(Affine next) {
    whole = whole.of(next);
  }

  @Override
  public void matrix(float a, float b, float c, float d, float e, float f) {
    then(new Affine(a, b, c, d, e, f));
  }

  @Override
  public void rotate(float theta) {
    then(Affine.rotation(theta));
  }

  @Override
  public void rotate(float theta, float cx, float cy) {
    then(Affine.translation(cx, cy));
    then(Affine.rotation(theta));
    then(Affine.translation(-cx, -cy));
  }

  @Override
  public void translate(float tx) {
    then(Affine.translation(tx, 0));
  }

  @Override
  public void translate(float tx, float ty) {
    then(Affine.translation(tx, ty));
  }

  @Override
  public void scale(float factor) {
    then(Affine.scaling(factor, factor));
  }

  @Override
  public void scale(float sx, float sy) {
    then(Affine.scaling(sx, sy));
  }

  @Override
  public void skewX(float degrees) {
    then(new Affine(1, 0, Math.tan(Math.toRadians(degrees)), 1, 0, 0));
  }

  @Override
  public void skewY(float degrees) {
    then(new Affine(1, Math.tan(Math.toRadians(degrees)), 0, 1, 0, 0));
  }
}
