package org.bearingline.outside.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** A dark plate with a hole on a light ground, as files of all kinds. */
final class Pictures {

  static final int WIDTH = 300;
  static final int HEIGHT = 200;

  /** The plate's left, top, width and height, and the hole's middle and radius, pixels. */
  static final double[] PLATE = {60, 50, 180, 100};

  static final double[] HOLE = {150, 100, 25};

  private Pictures() {}

  /** The plate in a picture of a type of {@link BufferedImage}. */
  static BufferedImage plate(int type) {
    return plate(new BufferedImage(WIDTH, HEIGHT, type));
  }

  static BufferedImage plate(BufferedImage image) {
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    pen.setColor(Color.BLACK);
    pen.fill(new Rectangle2D.Double(PLATE[0], PLATE[1], PLATE[2], PLATE[3]));
    pen.setColor(Color.WHITE);
    pen.fill(new Ellipse2D.Double(HOLE[0] - HOLE[2], HOLE[1] - HOLE[2], 2 * HOLE[2], 2 * HOLE[2]));
    pen.dispose();
    return image;
  }

  static byte[] file(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalStateException("no writer of " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static byte[] progressiveJpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    return written(writer, image, param);
  }

  static byte[] tiledTiff(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setTilingMode(ImageWriteParam.MODE_EXPLICIT);
    param.setTiling(64, 48, 0, 0);
    return written(writer, image, param);
  }

  private static byte[] written(ImageWriter writer, BufferedImage image, ImageWriteParam param) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }

  static byte[] tiffOf(BufferedImage... pages) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.prepareWriteSequence(null);
      for (BufferedImage page : pages) {
        writer.writeToSequence(new IIOImage(page, null, null), null);
      }
      writer.endWriteSequence();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
