package org.belthigh.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Collectors;
import org.belthigh.catalogue.HeatTable;
import org.belthigh.model.Phrase;
import org.belthigh.words.Words;

/**
 * What a practice says of heat: that there is a reading at which there is no practice, and what not
 * to mix up.
 */
final class HeatLines {
  private final Given given;
  private final Words words;

  HeatLines(Given given, Words words) {
    this.given = given;
    this.words = words;
  }

  void check(String where, JsonNode practice) {
    List<String> cautions = Given.words(practice, "cautions");
    int age =
        given.plan().players().stream()
            .filter(p -> p.group().equals(practice.path("group").asText()))
            .mapToInt(FinishedPlan.Person::age)
            .min()
            .orElse(0);
    String tables =
        given.catalogue().heatTables().values().stream()
            .filter(t -> t.reading() == HeatTable.Reading.HEAT_INDEX)
            .map(HeatTable::shortName)
            .collect(Collectors.joining(", "));
    int adds = given.limits().whole("heat-sun-adds", age);
    says(where, cautions, Phrase.of("heat.shade", "adds", adds, "table", tables));
    says(where, cautions, Phrase.of("heat.cancel"));
  }

  private void says(String where, List<String> cautions, Phrase phrase) {
    boolean said =
        Words.LANGUAGES.stream()
            .map(language -> words.say(phrase, language))
            .anyMatch(line -> cautions.stream().anyMatch(c -> c.startsWith(line)));
    if (!said) {
      given.broken(
          where,
          "the cautions do not say: " + words.say(phrase, Words.LANGUAGES.get(0)),
          "that is said for safety");
    }
  }
}
