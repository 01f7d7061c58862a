package org.bearingline;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rooms of the program: who may import whom, and where each library lives. */
class RoomsArchitectureTest {

  private static final String ROOT = "org.bearingline.";

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.bearingline");

  /** Room to the rooms below it that it may import; a room may always import itself. */
  private static final Map<String, Set<String>> MAY_IMPORT =
      Map.ofEntries(
          room("problem"),
          room("facts", "problem"),
          room("archive", "problem"),
          room("yaml", "problem"),
          room("length", "problem"),
          room("outline", "problem"),
          room("outline.topology", "problem", "outline"),
          room("outline.offset", "problem", "outline", "outline.topology"),
          room("outline.construct", "problem", "length", "outline"),
          room("outline.fit", "problem", "outline", "outline.construct"),
          room("part", "problem", "outline"),
          room("kit", "problem", "facts", "yaml", "length"),
          room("wood", "problem", "facts"),
          room(
              "routing",
              "problem",
              "facts",
              "length",
              "outline",
              "outline.offset",
              "outline.topology",
              "outline.construct",
              "part",
              "kit",
              "wood"),
          room(
              "routing.operation",
              "problem",
              "facts",
              "length",
              "outline",
              "outline.offset",
              "part",
              "kit",
              "routing"),
          room(
              "routing.grain",
              "problem",
              "facts",
              "length",
              "outline",
              "part",
              "routing",
              "routing.operation"),
          room(
              "routing.setup",
              "problem",
              "facts",
              "length",
              "outline",
              "outline.offset",
              "part",
              "kit",
              "routing",
              "routing.operation"),
          room(
              "shape",
              "problem",
              "yaml",
              "length",
              "outline",
              "outline.offset",
              "outline.topology",
              "outline.construct",
              "outline.fit",
              "part"),
          room(
              "routing.family",
              "problem",
              "length",
              "outline",
              "outline.offset",
              "part",
              "kit",
              "routing"),
          room("outside", "problem", "outline", "outline.fit"),
          room("outside.unite", "problem", "outline", "outline.offset", "outline.topology"),
          room(
              "outside.clean",
              "problem",
              "outline",
              "outline.offset",
              "outline.topology",
              "outline.construct",
              "outline.fit",
              "outside",
              "outside.unite"),
          room("outside.svg", "problem", "outline", "outline.fit", "outside"),
          room("outside.dxf", "problem", "facts", "outline", "outline.fit", "outside"),
          room("outside.scan", "problem", "facts", "outline", "outside"),
          room("cutlist", "problem", "length", "outline", "part", "routing"),
          room("drawing", "problem", "outline", "length"),
          room("drawing.sheet", "problem", "facts", "outline", "length", "drawing"),
          room("export", "problem", "outline", "length", "drawing"),
          room("export.font", "problem", "outline"),
          room("export.svg", "problem", "outline", "length", "drawing", "export", "export.font"),
          room(
              "export.png",
              "problem",
              "outline",
              "length",
              "drawing",
              "export",
              "export.font",
              "export.svg"),
          room("export.dxf", "problem", "outline", "length", "drawing", "export"),
          room(
              "export.pdf",
              "problem",
              "outline",
              "length",
              "drawing",
              "drawing.sheet",
              "export",
              "export.font"),
          room("export.report", "problem", "outline"),
          room(
              "job",
              "problem",
              "archive",
              "facts",
              "yaml",
              "length",
              "outline",
              "outline.offset",
              "outline.topology",
              "part",
              "kit",
              "wood",
              "routing",
              "routing.operation",
              "routing.grain",
              "routing.setup",
              "routing.family",
              "cutlist",
              "shape",
              "outside",
              "outside.clean",
              "outside.svg",
              "outside.dxf",
              "outside.scan",
              "drawing",
              "drawing.sheet",
              "export",
              "export.font",
              "export.svg",
              "export.png",
              "export.dxf",
              "export.pdf",
              "export.report"),
          room("web", "problem", "archive", "length", "job"),
          room("cli", "problem", "length", "job", "web"));

  private static Map.Entry<String, Set<String>> room(String name, String... below) {
    return entry(name, Set.of(below));
  }

  /** The most particular room a class lives in; a package below a room belongs to it. */
  private static String roomOf(JavaClass type) {
    String packageName = type.getPackageName();
    if (!packageName.startsWith(ROOT)) {
      return "";
    }
    String name = packageName.substring(ROOT.length());
    while (!name.isEmpty() && !MAY_IMPORT.containsKey(name)) {
      name = name.substring(0, Math.max(0, name.lastIndexOf('.')));
    }
    return name;
  }

  private static DescribedPredicate<JavaClass> inRooms(String... rooms) {
    return describe(
        "in room " + String.join(", ", rooms), type -> Arrays.asList(rooms).contains(roomOf(type)));
  }

  @TestFactory
  Stream<DynamicTest> aRoomImportsOnlyRoomsBelowIt() {
    return MAY_IMPORT.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> checkRoom(e.getKey(), e.getValue())));
  }

  private static void checkRoom(String room, Set<String> below) {
    DescribedPredicate<JavaClass> outsideItsRights =
        describe(
            "in a room that " + room + " may not import",
            type -> {
              String other = roomOf(type);
              return type.getPackageName().startsWith("org.bearingline")
                  && !other.equals(room)
                  && !below.contains(other);
            });
    noClasses()
        .that(inRooms(room))
        .should()
        .dependOnClassesThat(outsideItsRights)
        .because(
            "a room that knows only what is below it can be read, tested and replaced alone; move"
                + " the shared thing down or pass the value in")
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  @Test
  void everyClassLivesInARoom() {
    classes()
        .should(be(describe("in a known room", type -> !roomOf(type).isEmpty())))
        .because("a new room is added to the table above together with its rights")
        .check(PROGRAM);
  }

  private static void onlyIn(String library, String reason, String... rooms) {
    noClasses()
        .that(DescribedPredicate.not(inRooms(rooms)))
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(library)
        .because(reason)
        .check(PROGRAM);
  }

  @Test
  void jtsStaysInTopology() {
    onlyIn(
        "org.locationtech..",
        "only the topology room knows JTS, so that swapping it touches one folder",
        "outline.topology");
  }

  @Test
  void batikStaysWithSvgAndPng() {
    onlyIn(
        "org.apache.batik..", "Batik is slow to load", "export.svg", "export.png", "outside.svg");
  }

  @Test
  void pdfBoxStaysWithPdf() {
    onlyIn("org.apache.pdfbox..", "PDFBox is slow to load", "export.pdf", "export.font");
  }

  @Test
  void fontBoxStaysWithTheFont() {
    onlyIn("org.apache.fontbox..", "one place reads fonts", "export.font", "export.pdf");
  }

  @Test
  void picocliStaysWithTheCommands() {
    onlyIn("picocli..", "the work does not know who asked for it", "cli");
  }

  @Test
  void boofCvStaysWithTheScans() {
    onlyIn(
        "boofcv..",
        "the image library lies in lib/more, which only the commands that read images have on their"
            + " class path",
        "outside.scan");
  }

  @Test
  void awtStaysWithThePictures() {
    onlyIn(
        "java.awt..",
        "geometry and files need no screen",
        "export.font",
        "export.png",
        "export.svg",
        "export.pdf",
        "outside.scan");
  }

  @Test
  void theServerStaysWithThePage() {
    onlyIn("org.eclipse.jetty..", "the work does not know who asked for it", "web");
    onlyIn("com.fasterxml.jackson.databind..", "only the page's requests are trees", "web");
  }

  @Test
  void chanceIsForThePagesTokenAlone() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName(ROOT + "web.SessionToken")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.security.SecureRandom")
        .because("the token must not be guessed; everything else depends on its input alone")
        .check(PROGRAM);
  }

  @Test
  void yamlStaysWithTheFilesAMakerWrites() {
    onlyIn("org.snakeyaml..", "files are read in one place", "yaml");
  }

  @Test
  void expressionsStayWithShapes() {
    onlyIn("com.ezylang..", "only shape files hold expressions", "shape");
  }

  @Test
  void onlyTheCommandsTouchTheStandardStreams() {
    noClasses()
        .that(DescribedPredicate.not(inRooms("cli")))
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .because("what is printed is decided by the command")
        .check(PROGRAM);
  }

  @Test
  void outputsDependOnTheirInputsAlone() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.Random")
        .orShould()
        .dependOnClassesThat(
            describe(
                "clocks and dates",
                type ->
                    type.getPackageName().equals("java.time")
                        && !type.getSimpleName().startsWith("Zone")))
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.UUID")
        .because("the same input gives the same bytes")
        .check(PROGRAM);
  }

  @Test
  void staticsHoldNoState() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .because("two requests in one process must not see each other")
        .check(PROGRAM);
  }

  @Test
  void proofDoesNotKnowHowTemplatesAreMade() {
    noClasses()
        .that()
        .haveSimpleNameStartingWith("Proof")
        .should()
        .dependOnClassesThat(
            describe(
                "construction of the template",
                type ->
                    type.getPackageName().equals(ROOT + "routing")
                        && type.getSimpleName().matches("Template.+")))
        .because("a proof that undoes the construction would prove nothing: it plays forward")
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  @Test
  void roomsHaveNoCycles() {
    slices().matching("org.bearingline.(**)").should().beFreeOfCycles().check(PROGRAM);
  }
}
