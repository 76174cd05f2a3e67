package org.belthigh.decide;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.belthigh.catalogue.RuleEntry;
import org.junit.jupiter.api.Test;

/**
 * What lies in {@code rules/}: DRL, entry and test file belong together, and all of it is loaded.
 */
class RuleCatalogueTest {
  /** Rules that fire for every player and day: those that ask. */
  private static final Set<String> OF_EVERYBODY = Set.of("ARM-036");

  private static final Pattern RULE = Pattern.compile("(?m)^rule \"([^\"]+)\"");

  /** The rules as written, each as pack, slash, id. */
  private static Set<String> written() throws IOException {
    Set<String> rules = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
        Matcher rule = RULE.matcher(Files.readString(file));
        while (rule.find()) {
          rules.add(file.getParent().getFileName() + "/" + rule.group(1));
        }
      }
    }
    return rules;
  }

  @Test
  void every_rule_that_is_written_is_loaded() throws IOException {
    assertThat(RuleBase.shared().rules()).isEqualTo(written());
  }

  @Test
  void every_rule_has_an_entry_and_every_entry_a_rule() throws IOException {
    Set<String> entries =
        RuleCase.CATALOGUE.rules().values().stream()
            .map(e -> e.pack() + "/" + e.id())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(entries).isEqualTo(written());
  }

  @Test
  void every_rule_has_a_test_file_and_every_test_file_a_rule() throws IOException {
    for (String pack : new String[] {"arm", "drill", "hold", "progress"}) {
      Set<String> files =
          RuleCase.files(pack).stream()
              .map(f -> f.getFileName().toString().replace(".yaml", ""))
              .filter(name -> !name.equals("check-cases"))
              .collect(Collectors.toCollection(TreeSet::new));
      Set<String> rules =
          written().stream()
              .filter(r -> r.startsWith(pack + "/"))
              .map(r -> r.substring(pack.length() + 1))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(files).isEqualTo(rules);
    }
  }

  @Test
  void every_rule_of_safety_fires_in_one_case_of_its_file_and_not_in_another() {
    for (String pack : new String[] {"arm", "hold"}) {
      for (Path file : RuleCase.files(pack)) {
        String rule = file.getFileName().toString().replace(".yaml", "");
        if (RuleCase.CATALOGUE.rules().containsKey(rule)) {
          assertThat(RuleCase.read(file)).as(rule).anyMatch(c -> c.fired().contains(rule));
        }
        if (RuleCase.CATALOGUE.rules().containsKey(rule) && !OF_EVERYBODY.contains(rule)) {
          assertThat(RuleCase.read(file)).as(rule).anyMatch(c -> !c.fired().contains(rule));
        }
      }
    }
  }

  @Test
  void every_rule_of_drills_fires_in_one_case_of_its_file_and_not_in_another() {
    for (Path file : RuleCase.files("drill")) {
      String rule = file.getFileName().toString().replace(".yaml", "");
      assertThat(DrillCase.read(file)).as(rule).anyMatch(c -> c.fired().contains(rule));
      assertThat(DrillCase.read(file)).as(rule).anyMatch(c -> !c.fired().contains(rule));
    }
  }

  @Test
  void a_reason_has_the_same_holes_in_every_language() {
    for (RuleEntry entry : RuleCase.CATALOGUE.rules().values()) {
      Set<String> english = new MessageFormat(entry.reason().in("en")).getArgumentNames();
      assertThat(entry.reason().byLanguage()).as(entry.id()).containsKeys("en", "es");
      assertThat(new MessageFormat(entry.reason().in("es")).getArgumentNames())
          .as(entry.id())
          .isEqualTo(english);
    }
  }

  @Test
  void rules_hold_no_number_no_order_and_no_sentence() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
        String code =
            Files.readString(file)
                .replaceAll("(?m)//.*$", "")
                .replaceAll("\"[A-Z]{3,4}-[0-9]{3}\"", "");
        assertThat(code).as(file.toString()).doesNotContainPattern("[0-9]");
        assertThat(code).doesNotContain("salience", "modify", "global", "eval(", "\" ");
      }
    }
  }

  /** The auditor reads finished plans, in which the ids stand. */
  @Test
  void no_java_goes_by_the_id_of_a_rule() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (!file.getParent().endsWith("audit")) {
          assertThat(Files.readString(file))
              .as(file.toString())
              .doesNotContainPattern("\"(ARM|DRL|HLD|PRG)-[0-9]{3}\"");
        }
      }
    }
  }

  @Test
  void what_an_entry_reads_is_a_fact_that_exists() {
    for (RuleEntry entry : RuleCase.CATALOGUE.rules().values()) {
      for (String read : entry.reads()) {
        if (Character.isUpperCase(read.charAt(0))) {
          assertThat(exists(read)).as("%s reads %s", entry.id(), read).isTrue();
        }
      }
    }
  }

  private static boolean exists(String read) {
    String[] parts = read.split("\\.", -1);
    if (parts[0].equals("Limit") && parts[1].contains("-")) {
      return true; // a book's own limit, by name
    }
    try {
      Class<?> fact = Class.forName("org.belthigh.decide." + parts[0]);
      return parts.length == 1
          || Arrays.stream(fact.getDeclaredMethods()).anyMatch(m -> m.getName().equals(parts[1]));
    } catch (ClassNotFoundException e) {
      return false;
    }
  }
}
