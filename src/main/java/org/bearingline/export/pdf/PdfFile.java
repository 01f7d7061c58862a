package org.bearingline.export.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** A document in the making. It holds no date, and its identifier follows from its title. */
final class PdfFile implements AutoCloseable {

  private final PDDocument document = new PDDocument();
  private final Fonts fonts = new Fonts(document);

  PdfFile(String title) {
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setCreator("Bearing Line");
    document.setDocumentInformation(about);
    document.setDocumentId(1L);
  }

  PDDocument document() {
    return document;
  }

  Fonts fonts() {
    return fonts;
  }

  byte[] bytes() {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
