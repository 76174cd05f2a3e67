package org.belthigh.catalogue;

import java.time.LocalDate;
import java.util.List;
import org.belthigh.model.LocalText;

/**
 * What stands beside a DRL rule: its title, what it reads, and the sentence it gives as reason.
 *
 * @param id the DRL rule's name, such as {@code PRG-002}
 * @param pack folder under {@code rules/}
 * @param reads parameters, rule books and facts it reads
 * @param reason template with named holes, ICU message format, by language
 * @param source id of a {@link Source}
 */
public record RuleEntry(
    String id,
    String pack,
    String title,
    String status,
    LocalDate from,
    List<String> reads,
    LocalText reason,
    String source) {
  public RuleEntry {
    reads = List.copyOf(reads);
  }
}
