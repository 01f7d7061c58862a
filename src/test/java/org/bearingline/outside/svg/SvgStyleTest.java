package org.bearingline.outside.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.bearingline.outside.ReadingSettings;
import org.bearingline.outside.Sketch;
import org.bearingline.outside.Sketches;
import org.bearingline.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Style sheets decide what shows. Which selector matches what, and that a rule which cannot be read
 * costs no other, is said by CSS 2.1, chapters 4 to 6, and by CSS Colour 4 for clear colours.
 */
class SvgStyleTest {

  private static final String HEAD =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='50mm' viewBox='0 0 100 50'>\n";

  private static final String FRAME = "<rect width='30' height='30'/>";

  private static Sketch read(String inside) {
    byte[] bytes = (HEAD + inside + "</svg>").getBytes(StandardCharsets.UTF_8);
    return SvgReader.read("drawing.svg", bytes, ReadingSettings.USUAL);
  }

  /** How many of the two groups' five shapes a rule hides. */
  private static int hidden(String selector) {
    String shapes =
        "<g class='one'><path id='a' class='x y' d='M0 0H1V1Z'/><path class='y' d='M0 0H1V1Z'/>"
            + "<circle lang='en-GB' r='1'/></g>"
            + "<g><g><path d='M0 0H1V1Z'/></g><circle r='1'/></g>";
    Sketch sketch = read("<style>" + selector + "{visibility:hidden}</style>" + FRAME + shapes);
    return 6 - sketch.figures().size();
  }

  @Test
  void selectorsFindTheirElements() {
    assertEquals(3, hidden("path"));
    assertEquals(2, hidden(".y"));
    assertEquals(1, hidden(".x.y"));
    assertEquals(1, hidden("path#a"));
    assertEquals(0, hidden("circle#a"));
    assertEquals(2, hidden(".one path"));
    assertEquals(1, hidden("g g path"));
    assertEquals(1, hidden("svg > g > g > path"));
    assertEquals(1, hidden("svg > g g path"));
    assertEquals(0, hidden("svg > path"));
    assertEquals(1, hidden("path + circle"));
    assertEquals(1, hidden("path + path"));
    assertEquals(1, hidden("g + circle"));
    assertEquals(2, hidden("path:first-child"));
    assertEquals(1, hidden("[id]"));
    assertEquals(1, hidden("[class=y]"));
    assertEquals(2, hidden("path[class~=y]"));
    assertEquals(1, hidden("[lang|=en]"));
    assertEquals(5, hidden(":root g *"));
    assertEquals(4, hidden("path, .one circle"));
  }

  @Test
  void theMoreParticularRuleHolds() {
    String rules = "#a{visibility:hidden} path{visibility:visible}";
    assertEquals(
        1,
        read("<style>" + rules + "</style><path id='a' d='M0 0H9V9Z'/>" + FRAME).figures().size());
    String pressed = "#a{visibility:hidden} path{visibility:visible!important}";
    assertEquals(
        2,
        read("<style>" + pressed + "</style><path id='a' d='M0 0H9V9Z'/>" + FRAME)
            .figures()
            .size());
    String own = "<path style='fill:red' class='b' d='M0 0H9V9Z'/>" + FRAME;
    assertEquals(2, read("<style>.b{fill:none}</style>" + own).figures().size());
    assertEquals(1, read("<style>.b{fill:none!important}</style>" + own).figures().size());
  }

  /** Each stands before a rule that hides the frame, which must not be lost with it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "path:not(.a){fill:blue}",
        "path ~ circle{fill:blue}",
        "path:nth-child(2n+1){fill:blue}",
        "[class^='b']{fill:red}",
        ":root{--edge:red}",
        "path{width:calc(1px + 2px)}",
        "path{fill:#ff00ff80}",
        "path{fill:rgb(10% 20% 30% / 50%)}",
        "path{fill:var(--edge)}",
        "path{*zoom:1;filter:progid:X.Y(a=1)}",
        "path{background:url(data:image/png;base64,AA==)}",
        "path{fill:;stroke red}",
        "@font-face{font-family:x;src:url(y)}",
        "@media screen and (min-width:10px){.b{fill:blue}}",
        "@supports (display:grid){.b{fill:blue}}",
        "@keyframes turn{0%{fill:red}to{fill:blue}}",
        "/* a { } in words */ /* and 'another",
        "path{content:'}'}",
      })
  void whatCannotBeReadCostsNoOtherRule(String rule) {
    String sheet = rule + (rule.contains("another") ? "*/" : "") + "\n.b{fill:none}";
    Sketch sketch =
        read(
            "<style>"
                + sheet.replace("<", "&lt;")
                + "</style>"
                + "<rect class='b' width='90' height='9'/>"
                + FRAME);
    assertEquals(30, Sketches.bounds(sketch).width(), 1e-9);
  }

  @Test
  void rulesThatAreNotReadAreTold() {
    Sketch sketch =
        read("<style>path:not(.a){fill:none} .b{} @media print{.b{fill:none}}</style>" + FRAME);
    assertEquals(List.of("1 style for one kind of screen", "1 style rule"), sketch.ignored());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "style='fill:none;x y z;stroke:none'",
        "style='*zoom:1;fill:none'",
        "style='--fill:red;--x:3;fill:none'",
        "style='fill:#fff0'",
        "style='fill:RGBA(0, 0, 0, 0.0)'",
        "style='fill: #00000000; stroke: none'",
        "fill='transparent'",
        "fill='rgba(255,255,255,0)'",
        "fill='#FFF0'",
        "fill-opacity='0.00'",
        "style='FILL:None'",
      })
  void whatHasNoColourDoesNotShow(String attributes) {
    Sketch sketch = read("<rect width='90' height='9' " + attributes + "/>" + FRAME);
    assertEquals(List.of("1 shape without fill and stroke"), sketch.ignored());
    assertEquals(30, Sketches.bounds(sketch).width(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "style='fill:#ff00ff80'",
        "style='fill:rgba(0,0,0,0.5)'",
        "style='fill:rgb(0,0,0)'",
        "style='fill:rgb(1 2 3 / 40%)'",
        "style='fill:url(#g)'",
        "fill='rgba(0,0,0,.5)'",
        "fill='#f0f0f0'",
        "fill='#fff00'",
        "fill='none' stroke='currentColor'",
      })
  void whatHasAColourShows(String attributes) {
    Sketch sketch = read("<rect width='90' height='9' " + attributes + "/>" + FRAME);
    assertEquals(90, Sketches.bounds(sketch).width(), 1e-9);
  }

  /** The page that many programs lay under a drawing would else be the part's edge. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "width='100' height='50' fill='white'",
        "width='100%' height='100%' fill='#FFF'",
        "width='100%' height='100%' style='fill:#ffffff;fill-opacity:1;stroke:none'",
        "x='-5' y='-5' width='110' height='60' style='fill:rgb(255,255,255)'",
        "class='page' width='100' height='50'",
      })
  void aWhitePageBehindAllIsLeftOut(String attributes) {
    String sheet = "<style>.page{fill:#fff}</style>";
    Sketch sketch = read(sheet + "<g><rect " + attributes + "/></g>" + FRAME);
    assertEquals(List.of("1 white background as large as the page"), sketch.ignored());
    assertEquals(30, Sketches.bounds(sketch).width(), 1e-9);
    assertEquals(1, read(sheet + "<rect " + attributes + "/>").figures().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "width='100' height='50' fill='white' stroke='black'",
        "width='100' height='50' fill='#fffffe'",
        "width='100' height='50'",
        "width='100' height='50' rx='5' fill='white'",
        "width='99' height='50' fill='white'",
      })
  void aBoardAsLargeAsThePageStays(String attributes) {
    Sketch sketch = read("<rect " + attributes + "/>" + FRAME);
    assertEquals(2, sketch.figures().size());
    assertEquals(
        3, read(FRAME + "<rect fill='white' width='100' height='50'/>" + FRAME).figures().size());
  }

  @Test
  void manyRulesAndPiecesEndInTime() {
    assertTimeoutPreemptively(
        Duration.ofMinutes(3),
        () -> {
          String sheet = "<style>" + ".a:not(b){}".repeat(200_000) + "</style>";
          Problem many = assertThrows(Problem.class, () -> read(sheet + FRAME));
          assertTrue(many.getMessage().contains("10,000"), many.getMessage());
          String deep = "g ".repeat(19) + "b{fill:none}";
          String nested = "<g>".repeat(190) + FRAME.repeat(2_000) + "</g>".repeat(190);
          read("<style>" + (deep + "\n").repeat(500) + "</style>" + nested);
        });
  }
}
