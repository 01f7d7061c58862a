package org.bearingline;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Random;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Two runs of the build try the same samples. */
class SeedTest {

  private static final JavaClasses TESTS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
          .importPackages("org.bearingline");

  @Test
  void everyPropertyHasTheSeed() {
    methods()
        .that()
        .areAnnotatedWith(Property.class)
        .should()
        .beAnnotatedWith(
            describe(
                "@Property(seed = Seed.FIXED)",
                annotation ->
                    annotation.getRawType().isEquivalentTo(Property.class)
                        && Seed.FIXED.equals(annotation.get("seed").orElse(""))))
        .check(TESTS);
  }

  @Test
  void noneIsChosenByChance() {
    noClasses().should().callConstructor(Random.class).check(TESTS);
    noClasses().should().callMethod(Math.class, "random").check(TESTS);
  }
}
