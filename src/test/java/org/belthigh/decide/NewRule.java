package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.words.Words;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/**
 * Adds a rule to those that are here: one that forbids pitching after four innings caught the day
 * before. The rule is made up, to show how it is done; DEVELOPERS.md tells the same steps.
 */
final class NewRule {
  private static final String DRL =
      """

      // Caught too many innings the day before.
      rule "ARM-099"
      when
          $asked : Question( listed, !softball, $player : player, $yesterday : dayBefore,
                             $edition : edition, $age : age )
          $limit : Limit( edition == $edition.key, what == "innings-caught-the-day-before",
                          ageFrom <= $age, ageTo >= $age, $most : most )
          accumulate( Caught( player == $player, date == $yesterday, $innings : innings );
                      $sum : sum( $innings ); $sum >= $most )
      then
          insertLogical( ArmVerdict.waiting( "ARM-099", Waits.REST, Speaks.EACH, $asked, $limit, Sum.of( $sum ) ) );
      end
      """;

  private static final String ENTRY =
      """
        - id: ARM-099
          title: No pitching on the day after many innings caught
          status: draft
          from: "2026-01-01"
          reads: [Caught.innings, Limit.innings-caught-the-day-before]
          reason:
            en: "{player} caught in {count} innings the day before. From {most} on, there is no pitching."
            es: "{player} fue receptor en {count} entradas el día antes. Desde {most} no se lanza."
          source: common-practice
      """;

  /** The number, as it would stand in a rule book. */
  static final String LIMIT =
      """
      limits:
        - {what: innings-caught-the-day-before, ages: [7, 22], most: 4, source: common-practice}
      """;

  private static final String CASES =
      """
      cases:
        - name: four innings caught the day before
          on: "2026-04-07"
          given: {born: "2014-01-15", outings: [{date: "2026-04-06", pitches: 0, innings_caught: 3}, {date: "2026-04-06", pitches: 0, innings_caught: 1}]}
          expect: {may_pitch: false, eligible_from: "2026-04-08", rules: [ARM-099], not_rules: [ARM-010], reason: "Ana caught in 4 innings the day before. From 4 on, there is no pitching."}
        - name: three are not too many
          on: "2026-04-07"
          given: {born: "2014-01-15", outings: [{date: "2026-04-06", pitches: 0, innings_caught: 3}]}
          expect: {may_pitch: true, rules: [ARM-010], not_rules: [ARM-099]}
        - name: two days before is over
          on: "2026-04-08"
          given: {born: "2014-01-15", outings: [{date: "2026-04-06", pitches: 0, innings_caught: 4}]}
          expect: {may_pitch: true, not_rules: [ARM-099]}
        - name: another book does not say so
          on: "2026-04-07"
          given: {born: "2014-01-15", books: [little-league-reg-vi], outings: [{date: "2026-04-06", pitches: 0, innings_caught: 4}]}
          expect: {may_pitch: true, not_rules: [ARM-099]}
      """;

  private NewRule() {}

  /** The texts below some folders, by path, but for cases. */
  static SortedMap<String, String> files(String... folders) {
    SortedMap<String, String> texts = new TreeMap<>();
    for (String folder : folders) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        files
            .filter(
                f ->
                    f.toString().matches(".*\\.(yaml|drl|xml)") && !f.getParent().endsWith("tests"))
            .forEach(f -> texts.put(f.toString().replace('\\', '/'), read(f)));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return texts;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All packs, built while the test runs. */
  private static RuleBase built(SortedMap<String, String> texts) {
    KieServices services = KieServices.get();
    KieFileSystem project = services.newKieFileSystem();
    texts.forEach(
        (name, text) -> {
          if (name.endsWith(".drl")) {
            project.write("src/main/resources/" + name, text);
          }
        });
    KieBuilder builder = services.newKieBuilder(project).buildAll(ExecutableModelProject.class);
    assertThat(builder.getResults().getMessages(Message.Level.ERROR)).isEmpty();
    return new RuleBase(
        services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase());
  }

  /**
   * Runs the cases of the new rule, and those of the rules before it, by books without its number.
   * Argument: a scratch folder.
   */
  public static void main(String[] args) throws IOException {
    SortedMap<String, String> texts = files("rules", "curricula");
    texts.merge("rules/arm/arm.drl", DRL, String::concat);
    texts.merge("rules/arm/rules.yaml", ENTRY, String::concat);
    RuleBase rules = built(texts);
    texts.keySet().removeIf(name -> !name.endsWith(".yaml"));
    Catalogue without = CatalogueLoader.load(texts).orThrow();
    texts.merge("rules/books/pitch-smart-2018.yaml", LIMIT, String::concat);
    Catalogue catalogue = CatalogueLoader.load(texts).orThrow();
    Words words = RuleCase.words(catalogue);

    Path cases = Files.writeString(Path.of(args[0]).resolve("ARM-099.yaml"), CASES);
    System.out.println(checked(cases, catalogue, words, rules) + " cases of the new rule");
    int before = 0;
    for (Path file : RuleCase.files("arm")) {
      before += checked(file, without, words, rules);
    }
    System.out.println(before + " cases of the rules before it");
  }

  private static int checked(Path file, Catalogue catalogue, Words words, RuleBase rules) {
    RuleCase.read(file).forEach(one -> one.check(catalogue, words, rules));
    return RuleCase.read(file).size();
  }
}
