package org.bearingline.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "cloud-lift-rial, cloud-lift-rail",
        "cloud-rail, -",
        "oval-tops, oval-top",
        "ovaltop, oval-top",
        "q, -",
        "handle, -",
        "zzzzzzzzzzzz, -"
      })
  void theNameWithFewestEditsIsMeant(String given, String expected) {
    assertEquals(
        Optional.ofNullable(expected),
        NearestName.among(List.of("cloud-lift-rail", "oval-top", "handle-bar"), given));
  }
}
