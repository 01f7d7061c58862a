package org.bearingline.outside.svg;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.bearingline.outside.DrawingLimits;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Turns the XML of a drawing into its elements; what is no part of it is never opened. */
final class SvgFile extends DefaultHandler {

  private static final String SVG = "http://www.w3.org/2000/svg";

  private static final String FEATURES = "http://xml.org/sax/features/";

  private final String file;
  private final byte[] bytes;
  private final Deque<SvgElement> open = new ArrayDeque<>();
  private SvgElement root;
  private Locator locator;
  private int elements;

  private int sheetsOutside;

  private SvgFile(String file, byte[] bytes) {
    this.file = file;
    this.bytes = bytes;
  }

  /**
   * What a file holds.
   *
   * @param root element
   * @param sheetsOutside how many style sheets outside itself it asks for
   */
  record Content(SvgElement root, int sheetsOutside) {}

  /**
   * The content of a file.
   *
   * @throws Problem where the file is no SVG, broken, or asks for more than its own content
   */
  static Content read(String file, byte[] bytes) {
    SvgFile handler = new SvgFile(file, bytes);
    try {
      XMLReader reader = reader();
      reader.setContentHandler(handler);
      reader.setErrorHandler(handler);
      DocumentType type = new DocumentType(handler::place, bytes);
      reader.setEntityResolver(type);
      reader.setDTDHandler(type);
      reader.setProperty("http://xml.org/sax/properties/lexical-handler", type);
      reader.setProperty("http://xml.org/sax/properties/declaration-handler", type);
      reader.parse(new InputSource(new ByteArrayInputStream(bytes)));
    } catch (SAXParseException broken) {
      Place place =
          Place.spot(
              file, Math.max(1, broken.getLineNumber()), Math.max(1, broken.getColumnNumber()));
      throw new Problem(place, sentence(broken), broken);
    } catch (SAXException | ParserConfigurationException refused) {
      throw new IllegalStateException(refused);
    } catch (IOException damaged) {
      throw new Problem(
          handler.place(),
          "the text of the file is damaged or in another encoding than it says; save it as SVG in"
              + " UTF-8",
          damaged);
    }
    return new Content(handler.root, handler.sheetsOutside);
  }

  private static XMLReader reader() throws ParserConfigurationException, SAXException {
    // The platform's own parser: none that lies on the class path may take its place.
    SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    factory.setValidating(false);
    factory.setXIncludeAware(false);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature(FEATURES + "external-general-entities", false);
    factory.setFeature(FEATURES + "external-parameter-entities", false);
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    return factory.newSAXParser().getXMLReader();
  }

  private static String sentence(SAXParseException broken) {
    String said = String.valueOf(broken.getMessage());
    if (said.contains("JAXP0001")) {
      return "the file has a name or a list of attributes longer than any drawing needs; save it"
          + " again as plain SVG";
    }
    return "the file is no whole XML from here on: it is cut short, damaged or no SVG; save the"
        + " drawing again";
  }

  private Place place() {
    return locator == null || locator.getLineNumber() < 1
        ? Place.file(file)
        : Place.spot(file, locator.getLineNumber(), Math.max(1, locator.getColumnNumber()));
  }

  @Override
  public void setDocumentLocator(Locator given) {
    locator = given;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes given) {
    if (++elements > DrawingLimits.MOST_ELEMENTS) {
      throw new Problem(place(), "the drawing has more than 2,000,000 elements; take a part of it");
    }
    if (open.size() >= DrawingLimits.DEEPEST) {
      throw new Problem(
          place(),
          "elements lie more than "
              + DrawingLimits.DEEPEST
              + " deep in each other here; ungroup the drawing");
    }
    boolean isSvg = uri.equals(SVG) || uri.isEmpty();
    SvgElement element =
        new SvgElement(
            file, isSvg ? local : "", locator.getLineNumber(), locator.getColumnNumber());
    if (root == null) {
      if (!element.isA("svg")) {
        throw new Problem(place(), "the file is XML but no SVG; save the drawing as SVG");
      }
      root = element;
    } else {
      open.peek().add(element);
    }
    for (int i = 0; i < given.getLength(); i++) {
      String name = given.getLocalName(i);
      // An attribute of its own goes before one of a neighbouring language, such as xlink:href.
      if (given.getURI(i).isEmpty() || element.attribute(name).isEmpty()) {
        element.set(name, given.getValue(i));
      }
    }
    open.push(element);
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    open.pop();
  }

  @Override
  public void characters(char[] letters, int from, int count) {
    if (open.peek().isA("style")) {
      open.peek().text().append(letters, from, count);
    }
  }

  @Override
  public void processingInstruction(String target, String data) {
    if (target.equals("xml-stylesheet")) {
      sheetsOutside++;
    }
  }

  @Override
  public void error(SAXParseException broken) throws SAXException {
    throw broken;
  }
}
