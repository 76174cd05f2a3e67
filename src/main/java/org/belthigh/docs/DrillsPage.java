package org.belthigh.docs;

import java.util.Map;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.model.Skill;

/** The drills that a log may name, ladder by ladder, in one language. */
final class DrillsPage {
  private final Catalogue catalogue;
  private final String language;

  /**
   * @param language {@code en} or {@code es}
   */
  DrillsPage(Catalogue catalogue, String language) {
    this.catalogue = catalogue;
    this.language = language;
  }

  String text() {
    StringBuilder text = new StringBuilder();
    text.append(
        either(
            """
            # Drills and their ids

            Made from the curricula. A log may name a drill by its id or by its name as sheets print it, in
            any language, capitals and accents or not.
            """,
            """
            # Los ejercicios y sus ids

            Hecha a partir de los planes de enseñanza. Un registro puede nombrar un ejercicio por su id o por su
            nombre como lo imprimen las hojas, en cualquier idioma, con mayúsculas y acentos o sin ellos.
            """));
    catalogue.curricula().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(curriculum -> ladders(curriculum.getValue(), text));
    return text.toString();
  }

  private void ladders(Curriculum curriculum, StringBuilder text) {
    for (Skill skill : Skill.values()) {
      text.append("\n## ").append(curriculum.ladders().get(skill).name().in(language));
      text.append("\n\n| id | ").append(either("name", "nombre")).append(" |\n|---|---|\n");
      curriculum.drills(skill).forEach(drill -> text.append(row(drill)));
    }
  }

  private String row(Drill drill) {
    return "| `" + drill.id() + "` | " + drill.name().in(language) + " |\n";
  }

  private String either(String english, String spanish) {
    return language.equals("es") ? spanish : english;
  }
}
