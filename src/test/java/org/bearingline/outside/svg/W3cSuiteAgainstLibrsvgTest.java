package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.bearingline.external.ExternalFolder;
import org.bearingline.external.ExternalProgram;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The W3C's test suite of SVG 1.1 (second edition), as Debian's package librsvg2-tests brings it,
 * and the icons of GNOME that lie beside it: painted by librsvg, and what the reader made of them
 * painted by librsvg as bare polygons. All files of the suite are compared, those about filters,
 * gradients and text too, for their shapes; what a file asks for that is never read is named here.
 */
class W3cSuiteAgainstLibrsvgTest {

  private static final String FIXTURES = "/usr/libexec/installed-tests/RSVG/fixtures";

  private static final String PACKAGE = "Debian's package librsvg2-tests";

  /** Widths at which few edges run exactly through the corners of pixels. */
  private static final int PIXELS = 601;

  private static final int ICON_PIXELS = 307;

  /** Of the icons each fifth, to spare time. */
  private static final int ICON_STEP = 5;

  /** Files that the reader refuses, with a word of its sentence; they are compared without that. */
  private static final Map<String, String> REFUSED =
      Map.of(
          // Paths that are wrong on purpose: half a path is no edge to cut to.
          "paths-data-18-f", "cannot be read",
          "paths-data-20-f", "cannot be read",
          // Elements that stand in the document type.
          "coords-viewattr-01-b", "DOCTYPE",
          "coords-viewattr-02-b", "DOCTYPE",
          "text-tref-02-b", "DOCTYPE",
          "text-tref-03-b", "DOCTYPE",
          // Lines of another file.
          "pservers-grad-24-f", "outside the file",
          "pservers-pattern-06-f", "outside the file",
          "struct-use-04-b", "outside the file");

  /** Files with a white page under all, which is left out and told. */
  private static final Set<String> ON_A_PAGE = Set.of("filters-turb-02-f");

  /** The wrong paths of those files, as the suite's own words describe them. */
  private static final Set<String> WRONG_PATHS =
      Set.of(
          "M 20 100 H 40#90",
          "M 20 160 H 40#90",
          "M280,120 h25 a25,25 0 6 0 -25,25 z",
          "M360,120 h-25 a25,25 0 1 -1 25,25 z",
          "M200,200 h-25 a25,2501 025,-25 z",
          "M280,200 h25 a25 25 0 1 7 -25 -25 z",
          "M360,200 h-25 a25,25 0 -1 0 25,-25 z");

  /** Icons with a shape that shows nothing in the drawing and would be seen in thin black. */
  private static final Set<String> HOLDS_UNSEEN =
      Set.of("network-wireless-connected-symbolic", "network-wireless-no-route-symbolic");

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> theSuite() {
    List<Path> files = files("reftests/svg1.1", file -> true);
    assertTrue(files.size() > 150, "the suite is not whole");
    Set<String> names = files.stream().map(this::name).collect(Collectors.toSet());
    Set<String> strange = new TreeSet<>(REFUSED.keySet());
    strange.removeAll(names);
    assertEquals(Set.of(), strange);
    return tests(files, PIXELS);
  }

  @TestFactory
  Stream<DynamicTest> iconsOfGnome() {
    List<Path> files = files("reftests/adwaita", file -> !HOLDS_UNSEEN.contains(name(file)));
    List<Path> some = new ArrayList<>();
    for (int i = 0; i < files.size(); i += ICON_STEP) {
      some.add(files.get(i));
    }
    assertTrue(some.size() > 30);
    return tests(some, ICON_PIXELS);
  }

  private static List<Path> files(String where, Predicate<Path> wanted) {
    return ExternalFolder.of(FIXTURES + "/" + where, PACKAGE).files(".svg").stream()
        .filter(file -> !file.getParent().endsWith("resources"))
        .filter(wanted)
        .toList();
  }

  private String name(Path file) {
    return file.getFileName().toString().replaceAll("^ignore-|\\.svg$", "");
  }

  private Stream<DynamicTest> tests(List<Path> files, int width) {
    ExternalProgram librsvg = ExternalProgram.named("rsvg-convert");
    var pictures = new BarePolygons(librsvg, folder, BarePolygons.Paint.THIN, width);
    return files.stream()
        .map(file -> DynamicTest.dynamicTest(name(file), () -> compare(pictures, file)));
  }

  private void compare(BarePolygons pictures, Path file) throws Exception {
    byte[] bytes = Files.readAllBytes(file);
    String refused = REFUSED.get(name(file));
    if (refused != null) {
      byte[] asWritten = bytes;
      Problem problem = assertThrows(Problem.class, () -> read(file, asWritten));
      assertTrue(problem.getMessage().contains(refused), problem.spoken());
      bytes = without(bytes);
    }
    Sketch sketch = read(file, bytes);
    assertEquals(
        ON_A_PAGE.contains(name(file)),
        sketch.ignored().contains("1 white background as large as the page"));
    if (ON_A_PAGE.contains(name(file))) {
      bytes = without(bytes);
    }
    var difference = pictures.compare(bytes, sketch);
    assertTrue(difference.painted() > 100, "librsvg painted nothing");
    assertTrue(difference.unlike() <= 3, file + ": " + difference);
  }

  private static Sketch read(Path file, byte[] bytes) {
    return SvgReader.read(file.toString(), bytes, ReadingSettings.USUAL);
  }

  /** The drawing without wrong paths, lines of other files and white; its entities written out. */
  private static byte[] without(byte[] drawing)
      throws IOException, SAXException, ParserConfigurationException, TransformerException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(drawing));
    for (Element path : elements(document, "path")) {
      if (WRONG_PATHS.contains(path.getAttribute("d"))) {
        path.getParentNode().removeChild(path);
      }
    }
    for (Element rectangle : elements(document, "rect")) {
      if (rectangle.getAttribute("fill").equals("white")) {
        rectangle.getParentNode().removeChild(rectangle);
      }
    }
    for (Element use : elements(document, "use")) {
      if (!use.getAttributeNS("http://www.w3.org/1999/xlink", "href").startsWith("#")) {
        use.getParentNode().removeChild(use);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TransformerFactory.newDefaultInstance()
        .newTransformer()
        .transform(new DOMSource(document.getDocumentElement()), new StreamResult(out));
    return out.toByteArray();
  }

  private static List<Element> elements(Document document, String name) {
    NodeList found = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }
}
