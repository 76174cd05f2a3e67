package org.belthigh;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Arrows only backwards: a later room may use an earlier one, never the reverse. */
@AnalyzeClasses(packages = "org.belthigh", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule rooms =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("model")
          .definedBy("org.belthigh.model..")
          .layer("files")
          .definedBy("org.belthigh.files..")
          .layer("words")
          .definedBy("org.belthigh.words..")
          .layer("catalogue")
          .definedBy("org.belthigh.catalogue..")
          .layer("intake")
          .definedBy("org.belthigh.intake..")
          .layer("measure")
          .definedBy("org.belthigh.measure..")
          .layer("decide")
          .definedBy("org.belthigh.decide..")
          .layer("flight")
          .definedBy("org.belthigh.flight..")
          .layer("plan")
          .definedBy("org.belthigh.plan..")
          .layer("handout")
          .definedBy("org.belthigh.handout..")
          .layer("audit")
          .definedBy("org.belthigh.audit..")
          .layer("heat")
          .definedBy("org.belthigh.heat..")
          .layer("history")
          .definedBy("org.belthigh.history..")
          .layer("privacy")
          .definedBy("org.belthigh.privacy..")
          .layer("start")
          .definedBy("org.belthigh.start..")
          .layer("sending")
          .definedBy("org.belthigh.sending..")
          .layer("lab")
          .definedBy("org.belthigh.lab..")
          .layer("docs")
          .definedBy("org.belthigh.docs..")
          .layer("cli")
          .definedBy("org.belthigh.cli..")
          .whereLayer("model")
          .mayNotAccessAnyLayer()
          .whereLayer("files")
          .mayOnlyAccessLayers("model")
          .whereLayer("words")
          .mayOnlyAccessLayers("model")
          .whereLayer("catalogue")
          .mayOnlyAccessLayers("model", "files")
          .whereLayer("intake")
          .mayOnlyAccessLayers("model", "files", "catalogue")
          .whereLayer("measure")
          .mayOnlyAccessLayers("model", "intake")
          .whereLayer("decide")
          .mayOnlyAccessLayers("model", "catalogue", "intake", "measure")
          .whereLayer("flight")
          .mayOnlyAccessLayers("model")
          .whereLayer("plan")
          .mayOnlyAccessLayers(
              "model", "catalogue", "intake", "measure", "decide", "flight", "heat", "history")
          .whereLayer("handout")
          .mayOnlyAccessLayers("model", "words", "plan", "decide")
          .whereLayer("audit")
          .mayOnlyAccessLayers("model", "files", "words", "catalogue", "intake", "decide")
          .ignoreDependency(
              JavaClass.Predicates.resideInAPackage("org.belthigh.audit.."),
              new DescribedPredicate<>("the reader of prints") {
                @Override
                public boolean test(JavaClass other) {
                  return other.getName().startsWith("org.belthigh.handout.PrintedPages");
                }
              })
          .whereLayer("heat")
          .mayOnlyAccessLayers("model", "catalogue")
          .whereLayer("history")
          .mayOnlyAccessLayers("model", "files")
          .whereLayer("privacy")
          .mayOnlyAccessLayers("model", "files", "intake", "history")
          .whereLayer("start")
          .mayOnlyAccessLayers("model", "files", "catalogue", "intake")
          .whereLayer("sending")
          .mayOnlyAccessLayers("model", "files", "words", "catalogue", "intake", "plan")
          .whereLayer("lab")
          .mayOnlyAccessLayers("model", "catalogue", "intake", "measure", "decide")
          .whereLayer("docs")
          .mayOnlyAccessLayers("model", "catalogue")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer();

  /** Safety has its own reading; the decider is asked again for progress alone. */
  @ArchTest
  static final ArchRule audit_asks_the_decider_for_progress_alone =
      noClasses()
          .that()
          .resideInAPackage("org.belthigh.audit..")
          .and()
          .doNotHaveSimpleName("DecisionCheck")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.belthigh.decide..");

  @ArchTest
  static final ArchRule only_decide_knows_drools =
      noClasses()
          .that()
          .resideInAPackage("org.belthigh..")
          .and()
          .resideOutsideOfPackage("org.belthigh.decide..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.kie..", "org.drools..");

  @ArchTest
  static final ArchRule only_handout_knows_pdfbox =
      noClasses()
          .that()
          .resideInAPackage("org.belthigh..")
          .and()
          .resideOutsideOfPackage("org.belthigh.handout..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..");

  @ArchTest
  static final ArchRule only_cli_sees_a_clock =
      noClasses()
          .that()
          .resideInAPackage("org.belthigh..")
          .and()
          .resideOutsideOfPackage("org.belthigh.cli..")
          .should()
          .callMethod(java.time.LocalDate.class, "now")
          .orShould()
          .callMethod(java.time.LocalDateTime.class, "now")
          .orShould()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(Math.class, "random");
}
